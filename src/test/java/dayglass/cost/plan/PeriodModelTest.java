package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.cost.plan.PeriodModel.Form;
import dayglass.cost.rental.PlainPricing;
import dayglass.cost.rental.PlainPricing.Price;
import dayglass.cost.rental.PlainPricing.Rates;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The model that general solvers are given must itself say what the contract says. */
class PeriodModelTest {
    private static final int PLENTY = 1_000_000;

    @Test
    void pricesWithinThePeriodModelArePlainPrices() throws Exception {
        int compared = 0;
        for (int seed = 0; seed < 400; seed++) {
            Question question = RandomQuestions.small(seed);
            PeriodModel model = new PeriodModel(question, Form.COVERING, PLENTY);
            for (Question.Rental rental : question.rentals()) {
                PlainPricing plain =
                        new PlainPricing(rental.terms(), question.schedule(), question.currency(), Rates.EVERY_BLOCK);
                for (int first = 0; first < question.schedule().days(); first++) {
                    long[] prices = model.pricesFrom(rental, first);
                    for (int last = first; last < question.schedule().days(); last++) {
                        boolean open = PlainNeeds.insideOneWindow(
                                rental.available(),
                                question.schedule().dateOf(first),
                                question.schedule().dateOf(last));
                        Optional<Money> expected = open
                                ? plain.price(first, last)
                                        .map(Price::total)
                                        .map(total -> Money.of(question.currency(), total))
                                : Optional.empty();
                        Optional<Money> actual = prices[last] < Long.MAX_VALUE / 4
                                ? Optional.of(Money.ofMinor(question.currency(), prices[last]))
                                : Optional.empty();
                        assertEquals(expected, actual, question.job() + " " + rental.id() + " " + first + "-" + last);
                        compared++;
                    }
                }
            }
        }
        assertTrue(compared > 5_000, "compared too few: " + compared);
    }

    /** The same small questions by two independent ways: tried out whole, and as a mixed-integer programme. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    void aGeneralSolverOnTheModelFindsWhatTryingEverythingFinds(int batch) throws Exception {
        for (int seed = batch * 50; seed < batch * 50 + 50; seed++) {
            Question question = RandomQuestions.small(seed);
            Optional<Long> expected = ExhaustiveSearch.of(question)
                    .best()
                    .map(total -> total.minor().longValueExact());
            OjalgoSolver solver = new OjalgoSolver();
            PeriodModel model = new PeriodModel(question, solver.form(), PLENTY);
            GeneralSolver.Outcome outcome = solver.solve(model, Duration.ofMinutes(1), 1e-9);
            assertEquals(expected, outcome.total(), question.job() + " " + outcome);
        }
    }
}
