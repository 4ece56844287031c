package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Held;
import java.math.BigInteger;
import java.util.List;

/**
 * A plan by numbers: periods by the place of their rental in the question, and how many of each purchase.
 *
 * @param total exact, in minor units
 */
record Plan(List<Held> held, List<Integer> bought, BigInteger total) {
    Plan {
        held = List.copyOf(held);
        bought = List.copyOf(bought);
    }

    /** The plan with its total worked out from the terms as they stand in {@code resolved}. */
    static Plan priced(Resolved resolved, List<Held> held, List<Integer> bought) {
        BigInteger total = BigInteger.ZERO;
        for (Resolved.Rental rental : resolved.rentals) {
            for (Held period : held) {
                if (period.hire() == rental.index) {
                    total = total.add(rental.pricing()
                            .charge(period.first(), period.last())
                            .orElseThrow()
                            .total()
                            .minor());
                }
            }
        }
        for (Resolved.Purchase purchase : resolved.purchases) {
            total = total.add(purchase.netCost().multiply(BigInteger.valueOf(bought.get(purchase.index()))));
        }
        return new Plan(held, bought, total);
    }
}
