package dayglass.cost.plan;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Which purchases to make within the cash limit, if each has a worth: a bounded knapsack, solved exactly by branch and
 * bound, so that bundles within the limit are weighed together.
 */
final class PurchaseMix {
    /** Beyond so many steps the best so far stands, with the bound of what was not looked at. */
    private static final int MOST_STEPS = 20_000;

    private final Cover.Buy[] buys;
    private final long cash;
    private final Integer[] order;
    private final int[] taken;
    private final int[] best;
    private long[] worth = new long[0];
    private int[] most = new int[0];
    private long bestWorth;
    private long bound;
    private int steps;

    PurchaseMix(Cover.Buy[] buys, long cash) {
        this.buys = buys;
        this.cash = cash;
        order = new Integer[buys.length];
        Arrays.setAll(order, i -> i);
        taken = new int[buys.length];
        best = new int[buys.length];
    }

    /**
     * Chooses.
     *
     * @param worthOf what one copy of each is worth, of either sign
     * @param least how many of each must be taken
     * @param mostOf how many of each may be taken
     * @return a bound on the worth of any choice, reached by {@link #counts} unless the search was cut short; or
     *     {@code Long.MIN_VALUE} where the least counts are beyond the cash
     */
    long choose(long[] worthOf, int[] least, int[] mostOf) {
        worth = worthOf;
        most = mostOf;
        long left = cash;
        long sure = 0;
        for (int i = 0; i < buys.length; i++) {
            taken[i] = least[i];
            left -= least[i] * buys[i].outlay;
            sure += least[i] * worth[i];
            if (left < 0) {
                return Long.MIN_VALUE;
            }
        }
        Arrays.sort(order, Comparator.comparingDouble(i -> -density(i)));
        bestWorth = Long.MIN_VALUE;
        bound = Long.MIN_VALUE;
        steps = 0;
        descend(0, left, sure);
        return Math.max(bestWorth, bound);
    }

    /** How many of each the last choice takes. */
    int[] counts() {
        return best;
    }

    private double density(int i) {
        return buys[i].outlay == 0 ? (worth[i] > 0 ? Double.MAX_VALUE : 0) : (double) worth[i] / buys[i].outlay;
    }

    private void descend(int place, long left, long sofar) {
        if (sofar > bestWorth) {
            bestWorth = sofar;
            System.arraycopy(taken, 0, best, 0, taken.length);
        }
        if (place == order.length || worth[order[place]] <= 0) {
            return;
        }
        long atMost = sofar + relaxed(place, left);
        if (atMost <= bestWorth) {
            return;
        }
        if (++steps > MOST_STEPS) {
            bound = Math.max(bound, atMost);
            return;
        }
        int i = order[place];
        int before = taken[i];
        long fits = buys[i].outlay == 0 ? most[i] : Math.min(most[i], before + left / buys[i].outlay);
        for (int count = (int) fits; count >= before; count--) {
            taken[i] = count;
            long more = (long) count - before;
            descend(place + 1, left - more * buys[i].outlay, sofar + more * worth[i]);
        }
        taken[i] = before;
    }

    /** What the rest could be worth if the last purchase could be made in part, rounded up. */
    private long relaxed(int place, long left) {
        long sum = 0;
        for (int at = place; at < order.length; at++) {
            int i = order[at];
            if (worth[i] <= 0) {
                break;
            }
            long room = (long) most[i] - taken[i];
            if (room * buys[i].outlay <= left) {
                left -= room * buys[i].outlay;
                sum += room * worth[i];
            } else {
                double part = (double) worth[i] * left / buys[i].outlay;
                return sum + (long) (part * (1 + 1e-12)) + 1;
            }
        }
        return sum;
    }
}
