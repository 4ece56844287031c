package dayglass.cost.plan;

import dayglass.cost.plan.Resolved.Purchase;
import dayglass.cost.plan.Resolved.Rental;
import java.math.BigInteger;

/**
 * A bound on the cost of a part that takes no search: each offer costs at least so much a day, which is shared among
 * the slots that it covers, and each slot-day costs at least the least of these shares. No rental gains at such prices;
 * what purchases would gain is taken off.
 */
final class DayFloor {
    private final Parts parts;
    private final Parts.Part part;

    DayFloor(Parts parts, Parts.Part part) {
        this.parts = parts;
        this.part = part;
    }

    /** In minor units; below zero where purchases may earn. */
    BigInteger bound() {
        int days = parts.resolved.days;
        long[][] price = new long[part.slots().size()][days];
        for (long[] row : price) {
            java.util.Arrays.fill(row, Long.MAX_VALUE);
        }
        for (Rental rental : part.rentals()) {
            double[] least = rental.small() ? rental.costs().leastByDay() : new double[days];
            int covered = covered(rental);
            for (int slot = 0; slot < price.length; slot++) {
                if (rental.offer.covers().containsKey(name(slot))) {
                    for (int day = 0; day < days; day++) {
                        long share = (long) (least[day] * (1 - 1e-9)) / covered;
                        price[slot][day] = Math.min(price[slot][day], share);
                    }
                }
            }
        }
        for (long[] row : price) {
            java.util.Arrays.setAll(row, day -> row[day] == Long.MAX_VALUE ? 0 : row[day]);
        }
        BigInteger bound = bound(price);
        part.purchases().forEach(purchase -> lower(purchase, price));
        return bound.max(bound(price));
    }

    private BigInteger bound(long[][] price) {
        BigInteger bound = BigInteger.ZERO;
        for (int slot = 0; slot < price.length; slot++) {
            for (int day = 0; day < price[slot].length; day++) {
                int need = parts.demand[part.slots().get(slot)][day];
                bound = bound.add(BigInteger.valueOf(price[slot][day]).multiply(BigInteger.valueOf(need)));
            }
        }
        for (Purchase purchase : part.purchases()) {
            BigInteger loss =
                    purchase.netCost().subtract(worth(purchase, price)).min(BigInteger.ZERO);
            bound = bound.add(loss.multiply(BigInteger.valueOf(parts.worthBuying(purchase))));
        }
        return bound;
    }

    /** Lowers the prices of what a purchase covers so far that it gains nothing. */
    private void lower(Purchase purchase, long[][] price) {
        double worth = worth(purchase, price).doubleValue();
        double share = Math.max(0, purchase.netCost().doubleValue()) / Math.max(1, worth) * (1 - 1e-9);
        for (int slot = 0; share < 1 && slot < price.length; slot++) {
            if (purchase.offer().covers().containsKey(name(slot))) {
                long[] row = price[slot];
                java.util.Arrays.setAll(row, day -> (long) (row[day] * share));
            }
        }
    }

    private BigInteger worth(Purchase purchase, long[][] price) {
        BigInteger worth = BigInteger.ZERO;
        for (int slot = 0; slot < price.length; slot++) {
            int count = purchase.offer().covers().getOrDefault(name(slot), 0);
            int[] demand = parts.demand[part.slots().get(slot)];
            for (int day = Math.max(0, purchase.from()); count > 0 && day < price[slot].length; day++) {
                long served = Math.min(count, demand[day]);
                worth = worth.add(BigInteger.valueOf(price[slot][day]).multiply(BigInteger.valueOf(served)));
            }
        }
        return worth;
    }

    private int covered(Rental rental) {
        int covered = 0;
        for (int slot = 0; slot < part.slots().size(); slot++) {
            covered += rental.offer.covers().getOrDefault(name(slot), 0);
        }
        return Math.max(1, covered);
    }

    private String name(int slot) {
        return parts.resolved.slots.get(part.slots().get(slot));
    }
}
