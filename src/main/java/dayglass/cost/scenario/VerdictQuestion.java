package dayglass.cost.scenario;

import dayglass.base.Money;
import dayglass.cost.verdict.BreakEvenRule;
import dayglass.cost.verdict.RentOrBuy;
import java.util.List;
import java.util.Optional;

/**
 * What is asked: a choice and what is to be said beside it.
 *
 * @param history what was rented before, for the break-even rule; empty where that is not asked
 */
public record VerdictQuestion(
        RentOrBuy choice,
        Optional<Unsure> uncertainty,
        Optional<WrittenOff> writtenOff,
        List<BreakEvenRule.Hire> history) {
    public VerdictQuestion {
        history = List.copyOf(history);
    }

    /** What is not sure, and how often it is drawn. */
    public record Unsure(Scenario.Spreads spreads, Uncertainty.Sample sample) {}

    /**
     * The price written off for the books.
     *
     * @param source of a published table; empty for a method
     */
    public record WrittenOff(String method, String source, List<Money> years) {
        public WrittenOff {
            years = List.copyOf(years);
        }
    }
}
