package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold between the answers to two questions of which one is made from the other. */
class EnginePropertiesTest {
    private static final int SMALL_QUESTIONS = 250;

    /** Small questions in batches of fifty, and a few jobs too large to be tried out. */
    static Stream<List<Question>> questions() {
        Stream<List<Question>> small = IntStream.range(0, SMALL_QUESTIONS / 50)
                .mapToObj(batch -> IntStream.range(batch * 50, batch * 50 + 50)
                        .mapToObj(index -> RandomQuestions.small(10_000L + index))
                        .toList());
        Stream<List<Question>> jobs = IntStream.range(0, 4).mapToObj(seed -> List.of(RandomJobs.film(seed, 3, 21, 9)));
        return Stream.concat(small, jobs);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void anotherOptionNeverRaisesTheTotal(List<Question> questions) {
        for (Question question : questions) {
            Optional<Money> whole = total(question);
            for (int index = 0; index < options(question); index++) {
                Optional<Money> without = total(withoutOption(question, index));
                assertNoMore(whole, without, question.job() + " without option " + index);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void anotherNeededDayNeverLowersTheTotal(List<Question> questions) {
        for (Question question : questions) {
            Random random = new Random(question.job().hashCode());
            LocalDate date = question.schedule()
                    .dateOf(random.nextInt(question.schedule().days()));
            List<Question.Need> needs = new ArrayList<>(question.needs());
            String slot = needs.get(random.nextInt(needs.size())).slot();
            needs.add(new Question.Need(slot, 1, Set.of(), List.of(DateRange.inclusive(date, date))));
            assertNoMore(
                    total(question),
                    total(Variations.withNeeds(question, needs)),
                    question.job() + " with " + slot + " on " + date);
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void twiceThePricesAreTwiceTheTotalWhereNothingIsRounded(List<Question> questions) {
        int planned = 0;
        for (Question question : questions) {
            Optional<Money> once = total(Variations.unrounded(question, 1));
            Optional<Money> twice = total(Variations.unrounded(question, 2));
            assertEquals(once.map(total -> total.times(2)), twice, question.job());
            planned += once.isPresent() ? 1 : 0;
        }
        assertTrue(planned > 0, "no question with a plan, so nothing was shown");
    }

    @ParameterizedTest
    @MethodSource("questions")
    void theOrderOfWhatIsListedNeverMatters(List<Question> questions) {
        for (Question question : questions) {
            Random random = new Random(question.job().hashCode());
            Question shuffled = new Question(
                    question.job(),
                    question.currency(),
                    question.discountRate(),
                    question.cashLimit(),
                    question.schedule(),
                    shuffled(question.needs(), random),
                    shuffled(question.rentals(), random),
                    shuffled(question.purchases(), random),
                    shuffled(question.owned(), random),
                    question.stock());
            assertEquals(rows(question), rows(shuffled), question.job());
        }
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        List<T> shuffled = new ArrayList<>(list);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    private static int options(Question question) {
        return question.rentals().size()
                + question.purchases().size()
                + question.owned().size();
    }

    private static Question withoutOption(Question question, int index) {
        int purchase = index - question.rentals().size();
        int owned = purchase - question.purchases().size();
        return Variations.withOptions(
                question,
                without(question.rentals(), index),
                without(question.purchases(), purchase),
                without(question.owned(), owned));
    }

    private static <T> List<T> without(List<T> list, int index) {
        List<T> fewer = new ArrayList<>(list);
        if (index >= 0 && index < fewer.size()) {
            fewer.remove(index);
        }
        return fewer;
    }

    private static void assertNoMore(Optional<Money> lesser, Optional<Money> greater, String message) {
        if (greater.isPresent()) {
            assertTrue(lesser.isPresent(), message + ": has a plan although there is less to choose from");
            assertTrue(lesser.get().compareTo(greater.get()) <= 0, message + ": " + lesser + " over " + greater);
        }
    }

    private static Optional<Money> total(Question question) {
        return solve(question, Answer::total);
    }

    private static List<Optional<Money>> rows(Question question) {
        Optional<Answer.Comparison> rows = solve(question, Answer::comparison);
        return rows.stream()
                .flatMap(row -> Stream.of(
                        row.ownedOnly(),
                        row.dayRateOnly(),
                        row.weekRateOnly(),
                        row.rentOnly(),
                        row.buyOnly(),
                        row.best()))
                .map(Answer.Row::total)
                .toList();
    }

    private static <T> Optional<T> solve(Question question, Function<Answer, T> part) {
        return LeastCost.solve(question, Questions.patience())
                .fold(
                        planned -> {
                            assertTrue(planned.answer().optimal(), question.job() + ": proved");
                            PlanAudit.check(question, planned.answer());
                            return Optional.of(part.apply(planned.answer()));
                        },
                        impossible -> Optional.<T>empty(),
                        outOfTime -> {
                            throw new AssertionError(question.job() + ": out of time without a limit");
                        });
    }
}
