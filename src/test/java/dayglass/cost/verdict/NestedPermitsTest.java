package dayglass.cost.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.verdict.NestedPermits.Permit;
import dayglass.cost.verdict.NestedPermits.Ruling;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NestedPermitsTest {
    /** Day 1, a Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2027, 1, 4);

    private static final List<Permit> DAY_WEEK_MONTH = List.of(permit(1, "1"), permit(7, "3"), permit(28, "9"));

    private static Permit permit(int days, String price) {
        return new Permit(days, Choices.euros(price));
    }

    /** Such as {@code 1-5 8}: days by their number. */
    private static NavigableSet<LocalDate> days(String text) {
        TreeSet<LocalDate> days = new TreeSet<>();
        for (String part : text.split(" ", -1)) {
            List<Integer> ends =
                    Arrays.stream(part.split("-", -1)).map(Integer::valueOf).toList();
            for (int day = ends.get(0); day <= ends.get(ends.size() - 1); day++) {
                days.add(MONDAY.plusDays(day - 1L));
            }
        }
        return days;
    }

    /** Parking permits of 1, 7 and 28 days (the problem: Meyerson 2005); the least costs by exhaustive search. */
    @ParameterizedTest
    @CsvSource({
        "1 2 3, 3",
        "1 2 3 8, 4",
        "1 3 5 8, 4",
        "1-7, 3",
        "1-4 8-11, 6",
        "1 5 9 13 17 21 25, 7",
        "1-28, 9",
        "6 7 8 9, 3",
        "1-5 8-12 15-19 22-26, 9",
        "1 2 29 30 31 32, 5",
        "1 2 8 9 15 16 22 23, 8"
    })
    void theLeastInHindsightIsThatOfExhaustiveSearch(String needed, String least) {
        Ruling ruling = new NestedPermits(DAY_WEEK_MONTH, Choices.euros("1000")).along(days(needed));
        assertEquals(Choices.euros(least), ruling.hindsightAnyDay());
    }

    /** From the same source: by weeks of the calendar 6 to 9 costs 4. */
    @Test
    void weeksOfTheCalendarMayCostMore() {
        Ruling ruling = new NestedPermits(DAY_WEEK_MONTH, Choices.euros("1000")).along(days("6 7 8 9"));
        assertEquals(Choices.euros("4"), ruling.hindsight());
    }

    /** By hand: two days at 1 each leave 1 of the week's 3 to the third; the purchase of 5 is full with the fifth sum. */
    @Test
    void theRuleTakesTheLongestThatIsFull() {
        Ruling ruling = new NestedPermits(DAY_WEEK_MONTH, Choices.euros("5")).along(days("1-4 8-10 15"));
        List<NestedPermits.Taken> expected = List.of(
                taken(1, 1, 1, "1"),
                taken(2, 2, 2, "1"),
                taken(3, 1, 7, "3"),
                taken(8, 8, 8, "1"),
                new NestedPermits.Taken(MONDAY.plusDays(8), Optional.empty(), Choices.euros("5")));
        assertEquals(expected, ruling.taken());
        assertEquals(Optional.of(MONDAY.plusDays(8)), ruling.buysOn());
        assertEquals(Choices.euros("11"), ruling.cost());
        assertEquals(Choices.euros("5"), ruling.hindsight());
        assertEquals(4, ruling.kinds());
    }

    private static NestedPermits.Taken taken(int on, int from, int to, String price) {
        return new NestedPermits.Taken(
                MONDAY.plusDays(on - 1L),
                Optional.of(DateRange.inclusive(MONDAY.plusDays(from - 1L), MONDAY.plusDays(to - 1L))),
                Choices.euros(price));
    }

    /** With days alone it is the break-even rule: ski rental, Karlin, Manasse, Rudolph and Sleator 1988 (from memory). */
    @ParameterizedTest
    @CsvSource({"1-9, 9, 9", "1-10, 19, 10", "1-40, 19, 10"})
    void daysAndThePurchaseAreTheBreakEvenRule(String needed, String cost, String hindsight) {
        Ruling ruling = new NestedPermits(List.of(permit(1, "1")), Choices.euros("10")).along(days(needed));
        assertEquals(Choices.euros(cost), ruling.cost());
        assertEquals(Choices.euros(hindsight), ruling.hindsight());
        assertEquals(2, ruling.kinds());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void randomHistoriesNeverPassTheFactorAndCellsNeverCostMoreThanTwice(int seed) {
        Random random = new Random(seed);
        int bought = 0;
        double worst = 0;
        for (int index = 0; index < 400; index++) {
            List<Permit> permits = new ArrayList<>();
            int length = 1;
            int price = 1 + random.nextInt(5_000);
            for (int kind = 0; kind <= random.nextInt(3); kind++) {
                permits.add(new Permit(length, cents(price)));
                length *= 2 + random.nextInt(6);
                price += 1 + random.nextInt(5 * price);
            }
            Money purchase = cents(1 + random.nextInt(20 * price));
            TreeSet<LocalDate> needed = new TreeSet<>();
            for (int day = 1 + random.nextInt(80); day > 0; day--) {
                needed.add(MONDAY.plusDays(random.nextInt(random.nextBoolean() ? 60 : 400)));
            }
            Ruling ruling = new NestedPermits(permits, purchase).along(needed);
            assertTrue(
                    ruling.cost().compareTo(ruling.hindsight().times(ruling.kinds())) <= 0,
                    () -> permits + " " + purchase + " " + needed);
            assertTrue(ruling.hindsightAnyDay().compareTo(ruling.hindsight()) <= 0);
            assertTrue(ruling.hindsight().compareTo(ruling.hindsightAnyDay().times(2)) <= 0);
            assertTrue(ruling.cost().compareTo(ruling.hindsight()) >= 0);
            bought += ruling.buysOn().isPresent() ? 1 : 0;
            worst = Math.max(
                    worst,
                    ruling.cost().minor().doubleValue()
                            / ruling.hindsight().minor().doubleValue());
        }
        assertTrue(bought > 40 && bought < 360, bought + " bought");
        assertTrue(worst > 1.7, "a history that tries the rule: " + worst);
    }

    private static Money cents(int minor) {
        return Money.ofMinor(Choices.euros("0").currency(), minor);
    }

    @Test
    void permitsThatDoNotLieInEachOtherAreRefused() {
        List<Permit> askew = List.of(permit(7, "3"), permit(30, "9"));
        assertThrows(IllegalArgumentException.class, () -> new NestedPermits(askew, Choices.euros("50")));
        assertThrows(IllegalArgumentException.class, () -> new NestedPermits(List.of(), Choices.euros("50")));
    }
}
