package dayglass.planning;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import java.util.Optional;

/** Solves a kept request anew, with this program's engine, to see whether the total still holds. Keeps nothing. */
public final class RunAgain {
    private final Engine engine;

    public RunAgain(Engine engine) {
        this.engine = engine;
    }

    /**
     * What came of it.
     *
     * @param engineVersion that solved it now
     * @param costing the new outcome
     */
    public record Rerun(KeptCosting.Summary earlier, String engineVersion, Costing costing) {
        /** The new total, where a plan was found. */
        public Optional<Money> total() {
            return costing.fold(
                    planned -> Optional.of(planned.answer().total()),
                    impossible -> Optional.empty(),
                    outOfTime -> Optional.empty());
        }

        public boolean sameTotal() {
            return total().equals(Optional.of(earlier.total()));
        }
    }

    public Outcome<Rerun> of(KeptCosting kept) {
        Question question = kept.question();
        return engine.solve(question, kept.summary().timeLimitSeconds(), StopSignal.NEVER)
                .map(costing -> new Rerun(kept.summary(), engine.version(), costing));
    }
}
