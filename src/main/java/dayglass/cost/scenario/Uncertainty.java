package dayglass.cost.scenario;

import dayglass.cost.plan.StopSignal;
import java.util.Optional;
import java.util.function.IntConsumer;

/** Runs a scenario: owning and renting are costed from the same draws. */
public final class Uncertainty {
    private Uncertainty() {}

    /**
     * All draws, and a rerun for each end of each bar.
     *
     * @param progress told from any thread how many draws are done
     * @return empty where it was stopped
     */
    public static Optional<Findings> of(Scenario scenario, Sample sample, StopSignal stop, IntConsumer progress) {
        return scenario.draws(sample.seed())
                .run(sample.draws(), scenario::costs, stop, progress)
                .map(costs -> Findings.of(scenario, sample.seed(), costs, Findings.bars(scenario)));
    }

    /** How many draws, and from which seed. */
    public record Sample(int draws, long seed) {}
}
