package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Found;
import java.util.Optional;

/** What came of raising prices: the best of them and their bound. */
final class Raised {
    private final double[] prices;
    private final long bound;
    private final Optional<Found> plan;

    Raised(double[] prices, long bound, Optional<Found> plan) {
        this.prices = prices;
        this.bound = bound;
        this.plan = plan;
    }

    /** The best plan that the offers' own choices made up on the way. */
    Optional<Found> plan() {
        return plan;
    }

    double[] prices() {
        return prices;
    }

    long bound() {
        return bound;
    }
}
