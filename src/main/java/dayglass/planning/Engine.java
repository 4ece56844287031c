package dayglass.planning;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Works questions out, a few at a time and each within a time, until the program ends. */
public final class Engine {
    /** The longest time limit, and the one that holds where none is set, in seconds. */
    public static final int MOST_SECONDS = 600;

    private static final int SECONDS_TO_WAIT = 20;

    private final String version;
    private final Clock clock;
    /** In turn, so that a sheet of many ways keeps nobody waiting for all of them. */
    private final Semaphore places =
            new Semaphore(Math.max(2, Runtime.getRuntime().availableProcessors()), true);

    private final AtomicBoolean ending = new AtomicBoolean();

    /**
     * An engine of the program's own version.
     *
     * @param version kept with each costing
     */
    public Engine(String version, Clock clock) {
        this.version = version;
        this.clock = clock;
    }

    public String version() {
        return version;
    }

    public Clock clock() {
        return clock;
    }

    /** Ends what is being worked out, with the best found so far. */
    public void end() {
        ending.set(true);
    }

    /**
     * Solves the question; refused only where too many are being solved already.
     *
     * @param caller ends it before its time, with the best found so far
     */
    Outcome<Costing> solve(Question question, Optional<Integer> timeLimitSeconds, StopSignal caller) {
        Instant deadline = clock.instant().plusSeconds(timeLimitSeconds.orElse(MOST_SECONDS));
        StopSignal stop =
                () -> caller.stopped() || ending.get() || !clock.instant().isBefore(deadline);
        try {
            if (!places.tryAcquire(SECONDS_TO_WAIT, TimeUnit.SECONDS)) {
                return Outcome.refused(
                        Problem.Code.BUSY, "Other costings take all the room there is; try again in a while.");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Outcome.refused(Problem.Code.BUSY, "The program is ending.");
        }
        try {
            return Outcome.done(LeastCost.solve(question, stop));
        } finally {
            places.release();
        }
    }
}
