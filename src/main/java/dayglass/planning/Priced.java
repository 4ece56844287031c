package dayglass.planning;

import dayglass.base.Stored;
import dayglass.cost.plan.Costing;
import java.util.function.Function;

/** What comes of costing something: a plan, which is then kept, or the reason why there is none. */
public sealed interface Priced {
    record Kept(Stored<KeptCosting.Id, KeptCosting> costing) implements Priced {}

    record NoPlan(Costing.Impossible why) implements Priced {}

    record OutOfTime() implements Priced {}

    /** The three cases, each handled. */
    default <T> T fold(Function<Kept, T> kept, Function<NoPlan, T> noPlan, Function<OutOfTime, T> outOfTime) {
        if (this instanceof Kept k) {
            return kept.apply(k);
        }
        if (this instanceof NoPlan n) {
            return noPlan.apply(n);
        }
        return outOfTime.apply((OutOfTime) this);
    }
}
