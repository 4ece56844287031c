package dayglass.cost.scenario;

import dayglass.cost.plan.StopSignal;
import java.util.Optional;
import java.util.function.IntConsumer;

/** Runs a scenario: owning and renting are costed from the same draws. */
public final class Uncertainty {
    private Uncertainty() {}

    /**
     * All draws, or those that it comes to before it is stopped, and a rerun for each end of each bar.
     *
     * @param progress told from any thread how many draws are done
     * @return empty where it was stopped before the first draw was done
     */
    public static Optional<Findings> of(Scenario scenario, Sample sample, StopSignal stop, IntConsumer progress) {
        double[][] costs = scenario.draws(sample.seed()).run(sample.draws(), scenario::costs, stop, progress);
        return costs.length == 0
                ? Optional.empty()
                : Optional.of(Findings.of(scenario, sample, costs, Findings.bars(scenario)));
    }

    /** How many draws, and from which seed. */
    public record Sample(int draws, long seed) {}
}
