package dayglass.cost.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.PurchaseTerms;
import java.math.BigDecimal;
import java.util.List;
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
     * Yearly capital recovery against days of use: Blank and Tarquin, break-even review problem (50000, 5 years, 8 %, 100
     * or 400 a day: 41.743, so 42 days). A year's use is there paid at its end and here by the month, which is worth more
     * by the factor of the uniform months; both sides move alike, so the days are told times that factor.
     */
    @Test
    void aTextbooksDaysAYear() {
        BreakEven found =
                new BreakEvens(Choices.plain(Choices.bought("50000", "0", 60), "8", "100", "400")).inDaysPerYear();
        double atYearEnds = (1 - Math.pow(1.08, -5)) / 0.08;
        double byMonths = (1 - Math.pow(1.08, -5)) / (12 * (Math.pow(1.08, 1.0 / 12) - 1));
        assertEquals(
                41.743 * atYearEnds / byMonths, found.crossings().get(0).at().doubleValue(), 0.001);
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
