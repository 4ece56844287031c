package dayglass.cost.ownership;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The months of an ownership: against the purchase cost of the costing, against textbooks, and among themselves. */
class CashFlowTest {
    private static final Ownership.Running NO_RUNNING = new Ownership.Running(euros("0"), euros("0"), Optional.empty());

    private static Money euros(String amount) {
        return Money.of("EUR", amount);
    }

    static PurchaseTerms bought(String price, String resale, int months) {
        return new PurchaseTerms(
                euros(price),
                Percent.ZERO,
                List.of(),
                months,
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(months, euros(resale)))),
                        Percent.ZERO),
                new PurchaseTerms.Holding(Percent.ZERO, euros("0")),
                Optional.empty(),
                Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void thePresentCostIsThePurchaseCostOfTheCosting(int batch) {
        Random random = new Random(4_211 + batch);
        for (int index = 0; index < 60; index++) {
            PurchaseTerms terms = NetCostAgainstPlainTest.terms(random);
            Percent rate = NetCostAgainstPlainTest.percent(random, random.nextBoolean() ? 30 : 1_000);
            Money none = Money.zero(terms.price().currency());
            Ownership ownership = new Ownership(
                    terms, rate, BigDecimal.TEN, new Ownership.Running(none, none, Optional.empty()), Optional.empty());
            assertEquals(NetCost.of(terms, rate), CashFlow.of(ownership).presentCost(), terms + " at " + rate);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 6, 7})
    void theLinesAddUpToTheMonthsAndTheMonthsToTheWhole(int batch) {
        Random random = new Random(batch);
        for (int index = 0; index < 20; index++) {
            PurchaseTerms terms = NetCostAgainstPlainTest.terms(random);
            Currency currency = terms.price().currency();
            Ownership ownership = new Ownership(
                    terms,
                    Percent.of("6"),
                    BigDecimal.valueOf(random.nextInt(200)),
                    new Ownership.Running(
                            Money.ofMinor(currency, random.nextInt(5_000)),
                            Money.ofMinor(currency, random.nextInt(5_000)),
                            Optional.of(new Ownership.ServiceByDays(
                                    1 + random.nextInt(60), Money.ofMinor(currency, 18_001)))),
                    Optional.of(new Ownership.Loan(Money.ofMinor(currency, 400_001), Percent.of("7.5"), 1 + index)));
            CashFlow flow = CashFlow.of(ownership);
            Money soFar = Money.zero(currency);
            for (CashFlow.Month month : flow.months()) {
                Money sum = month.lines().stream().map(CashFlow.Line::amount).reduce(Money.zero(currency), Money::plus);
                assertEquals(sum, month.sum());
                soFar = soFar.plus(sum);
                assertEquals(soFar, month.soFar());
            }
            BigDecimal exact = flow.sums().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal missed = exact.subtract(soFar.major()).abs();
            assertTrue(
                    missed.compareTo(BigDecimal.valueOf(8).movePointLeft(currency.decimals())) <= 0,
                    "each of at most sixteen kinds is off by half a minor unit: " + missed);
        }
    }

    /**
     * Equivalent annual cost. 1 and 2: encyclopedia article of that name (from memory, recomputed); 3: a textbook's 24,333;
     * 4: a worked answer (92000, salvage 18000).
     */
    @ParameterizedTest
    @CsvSource({
        " 50000,     0, 13000, 3, 5,   31360.43",
        "150000,     0,  7500, 8, 5,   30708.27",
        " 75000,     0,  4750, 5, 9.6, 24333.04",
        " 92000, 18000, 13000, 6, 7,   29784.89",
    })
    void theEquivalentAnnualCostOfTextbooks(
            String price, String salvage, String aYear, int years, String rate, String expected) {
        PurchaseTerms terms = bought(price, salvage, 12 * years);
        Ownership ownership = new Ownership(terms, Percent.of(rate), BigDecimal.ONE, NO_RUNNING, Optional.empty());
        // The textbooks pay the yearly cost at each year's end, so it is added to the even sum as it is.
        assertEquals(
                new BigDecimal(expected),
                CashFlow.of(ownership).equivalentAnnualCost().major().add(new BigDecimal(aYear)));
    }

    @Test
    void withoutDiscountTheYearlyCostIsTheCostByTheYears() {
        Ownership ownership = new Ownership(
                bought("3000", "0", 30), Percent.ZERO, BigDecimal.valueOf(12), NO_RUNNING, Optional.empty());
        assertEquals(euros("1200.00"), CashFlow.of(ownership).equivalentAnnualCost());
        assertEquals(Optional.of(euros("100.00")), CashFlow.of(ownership).costPerDayUsed());
        assertEquals(
                Optional.empty(), CashFlow.of(ownership.usedOn(BigDecimal.ZERO)).costPerDayUsed());
    }

    /** Worked by hand: 25 days out a year fill 40 in month 20 (41.67) and 80 in month 39 (81.25). */
    @Test
    void serviceByDaysFallsDueWhenTheDaysAreFull() {
        Ownership ownership = new Ownership(
                bought("1000", "0", 48),
                Percent.ZERO,
                BigDecimal.valueOf(25),
                new Ownership.Running(
                        euros("0"), euros("0"), Optional.of(new Ownership.ServiceByDays(40, euros("150")))),
                Optional.empty());
        List<Integer> months = CashFlow.of(ownership).months().stream()
                .filter(month -> month.lines().stream().anyMatch(line -> line.flow() == Flow.SERVICE_BY_DAYS))
                .map(CashFlow.Month::month)
                .toList();
        assertEquals(List.of(20, 39), months);
    }

    /** At the loan's own rate by the month borrowing changes nothing but what the payments' rounding leaves. */
    @Test
    void aLoanAtTheDiscountRateCostsNothing() {
        BigDecimal monthly = new BigDecimal("0.01");
        BigDecimal yearly =
                BigDecimal.ONE.add(monthly).pow(12).subtract(BigDecimal.ONE).movePointRight(2);
        PurchaseTerms terms = bought("8000", "5000", 36);
        Ownership bare = new Ownership(terms, new Percent(yearly), BigDecimal.ONE, NO_RUNNING, Optional.empty());
        for (int loanMonths : new int[] {12, 36, 60}) {
            Ownership lent = new Ownership(
                    terms,
                    new Percent(yearly),
                    BigDecimal.ONE,
                    NO_RUNNING,
                    Optional.of(new Ownership.Loan(euros("6000"), Percent.of("12"), loanMonths)));
            BigDecimal difference = CashFlow.of(lent)
                    .presentCostExactly()
                    .subtract(CashFlow.of(bare).presentCostExactly());
            // A rounding of half a cent a month, in either direction.
            assertTrue(difference.abs().compareTo(new BigDecimal("0.20")) < 0, loanMonths + ": " + difference);
        }
    }

    /** Worked by hand: 1200 paid, 50 saved a month, sold for nothing. */
    @Test
    void thePaybackMonthIsTheFirstFromWhichTheSumStaysUp() {
        Ownership ownership =
                new Ownership(bought("1200", "0", 36), Percent.ZERO, BigDecimal.ONE, NO_RUNNING, Optional.empty());
        CashFlow flow = CashFlow.of(ownership).saving(Collections.nCopies(36, BigDecimal.valueOf(50)));
        assertEquals(Optional.of(24), flow.paybackMonth());
        assertEquals(Optional.empty(), CashFlow.of(ownership).paybackMonth());
    }

    @Test
    void theRateOfReturnSetsThePresentValueToNothing() {
        Ownership ownership = new Ownership(
                bought("8000", "5200", 36), Percent.of("6"), BigDecimal.ONE, NO_RUNNING, Optional.empty());
        CashFlow flow = CashFlow.of(ownership).saving(Collections.nCopies(36, BigDecimal.valueOf(140)));
        RateOfReturn found = RateOfReturn.of(flow.sums());
        assertEquals(1, found.perPeriod().size());
        assertTrue(found.all());
        BigDecimal value = RateOfReturn.netPresentValue(found.perPeriod().get(0), flow.sums());
        assertEquals(0, value.setScale(6, RoundingMode.HALF_EVEN).signum(), value.toString());
    }

    /** Worked by hand: 60 % and 70 % after 24 months make 65 %, and 80 % after 12. */
    @Test
    void ownSalesBecomePoints() {
        PurchaseTerms.Points points = OwnSales.points(
                euros("2000"),
                List.of(
                        new OwnSales.Sale(24, euros("1000"), euros("600")),
                        new OwnSales.Sale(12, euros("500"), euros("400")),
                        new OwnSales.Sale(24, euros("100"), euros("70"))));
        assertEquals(
                List.of(new PurchaseTerms.Point(12, euros("1600.00")), new PurchaseTerms.Point(24, euros("1300.00"))),
                points.points());
    }
}
