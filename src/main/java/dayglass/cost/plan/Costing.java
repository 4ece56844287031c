package dayglass.cost.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/** What comes of a question: a plan, the reason why there is none, or no plan within the time. */
public sealed interface Costing {
    /** A plan was found. */
    record Planned(Answer answer) implements Costing {}

    /**
     * No plan exists.
     *
     * @param shortages every slot and day that all options together cannot cover, by date, then slot as first asked for
     * @param cashLimitOnly the list is empty and the cash limit alone stands in the way
     */
    record Impossible(List<Shortage> shortages, boolean cashLimitOnly) implements Costing {
        public Impossible {
            shortages = List.copyOf(shortages);
        }
    }

    /** The stop signal came before any plan was found, and none was proved impossible. */
    record OutOfTime() implements Costing {}

    /** A slot that stays {@code missing} short on a day whatever is chosen. */
    record Shortage(String slot, LocalDate date, int missing) {}

    /** The three cases, each handled. */
    default <T> T fold(
            Function<Planned, T> planned, Function<Impossible, T> impossible, Function<OutOfTime, T> outOfTime) {
        if (this instanceof Planned p) {
            return planned.apply(p);
        }
        if (this instanceof Impossible i) {
            return impossible.apply(i);
        }
        return outOfTime.apply((OutOfTime) this);
    }
}
