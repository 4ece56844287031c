package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jobs too large to be tried out whole, against a general mixed-integer solver on the same question. */
class EngineAgainstGeneralSolverTest {
    private static final int MOST_COLUMNS = 50_000;

    @ParameterizedTest
    @CsvSource({
        "1, 2, 14, 6",
        "2, 2, 21, 8",
        "3, 3, 14, 8",
        "4, 3, 21, 9",
        "5, 3, 28, 10",
        "6, 4, 21, 12",
        "7, 4, 28, 12",
        "8, 4, 35, 12",
        "9, 5, 28, 14",
        "10, 5, 35, 16",
        "11, 6, 28, 16",
        "12, 6, 42, 18"
    })
    void boundAndTotalEncloseTheGeneralSolversLeast(int seed, int slots, int days, int options) throws Exception {
        Question question = RandomJobs.film(seed, slots, days, options);
        OjalgoSolver solver = new OjalgoSolver();
        PeriodModel model = new PeriodModel(question, solver.form(), MOST_COLUMNS);
        GeneralSolver.Outcome outcome = solver.solve(model, Duration.ofMinutes(2), 1e-9);
        assertEquals(GeneralSolver.Status.SOLVED, outcome.status(), "the general solver itself");
        Money least = Money.ofMinor(question.currency(), outcome.total().orElseThrow());
        Answer answer = Questions.solved(question);
        assertTrue(answer.lowerBound().compareTo(least) <= 0, answer.lowerBound() + " bounds " + least);
        assertTrue(least.compareTo(answer.total()) <= 0, least + " is the least, not " + answer.total());
        if (answer.optimal()) {
            assertEquals(least, answer.total());
        }
    }
}
