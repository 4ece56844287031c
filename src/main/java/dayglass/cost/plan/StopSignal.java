package dayglass.cost.plan;

/**
 * Asks a computation to end with what it has. The caller owns the clock or the button behind it; it is polled often
 * and must be cheap.
 */
@FunctionalInterface
public interface StopSignal {
    StopSignal NEVER = () -> false;

    boolean stopped();

    /** Stops when either does. */
    default StopSignal or(StopSignal other) {
        return () -> stopped() || other.stopped();
    }
}
