package dayglass.cost.scenario;

import dayglass.cost.plan.StopSignal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** Draws inputs from their spreads and works out results from them, many times and on all processors. */
public final class MonteCarlo {
    /** So many draws are one piece of work for a processor. */
    private static final int CHUNK = 250;

    private final List<Spread> inputs;
    private final Chance chance;

    public MonteCarlo(List<Spread> inputs, long seed) {
        this.inputs = List.copyOf(inputs);
        this.chance = new Chance(seed);
    }

    /** What one draw comes to. */
    @FunctionalInterface
    public interface Trial {
        /** Works out the results from inputs drawn in the order of their spreads. */
        double[] of(double[] inputs);
    }

    /** The inputs of a draw, by its number from 0. */
    public double[] inputs(int draw) {
        double[] drawn = new double[inputs.size()];
        for (int input = 0; input < drawn.length; input++) {
            drawn[input] = inputs.get(input).at(chance.of(draw, input));
        }
        return drawn;
    }

    /**
     * Does all draws, or those that it comes to before it is stopped.
     *
     * @param progress told from any thread how many draws are done
     * @return the results of the draws done, in their order
     */
    public double[][] run(int draws, Trial trial, StopSignal stop, IntConsumer progress) {
        double[][] results = new double[draws][];
        AtomicInteger done = new AtomicInteger();
        IntStream.range(0, (draws + CHUNK - 1) / CHUNK).parallel().forEach(chunk -> {
            int end = Math.min(draws, (chunk + 1) * CHUNK);
            int draw = chunk * CHUNK;
            for (; draw < end && !stop.stopped(); draw++) {
                results[draw] = trial.of(inputs(draw));
            }
            progress.accept(done.addAndGet(draw - chunk * CHUNK));
        });
        return Arrays.stream(results).filter(Objects::nonNull).toArray(double[][]::new);
    }
}
