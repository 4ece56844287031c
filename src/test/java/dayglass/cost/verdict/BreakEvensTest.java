package dayglass.cost.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.Depreciation;
import dayglass.cost.ownership.PurchaseTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where buying and renting cost the same. */
class BreakEvensTest {
    /**
     * Days of use, all within the year of the term where it is one year and undiscounted: Schwalbe, IT Project
     * Management, ch. 12 (240 a day or 6800 and 70 a day: the published 40 days; 800 or 12000 and 400: 30 days, from
     * memory).
     */
    @ParameterizedTest
    @CsvSource({"6800, 70, 240, 40", "12000, 400, 800, 30"})
    void aPublishedBreakEvenInDays(String price, String perDay, String rent, String days) {
        BreakEven found =
                new BreakEvens(Choices.plain(Choices.bought(price, "0", 12), "0", perDay, rent)).inDaysPerYear();
        assertEquals(1, found.crossings().size());
        BreakEven.Crossing crossing = found.crossings().get(0);
        assertEquals(0, new BigDecimal(days).compareTo(crossing.at()), crossing::toString);
        assertEquals(Choices.euros("0.00"), crossing.before().saving());
    }

    /** Without interest half a year of rent is half of a whole one. */
    @Test
    void theYearsOfRentAddUpToTheWhole() {
        RentOrBuy choice = Choices.plain(Choices.bought("6800", "0", 30), "0", "70", "240");
        List<Money> years = choice.presentCostOfRentingByYear();
        assertEquals(3, years.size());
        assertEquals(years.get(0), years.get(2).times(2));
        for (int seed = 0; seed < 50; seed++) {
            RentOrBuy random = Choices.random(new Random(seed));
            assertEquals(
                    random.presentCostOfRenting(),
                    random.presentCostOfRentingByYear().stream().reduce(Money.zero(random.currency()), Money::plus));
        }
    }

    /** Schwalbe, as above: at 30 days renting is 7200 and buying 8900. */
    @Test
    void theCurveHoldsThePublishedCosts() {
        BreakEven found =
                new BreakEvens(Choices.plain(Choices.bought("6800", "0", 12), "0", "70", "240")).inDaysPerYear();
        assertEquals(
                new BreakEven.Point(BigDecimal.valueOf(30), Choices.euros("8900.00"), Choices.euros("7200.00")),
                found.curve().get(30));
    }

    /**
     * Yearly capital recovery against days of use: Blank and Tarquin, break-even review problem (41.743, so 42 days); two
     * engineering-economy problems of an earthmover and a tractor (inputs published, the days computed from the formula of
     * the equivalent annual cost). Yearly costs are there paid at the year's end and here by the month, which is worth
     * more by the factor of the uniform months: the yearly cost is told less that, and so are the days.
     */
    @ParameterizedTest
    @CsvSource({
        "50000, 0, 5, 8, 0, 100, 400, 41.743",
        "350000, 20000, 20, 12, 7000, 300, 500, 267.900",
        "75000, 5000, 15, 12, 6000, 30, 210, 93.765"
    })
    void aTextbooksDaysAYear(
            String price, String salvage, int years, int rate, double aYear, String perDay, String rent, double days) {
        double growth = 1 + rate / 100.0;
        double whole = 1 - Math.pow(growth, -years);
        double later = whole / (growth - 1) * 12 * (Math.pow(growth, 1.0 / 12) - 1) / whole;
        Money storage = Money.of(
                "EUR",
                BigDecimal.valueOf(aYear * later)
                        .setScale(2, RoundingMode.HALF_UP)
                        .toPlainString());
        PurchaseTerms terms = stored(Choices.bought(price, salvage, 12 * years), storage);
        BreakEven found = new BreakEvens(Choices.plain(terms, String.valueOf(rate), perDay, rent)).inDaysPerYear();
        assertEquals(days * later, found.crossings().get(0).at().doubleValue(), 0.0015);
    }

    /**
     * An engineering-economy problem after a tax of 26 % (inputs published, the days computed): 40000 over 5 years at 10 %,
     * 320 a day or rent at 600. What is paid by the day costs 74 % of itself, and straight-line depreciation brings back
     * 26 % of each year's at its end; that and the days are told by the month, as above.
     */
    @Test
    void aTextbooksDaysAYearAfterTax() {
        double later = 12 * (Math.pow(1.1, 1.0 / 12) - 1) / 0.1;
        double written = Depreciation.straightLine(Choices.euros("40000"), Choices.euros("0"), 5)
                .get(0)
                .major()
                .doubleValue();
        PurchaseTerms bought = Choices.bought("40000", "0", 60);
        PurchaseTerms terms = new PurchaseTerms(
                bought.price(),
                bought.tax(),
                bought.extras(),
                bought.termMonths(),
                bought.resale(),
                bought.holding(),
                bought.service(),
                Optional.of(new PurchaseTerms.Letting(
                        BigDecimal.ONE,
                        Money.of(
                                "EUR",
                                BigDecimal.valueOf(0.26 * written * later)
                                        .setScale(2, RoundingMode.HALF_UP)
                                        .toPlainString()),
                        Percent.of("100"))));
        BreakEven found = new BreakEvens(Choices.plain(terms, "10", "236.80", "444.00")).inDaysPerYear();
        assertEquals(40.888 * later, found.crossings().get(0).at().doubleValue(), 0.0015);
    }

    private static PurchaseTerms stored(PurchaseTerms terms, Money storage) {
        return new PurchaseTerms(
                terms.price(),
                terms.tax(),
                terms.extras(),
                terms.termMonths(),
                terms.resale(),
                new PurchaseTerms.Holding(Percent.ZERO, storage),
                terms.service(),
                terms.letting());
    }

    /**
     * Months until two ways cost the same: Phillips, Real-World Project Management: build for 45000 and 4500 a month, or
     * buy for 23000 and 6500 a month, 11 months. What both pay at once is left out on both sides.
     */
    @Test
    void aPublishedBreakEvenInMonths() {
        PurchaseTerms terms = stored(Choices.bought("22000", "0", 24), Choices.euros("54000"));
        PurchaseTerms worthless = new PurchaseTerms(
                terms.price(),
                terms.tax(),
                terms.extras(),
                terms.termMonths(),
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(0, Choices.euros("0")))),
                        Percent.ZERO),
                terms.holding(),
                terms.service(),
                terms.letting());
        BreakEven found = new BreakEvens(Choices.plain(worthless, "0", "0", "7800")).inMonthsOwned();
        assertEquals(1, found.crossings().size());
        assertEquals(
                0, BigDecimal.valueOf(11).compareTo(found.crossings().get(0).at()), found.crossings()::toString);
        assertTrue(found.crossings().get(0).owningIsCheaperBeyond());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void everyCrossingIsEvaluatedOnBothSides(int batch) {
        Random random = new Random(800 + batch);
        int found = 0;
        for (int index = 0; index < 4; index++) {
            RentOrBuy choice = Choices.random(random);
            BreakEvens all = new BreakEvens(choice);
            for (BreakEven each :
                    List.of(all.inDaysPerYear(), all.inMonthsOwned(), all.inResaleValue(), all.inRate())) {
                assertEquals(each.crossings().isEmpty(), !each.none().isEmpty());
                for (BreakEven.Crossing crossing : each.crossings()) {
                    int before = crossing.before().saving().signum();
                    int after = crossing.after().saving().signum();
                    assertTrue(before * after <= 0, crossing::toString);
                    found++;
                }
            }
        }
        assertTrue(found > 3, found + " crossings");
    }

    /** The sides are what the choice itself costs with that one thing moved. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void theSidesOfACrossingAreTheChoiceItselfMoved(int seed) {
        RentOrBuy choice = Choices.random(new Random(seed));
        BreakEvens all = new BreakEvens(choice);
        for (BreakEven.Crossing crossing : all.inMonthsOwned().crossings()) {
            RentOrBuy moved = choice.soldAfter(crossing.after().place().intValueExact());
            assertEquals(moved.presentCostOfOwning(), crossing.after().owning());
            assertEquals(moved.presentCostOfRenting(), crossing.after().renting());
        }
        for (BreakEven.Crossing crossing : all.inResaleValue().crossings()) {
            int months = choice.terms().termMonths();
            Money value = Money.of(choice.currency(), crossing.before().place());
            PurchaseTerms terms = choice.terms();
            PurchaseTerms moved = new PurchaseTerms(
                    terms.price(),
                    terms.tax(),
                    terms.extras(),
                    months,
                    new PurchaseTerms.Resale(
                            new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(months, value))),
                            terms.resale().sellingCost()),
                    terms.holding(),
                    terms.service(),
                    terms.letting());
            RentOrBuy other = new RentOrBuy(
                    choice.discountRate(),
                    moved,
                    choice.running(),
                    choice.loan(),
                    choice.jobs(),
                    choice.rates(),
                    choice.rateChangePerYear());
            assertEquals(other.presentCostOfOwning(), crossing.before().owning());
        }
    }

    /** A thing that gains more than it costs is never cheaper to rent, and the curve says so. */
    @Test
    void noneIsSaidSo() {
        BreakEvens never = new BreakEvens(Choices.plain(Choices.bought("1000", "3000", 12), "0", "0", "10"));
        assertEquals("owning is cheaper all along", never.inDaysPerYear().none());
        assertFalse(never.inResaleValue().crossings().isEmpty());
        assertEquals(
                Choices.euros("900.00").major(),
                never.inResaleValue().crossings().get(0).before().place());
    }

    /** Owning costs 5 all along; renting 3, 6, 4, 5 and 9, as it falls where a long hire begins. */
    @Test
    void severalAreAllTold() {
        List<BreakEven.Point> curve =
                List.of(point(1, 5, 3), point(2, 5, 6), point(3, 5, 4), point(4, 5, 5), point(5, 5, 9));
        BreakEven found = BreakEven.along(curve);
        assertEquals(
                List.of("1.667", "2.500", "4.000"),
                found.crossings().stream()
                        .map(each -> each.at().toPlainString())
                        .toList());
        assertEquals(
                List.of(true, false, true),
                found.crossings().stream()
                        .map(BreakEven.Crossing::owningIsCheaperBeyond)
                        .toList());
    }

    private static BreakEven.Point point(int place, int owning, int renting) {
        return new BreakEven.Point(
                BigDecimal.valueOf(place),
                Choices.euros(String.valueOf(owning)),
                Choices.euros(String.valueOf(renting)));
    }

    /** Worked by hand: rent of 1000 a year, 1030 and 1060.90, undiscounted. */
    @Test
    void ratesThatRiseDoSoEachYear() {
        RentOrBuy flat = Choices.plain(Choices.bought("1000", "0", 36), "0", "0", "100");
        RentOrBuy rising = new RentOrBuy(
                flat.discountRate(),
                flat.terms(),
                flat.running(),
                flat.loan(),
                flat.jobs(),
                flat.rates(),
                Percent.of("3"));
        assertEquals(Choices.euros("3000.00"), flat.presentCostOfRenting());
        assertEquals(Choices.euros("3090.90"), rising.presentCostOfRenting());
    }

    @Test
    void aJobKeepsItsDaysAndItsWeeks() {
        JobKind kind = new JobKind("job", BigDecimal.ONE, 12, 2, 5);
        assertEquals(16, kind.schedule().days());
        long prep = java.util.stream.IntStream.range(0, 16)
                .filter(day -> kind.schedule().useOn(day) == dayglass.cost.DayUse.PREP)
                .count();
        long shoot = java.util.stream.IntStream.range(0, 16)
                .filter(day -> kind.schedule().useOn(day) == dayglass.cost.DayUse.SHOOT)
                .count();
        assertEquals(List.of(2L, 10L), List.of(prep, shoot));
        for (int perWeek = 1; perWeek <= 7; perWeek++) {
            JobKind longest = new JobKind("job", BigDecimal.ONE, 1, 0, perWeek);
            assertTrue(longest.schedule(longest.mostDays()).days() <= 1_100);
        }
    }
}
