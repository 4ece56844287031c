package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A computation told to stop gives what it has, and what it gives is true. */
class StopSignalTest {
    @Test
    void stoppedAtOnceItGivesNothingOrAValidPlanWithATrueBound() {
        for (int seed = 20_000; seed < 20_200; seed++) {
            Question question = RandomQuestions.small(seed);
            checkAgainst(question, ExhaustiveSearch.of(question), LeastCost.solve(question, () -> true));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 13, 21, 50, 200, 1000})
    void stoppedAfterAWhileItGivesNothingOrAValidPlanWithATrueBound(int polls) {
        for (int seed = 20_200; seed < 20_240; seed++) {
            Question question = RandomQuestions.small(seed);
            checkAgainst(question, ExhaustiveSearch.of(question), LeastCost.solve(question, after(polls)));
        }
        Question job = RandomJobs.film(1, 5, 40, 14);
        Money least = Questions.solved(job).total();
        checkPlan(job, least, LeastCost.solve(job, after(polls)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void stoppedAtOnceAJobHasAPlanAllTheSame(int seed) {
        Question job = RandomJobs.film(seed, 12, 180, 60);
        Costing.Planned planned = assertInstanceOf(Costing.Planned.class, LeastCost.solve(job, () -> true));
        PlanAudit.check(job, planned.answer());
        assertTrue(planned.answer().lowerBound().signum() > 0, "a bound that says something");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 20, 80})
    void aJobOfTooManyPeriodsHasAPlanAndATrueBoundSoonAfterTheSignal(int polls) {
        Question job = RandomJobs.film(2, 3, Schedule.MOST_DAYS, 52);
        Costing.Planned planned = assertInstanceOf(Costing.Planned.class, LeastCost.solve(job, after(polls)));
        Answer answer = planned.answer();
        PlanAudit.check(job, answer);
        assertTrue(answer.lowerBound().signum() > 0, "a bound that says something");
        assertTrue(answer.lowerBound().compareTo(answer.total()) < 0, "not proved on some of the periods alone");
    }

    /** A single and the set that it is in, of which only one can go, beside what is far dearer. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 7, 8, 9, 20})
    void stoppedAtOnceAFirstPlanIsFoundOfWhatSharesStock(int days) {
        Question question = sharing(days);

        List<Choice.Rent> periods = LeastCost.periods(question, () -> true).orElseThrow();

        Map<String, Integer> taken = new LinkedHashMap<>();
        periods.forEach(period -> taken.merge(period.option(), period.dates().days(), Integer::sum));
        assertEquals(
                2 * days, taken.values().stream().mapToInt(Integer::intValue).sum(), taken.toString());
        assertEquals(days, taken.get("nobody"), taken.toString());
    }

    /** Some of twenty can be had; what stands for the rest costs what nothing else comes near. */
    @ParameterizedTest
    @CsvSource({"13, 81.16, 284.06", "8, 101.96, 356.86", "16, 81.36, 284.76", "9, 63.71, 222.98"})
    void whatIsLeftToTheFarDearerIsSoonProved(int copies, String aDay, String aWeek) {
        Question.Need twenty = new Question.Need(Questions.SLOT, 20, Set.of(DayUse.SHOOT), List.of());
        Question question = stocked(
                Questions.question(
                        Questions.shooting(18),
                        twenty,
                        List.of(
                                offer("single", copies, Map.of("one lens", 1), aDay, aWeek),
                                offer("set", 1, Map.of("one lens", 1), "394.13", "1379.45"),
                                offer("nobody", 20, Map.of(), "263826.92", "1846788.44")),
                        List.of()),
                copies);
        PlanSearch search = new PlanSearch(Resolved.of(question));
        search.begin(StopSignal.NEVER);
        search.run(StopSignal.NEVER, 1_000_000);
        assertEquals(search.plan().orElseThrow().total(), search.bound());
    }

    private static Question sharing(int days) {
        Question.Need two = new Question.Need(Questions.SLOT, 2, Set.of(DayUse.SHOOT), List.of());
        Question asked = Questions.question(
                Questions.shooting(days),
                two,
                List.of(
                        offer("single", 1, Map.of("one lens", 1), "80.00", "240.00"),
                        offer("set", 1, Map.of("one lens", 1), "380.00", "1140.00"),
                        offer("nobody", 2, Map.of(), "100000.00", "700000.00")),
                List.of());
        return stocked(asked, 1);
    }

    private static Question stocked(Question asked, int lenses) {
        return new Question(
                asked.job(),
                asked.currency(),
                asked.discountRate(),
                asked.cashLimit(),
                asked.schedule(),
                asked.needs(),
                asked.rentals(),
                asked.purchases(),
                asked.owned(),
                Map.of("one lens", lenses));
    }

    private static Question.Rental offer(String id, int copies, Map<String, Integer> draws, String aDay, String aWeek) {
        RentalTerms terms =
                Questions.terms(List.of(Questions.block(1, aDay), Questions.block(7, aWeek)), Optional.empty(), "0.00");
        return new Question.Rental(id, "A house", Map.of(Questions.SLOT, 1), copies, terms, List.of(), draws);
    }

    private static StopSignal after(int polls) {
        AtomicInteger left = new AtomicInteger(polls);
        return () -> left.getAndDecrement() <= 0;
    }

    private static void checkAgainst(Question question, ExhaustiveSearch.Findings found, Costing costing) {
        if (costing instanceof Costing.Impossible impossible) {
            assertTrue(found.best().isEmpty(), question.job() + ": there is a plan");
            assertEquals(found.shortages(), impossible.shortages(), question.job());
            assertEquals(found.cashLimitOnly(), impossible.cashLimitOnly(), question.job());
        } else if (costing instanceof Costing.Planned planned) {
            assertTrue(found.best().isPresent(), question.job() + ": there is no plan");
            checkPlan(question, found.best().get(), planned);
        }
    }

    private static void checkPlan(Question question, Money least, Costing costing) {
        if (costing instanceof Costing.Planned planned) {
            Answer answer = planned.answer();
            PlanAudit.check(question, answer);
            assertTrue(answer.lowerBound().compareTo(least) <= 0, question.job() + ": bound over " + least);
            assertTrue(least.compareTo(answer.total()) <= 0, question.job() + ": total under " + least);
        }
    }
}
