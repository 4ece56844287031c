package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dayglass.base.Money;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two thousand small random questions, some 1,250 of them with a plan, each tried out whole: the engine must agree on every figure. */
class EngineAgainstExhaustiveSearchTest {
    private static final int QUESTIONS_A_BATCH = 200;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    void theEngineFindsWhatTryingEverythingFinds(int batch) {
        int planned = 0;
        for (int index = 0; index < QUESTIONS_A_BATCH; index++) {
            long seed = (long) batch * QUESTIONS_A_BATCH + index;
            Question question = RandomQuestions.small(seed);
            ExhaustiveSearch.Findings found = ExhaustiveSearch.of(question);
            planned += LeastCost.solve(question, Questions.patience())
                    .fold(
                            plan -> agree(question, found, plan.answer()),
                            impossible -> agree(question, found, impossible),
                            outOfTime -> fail(question.job() + ": ran out of time without a limit"));
        }
        assertTrue(planned > QUESTIONS_A_BATCH / 2, "too few questions with a plan to say much: " + planned);
    }

    private static int agree(Question question, ExhaustiveSearch.Findings found, Answer answer) {
        String job = question.job();
        Answer.Comparison rows = answer.comparison();
        assertEquals(found.best(), Optional.of(answer.total()), job + ": total");
        assertRow(found.ownedOnly(), rows.ownedOnly(), job + ": ownedOnly");
        assertRow(found.dayRateOnly(), rows.dayRateOnly(), job + ": dayRateOnly");
        assertRow(found.weekRateOnly(), rows.weekRateOnly(), job + ": weekRateOnly");
        assertRow(found.rentOnly(), rows.rentOnly(), job + ": rentOnly");
        assertRow(found.buyOnly(), rows.buyOnly(), job + ": buyOnly");
        assertRow(found.best(), rows.best(), job + ": best");
        assertTrue(answer.optimal(), job + ": proved");
        PlanAudit.check(question, answer);
        return 1;
    }

    private static void assertRow(Optional<Money> expected, Answer.Row row, String message) {
        assertEquals(expected, row.total(), message);
        assertEquals(expected, row.bound(), message + " bound");
    }

    private static int agree(Question question, ExhaustiveSearch.Findings found, Costing.Impossible impossible) {
        assertEquals(Optional.empty(), found.best(), question.job() + ": has a plan");
        assertEquals(found.shortages(), impossible.shortages(), question.job() + ": shortages");
        assertEquals(found.cashLimitOnly(), impossible.cashLimitOnly(), question.job() + ": cash limit only");
        return 0;
    }
}
