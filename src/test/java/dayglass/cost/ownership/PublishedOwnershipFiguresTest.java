package dayglass.cost.ownership;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of others, each with its source. */
class PublishedOwnershipFiguresTest {
    private static final double TOLERANCE = 1e-8;

    private static List<BigDecimal> flows(String text) {
        return Arrays.stream(text.trim().split(" +")).map(BigDecimal::new).toList();
    }

    private static Money euros(String amount) {
        return Money.of("EUR", amount);
    }

    private static void near(double expected, double found) {
        assertEquals(expected, found, Math.abs(expected) * TOLERANCE);
    }

    /**
     * The first flow is undiscounted, so a value at the end of the first period is one of a leading nought. LibreOffice
     * Help, NPV; Apache POI TestFinanceLib (3); numpy-financial tests; Calligra Sheets tests (2).
     */
    @ParameterizedTest
    @CsvSource({
        "0.0875, 0 10 20 30,                               49.4321210382",
        "0.1,    0 -10000 3000 4200 6800,                  1188.4434123352",
        "0.08,   0 -40000 8000 9200 10000 12000 14500,     1779.6866249374",
        "0.08,   -40000 8000 9200 10000 12000 14500,       1922.0615549324",
        "0.08,   -40000 8000 9200 10000 12000 14500 -9000, -3749.4650870156",
        "0.05,   -15000 1500 2500 3500 4500 6000,          122.89485495",
        "1,      0 4 5 7,                                  4.125",
        "0.1,    0 100 200,                                256.198347107438",
    })
    void presentValues(String rate, String flows, double expected) {
        near(
                expected,
                RateOfReturn.netPresentValue(new BigDecimal(rate), flows(flows)).doubleValue());
    }

    /** LibreOffice Help, IRR; Apache POI TestIrr (3); numpy-financial tests. */
    @ParameterizedTest
    @CsvSource({
        "-10000 3500 7600 1000,               0.1133210282",
        "-70000 12000 15000 18000 21000,       -0.0212448482734",
        "-70000 12000 15000 18000 21000 26000, 0.0866309480365",
        "-70000 12000 15000,                   -0.4435069413347",
        "-100 39 59 55 20,                     0.2809484212",
    })
    void ratesOfReturn(String flows, double expected) {
        RateOfReturn found = RateOfReturn.of(flows(flows));
        assertEquals(1, found.perPeriod().size());
        assertTrue(found.all());
        assertEquals(expected, found.perPeriod().get(0).doubleValue(), 1e-10);
    }

    /** The flows of numpy-financial's tests; that there are three and two rates is our own finding. */
    @ParameterizedTest
    @CsvSource({"-5 10.5 1 -8 1, -0.870201 0.088598 0.709560", "-100 100 0 -7, -0.678894 -0.083300"})
    void severalRatesOfReturnAreAllTold(String flows, String expected) {
        RateOfReturn found = RateOfReturn.of(flows(flows));
        double[] wanted =
                flows(expected).stream().mapToDouble(BigDecimal::doubleValue).toArray();
        double[] rates =
                found.perPeriod().stream().mapToDouble(BigDecimal::doubleValue).toArray();
        assertEquals(wanted.length, rates.length, found::toString);
        assertTrue(found.all());
        for (int at = 0; at < wanted.length; at++) {
            assertEquals(wanted[at], rates[at], 1e-6);
        }
    }

    /**
     * Flows on days, a year of 365 as one period of as many parts: a spreadsheet's documentation of XNPV (its rate of
     * return is recomputed there); LibreOffice Help, XNPV and XIRR, which prints its second day as 2 January 2001, though
     * its results need 1 February.
     */
    @ParameterizedTest
    @CsvSource({
        "9, 2008-01-01 2008-03-01 2008-10-30 2009-02-15 2009-04-01, -10000 2750 4250 3250 2750,"
                + " 2086.647602031535, 0.3733625335188",
        "6, 2001-01-01 2001-02-01 2001-03-15 2001-05-12 2001-08-10, -10000 2000 2500 5000 1000,"
                + " 323.0168935873, 0.1828434858",
    })
    void flowsOnDays(String rate, String days, String amounts, double value, double ofReturn) {
        List<BigDecimal> daily = daily(days.split(" ", -1), flows(amounts));
        BigDecimal aDay = BigDecimal.valueOf(Math.pow(1 + Double.parseDouble(rate) / 100, 1.0 / 365) - 1);
        near(value, RateOfReturn.netPresentValue(aDay, daily).doubleValue());
        RateOfReturn found = RateOfReturn.of(daily);
        assertTrue(found.all());
        assertEquals(1, found.perPeriod().size());
        assertEquals(ofReturn, Math.pow(1 + found.perPeriod().get(0).doubleValue(), 365) - 1, 1e-9);
    }

    private static List<BigDecimal> daily(String[] days, List<BigDecimal> amounts) {
        LocalDate first = LocalDate.parse(days[0]);
        LocalDate last = LocalDate.parse(days[days.length - 1]);
        List<BigDecimal> daily =
                new ArrayList<>(Collections.nCopies((int) ChronoUnit.DAYS.between(first, last) + 1, BigDecimal.ZERO));
        for (int at = 0; at < days.length; at++) {
            daily.set((int) ChronoUnit.DAYS.between(first, LocalDate.parse(days[at])), amounts.get(at));
        }
        return daily;
    }

    @Test
    void flowsOfOneSignHaveNoRateOfReturn() {
        assertEquals(new RateOfReturn(List.of(), true), RateOfReturn.of(flows("-10 -20 -5")));
    }

    /**
     * Level payments: LibreOffice Help, PMT; numpy-financial tests; Apache POI TestPmt; OpenFormula cases in Calligra's
     * tests; numpy-financial (rate 0).
     */
    @ParameterizedTest
    @CsvSource({
        "25000,  0.0199, 12, 36,  715.9553344",
        "200000, 0.075,  12, 180, 1854.0247200055",
        "10000,  0.08,   12, 10,  1037.0320893592",
        "1000,   0.05,   1,  12,  112.8254100208",
        "15000,  0,      1,  60,  250",
        "2500,   0.0824, 12, 12,  217.748590",
    })
    void levelPayments(String amount, String rate, int parts, int periods, double expected) {
        BigDecimal perPeriod = new BigDecimal(rate).divide(BigDecimal.valueOf(parts), Growth.EXACT_ENOUGH);
        assertEquals(
                expected,
                LevelLoan.payment(new BigDecimal(amount), perPeriod, periods).doubleValue(),
                1e-6);
    }

    /** Capital recovery: Blank and Tarquin, Engineering Economy, Table 1: A/P of 0.25 % over 12 is 0.08469. */
    @Test
    void aLevelPaymentOfATable() {
        assertEquals(
                0.08469,
                LevelLoan.payment(BigDecimal.ONE, new BigDecimal("0.0025"), 12).doubleValue(),
                0.5e-5);
    }

    /** 35 % over 5 years: Newnan, Engineering Economic Analysis, tables: F/P 4.484, A/P .4505, A/F .1005. */
    @Test
    void growthAndEvenYearlySumsOfATable() {
        assertEquals(4.484, Growth.by(Percent.of("35")).over(60).doubleValue(), 0.5e-3);
        assertEquals(4505, evenly("10000", "0", "35", 5), 0.5);
        assertEquals(-1005, evenly("0", "10000", "35", 5), 0.5);
    }

    /** Brealey and Myers, Principles of Corporate Finance (from memory), less the yearly cost: 10.6116 − 5, 11.4544 − 6. */
    @ParameterizedTest
    @CsvSource({"150000, 3, 56116", "100000, 2, 54544"})
    void evenYearlySumsOfTwoMachines(String price, int years, double expected) {
        assertEquals(expected, evenly(price, "0", "6", years), 0.5);
    }

    private static double evenly(String price, String resale, String rate, int years) {
        Ownership ownership = new Ownership(
                CashFlowTest.bought(price, resale, 12 * years),
                Percent.of(rate),
                BigDecimal.ONE,
                new Ownership.Running(euros("0"), euros("0"), Optional.empty()),
                Optional.empty());
        return CashFlow.of(ownership).equivalentAnnualCost().major().doubleValue();
    }

    /** A nominal rate of 8 % by quarters, and rates by the quarter as effective ones: LibreOffice Help; OpenFormula. */
    @Test
    void effectiveAndNominalRates() {
        BigDecimal quarter = Growth.by(Percent.of("8")).over(3).subtract(BigDecimal.ONE);
        assertEquals(0.0777061876, 4 * quarter.doubleValue(), 1e-10);
        assertEquals("10.1123", effective("0.0975"));
        assertEquals("5.3543", effective("0.0525"));
    }

    /** The rate a year in per cent, as it is told, of a month that makes a quarter of the nominal rate in three. */
    private static String effective(String nominal) {
        double month = Math.cbrt(1 + Double.parseDouble(nominal) / 4) - 1;
        return new RateOfReturn(List.of(BigDecimal.valueOf(month)), true)
                .percentPerYear(4)
                .get(0)
                .toPlainString();
    }

    /** numpy-financial, documentation of ipmt: a loan of 2500 at 8.24 % over a year. */
    @Test
    void aLoanPayment() {
        LevelLoan loan = new LevelLoan(new Ownership.Loan(euros("2500"), Percent.of("8.24"), 12));
        assertEquals(euros("17.17"), loan.payments().get(0).interest());
        assertEquals(euros("200.58"), loan.payments().get(0).principal());
        // The source does not round: 12 payments less the loan. Ours rounds each month's interest to the cent.
        BigDecimal unrounded = LevelLoan.payment(
                BigDecimal.valueOf(2500),
                new BigDecimal("0.0824").divide(BigDecimal.valueOf(12), Growth.EXACT_ENOUGH),
                12);
        assertEquals(112.98, 12 * unrounded.doubleValue() - 2500, 0.005);
        assertEquals(euros("112.97"), loan.interest());
        assertEquals(euros("0.00"), loan.payments().get(11).left());
    }

    private static List<String> amounts(List<Money> years) {
        return years.stream().map(Money::amount).toList();
    }

    /** A spreadsheet's documentation of SLN; OpenFormula. */
    @ParameterizedTest
    @CsvSource({"30000, 7500, 10, 2250.00", "4000, 500, 4, 875.00"})
    void straightLine(String cost, String salvage, int years, String expected) {
        List<Money> all = Depreciation.straightLine(euros(cost), euros(salvage), years);
        assertEquals(years, all.size());
        all.forEach(each -> assertEquals(expected, each.amount()));
    }

    /** LibreOffice Help, SYD; a spreadsheet's documentation of SYD; OpenFormula. Amounts to the cent. */
    @Test
    void sumOfYearsDigits() {
        assertEquals(
                List.of("13333.33", "10666.67", "8000.00", "5333.33", "2666.67"),
                amounts(Depreciation.sumOfYearsDigits(euros("50000"), euros("10000"), 5)));
        List<Money> ten = Depreciation.sumOfYearsDigits(euros("30000"), euros("7500"), 10);
        assertEquals("4090.91", ten.get(0).amount());
        assertEquals("409.09", ten.get(9).amount());
        assertEquals(
                "1050.00",
                Depreciation.sumOfYearsDigits(euros("4000"), euros("500"), 4)
                        .get(1)
                        .amount());
    }

    /** A spreadsheet's documentation of DDB (first and tenth year); the years between are recomputed. To the cent. */
    @Test
    void decliningBalance() {
        List<Money> years = Depreciation.declining(euros("2400"), euros("300"), 10, BigDecimal.valueOf(2), false);
        assertEquals(
                List.of(
                        "480.00", "384.00", "307.20", "245.76", "196.61", "157.28", "125.83", "100.67", "80.53",
                        "22.12"),
                amounts(years));
        assertEquals(euros("2100"), years.stream().reduce(euros("0"), Money::plus));
        assertEquals(
                "306.00",
                Depreciation.declining(euros("2400"), euros("300"), 10, new BigDecimal("1.5"), false)
                        .get(1)
                        .amount());
    }

    /**
     * A spreadsheet's documentation of DB: 1000000 down to 100000 in 6 years at the share 1 - 0.1^(1/6), told to three
     * decimals, bought with seven months of its year left. Ours knows whole years alone, so it begins with the second,
     * from what the first left; the first is seven twelfths of a whole one.
     */
    @Test
    void decliningBalanceAtAShareOfItsOwn() {
        BigDecimal factor = new BigDecimal("0.319").multiply(BigDecimal.valueOf(6));
        Money whole = Depreciation.declining(euros("1000000"), euros("100000"), 6, factor, false)
                .get(0);
        assertEquals(186083.33, whole.major().doubleValue() * 7 / 12, 0.005);
        List<Money> later =
                Depreciation.declining(euros("1000000").minus(euros("186083.33")), euros("100000"), 6, factor, false);
        assertEquals(
                List.of("259639.42", "176814.44", "120410.64", "81999.64", "55841.76"), amounts(later.subList(0, 5)));
    }

    /** LibreOffice Help, DDB: the twelfth of 60 is 1721.81; OpenFormula: the fifth of five at 2.3 is nothing any more. */
    @Test
    void decliningBalanceLateInItsLife() {
        assertEquals(
                1721.805868,
                Depreciation.declining(euros("75000"), euros("1"), 60, BigDecimal.valueOf(2), false)
                        .get(11)
                        .major()
                        .doubleValue(),
                0.01);
        assertEquals(
                euros("0.00"),
                Depreciation.declining(euros("1100"), euros("100"), 5, new BigDecimal("2.3"), false)
                        .get(4));
    }

    /** LibreOffice Help, VDB: of 35000 down to 7500 in 36 parts, the eleventh to the twentieth come to 8603.80. */
    @Test
    void decliningBalanceWithItsSwitchOverAPartOfItsLife() {
        Money part =
                Depreciation.declining(euros("35000"), euros("7500"), 36, BigDecimal.valueOf(2), true)
                        .subList(10, 20)
                        .stream()
                        .reduce(euros("0"), Money::plus);
        assertEquals(8603.802454, part.major().doubleValue(), 0.01);
    }

    /** Worked by hand: 40 % of 1000, 600 and 360 is 400, 240 and 144; the rest of 216 is then 108 a year, above 86.40. */
    @Test
    void decliningBalanceGoesOverToLevelAmountsWhenThatIsMore() {
        assertEquals(
                List.of("400.00", "240.00", "144.00", "108.00", "108.00"),
                amounts(Depreciation.declining(euros("1000"), euros("0"), 5, BigDecimal.valueOf(2), true)));
    }
}
