package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Problems of renting and buying from outside whose least cost is known; the sources stand in the table. */
class PublishedLeastCostsTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/dayglass/cost/plan/published-least-costs.csv", numLinesToSkip = 1)
    void theEngineFindsTheKnownLeastCost(
            String kind, String job, String options, String needed, String total, String source) {
        List<DateRange> dates = new ArrayList<>();
        int last = lastDay(needed);
        Schedule schedule = Questions.shooting(last);
        for (String run : needed.split(" ", -1)) {
            String[] ends = run.split("-", -1);
            dates.add(DateRange.inclusive(
                    schedule.dateOf(Integer.parseInt(ends[0]) - 1),
                    schedule.dateOf(Integer.parseInt(ends[ends.length - 1]) - 1)));
        }
        List<Question.Rental> rentals = new ArrayList<>();
        for (String option : options.split("\\|", -1)) {
            rentals.add(Questions.rental("option " + rentals.size(), terms(option)));
        }
        Question question =
                Questions.question(schedule, new Question.Need(Questions.SLOT, 1, Set.of(), dates), rentals, List.of());
        Answer answer = Questions.solved(question);
        assertEquals(Money.of("EUR", total), answer.total(), kind + " " + job + ": " + source);
        assertTrue(answer.optimal());
    }

    private static int lastDay(String needed) {
        String[] numbers = needed.split("[ -]", -1);
        return Integer.parseInt(numbers[numbers.length - 1]);
    }

    private static RentalTerms terms(String option) {
        List<RentalTerms.Block> blocks = new ArrayList<>();
        Optional<RentalTerms.ExtraDay> extraDay = Optional.empty();
        String once = "0";
        for (String part : option.split(" ", -1)) {
            String[] sides = part.split(":", -1);
            if (sides[0].equals("once")) {
                once = sides[1];
            } else if (sides[0].endsWith("+")) {
                int after = Integer.parseInt(sides[0].replace("+", ""));
                extraDay = Optional.of(new RentalTerms.ExtraDay(after, Money.of("EUR", sides[1])));
            } else {
                blocks.add(Questions.block(Integer.parseInt(sides[0]), sides[1]));
            }
        }
        return Questions.terms(blocks, extraDay, once);
    }

    /**
     * Rent at 1 a day or buy at B: in hindsight the best costs min(T, B). Source: the ski-rental problem of Karlin,
     * Manasse, Rudolph and Sleator, 1988 (from memory).
     */
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "10", "100"})
    void inHindsightASkierPaysTheLesserOfDaysAndPrice(int price) {
        IntStream.of(1, Math.max(1, price - 1), price, price + 1, 2 * price).forEach(days -> {
            Schedule schedule = Questions.shooting(days);
            Question question = Questions.question(
                    schedule,
                    Questions.everyDay(),
                    List.of(Questions.rental(
                            "skis", Questions.terms(List.of(Questions.block(1, "1")), Optional.empty(), "0"))),
                    List.of(Questions.bought(String.valueOf(price), schedule)));
            Answer answer = Questions.solved(question);
            assertEquals(Money.of("EUR", String.valueOf(Math.min(days, price))), answer.total());
            assertEquals(
                    Optional.of(Money.of("EUR", String.valueOf(days))),
                    answer.comparison().dayRateOnly().total());
            assertEquals(
                    Optional.of(Money.of("EUR", String.valueOf(price))),
                    answer.comparison().buyOnly().total());
        });
    }
}
