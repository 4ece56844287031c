package dayglass.cost.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * A covering problem by day numbers: a part of a question that has nothing to do with its other parts. Amounts are in
 * the search's own units, exact multiples of the minor unit unless the amounts are enormous ({@link Scale}).
 */
final class Cover {
    final int days;

    /** How many are still needed, by slot and day. */
    final int[][] demand;

    final Hire[] hires;
    final Buy[] buys;

    /** The most that all outlays may come to, {@link Long#MAX_VALUE} where nothing binds. */
    final long cash;

    /** How many there are of each thing that hires draw on. */
    final int[] stock;

    Cover(int days, int[][] demand, Hire[] hires, Buy[] buys, long cash, int[] stock) {
        this.days = days;
        this.demand = demand;
        this.hires = hires;
        this.buys = buys;
        this.cash = cash;
        this.stock = stock;
    }

    /** Whether every period that can matter is there. */
    boolean whole() {
        return Arrays.stream(hires).allMatch(hire -> hire.all.isEmpty());
    }

    /** The same needs with only the hires at these places. */
    Cover ofHires(int[] places) {
        Hire[] some = Arrays.stream(places).mapToObj(place -> hires[place]).toArray(Hire[]::new);
        return new Cover(days, demand, some, buys, cash, stock);
    }

    /**
     * Up to where the price of each slot-day may rise, slot after slot, and then of each day of stock. No slot-day is worth
     * more than a day of an offer of which there are enough: without this bound prices come close to that day's, step by
     * smaller step, and never quite there.
     */
    double[] highestPrices() {
        double[] most = new double[(demand.length + stock.length) * days];
        Arrays.fill(most, (double) highestPrice());
        for (Hire hire : hires) {
            for (int i = 0; i < hire.slots.length && hire.draws.length == 0; i++) {
                int slot = hire.slots[i];
                for (int day = 0; day < days; day++) {
                    int at = hire.periods.from[day];
                    boolean alone = at < hire.periods.from[day + 1] && hire.periods.last[at] == day;
                    int serves = hire.serves[i][day];
                    if (alone && demand[slot][day] > 0 && (long) hire.copies * serves >= demand[slot][day]) {
                        int row = slot * days + day;
                        most[row] = Math.min(most[row], (double) hire.periods.cost[at] / serves);
                    }
                }
            }
        }
        return most;
    }

    /** A price of a slot-day up to which all sums of prices stay far from overflow. */
    long highestPrice() {
        long needs = 1;
        for (int[] row : demand) {
            for (int count : row) {
                needs += count;
            }
        }
        return HoldPath.NONE / 8 / needs;
    }

    /** Something to rent: up to {@code copies} held on a day, over periods each. */
    static final class Hire {
        /** Its place among the question's rentals. */
        final int index;

        final int copies;
        final int[] slots;

        /** What a copy adds to the cover of {@code slots[i]} on a day, at most what is needed then. */
        final int[][] serves;

        final int[] draws;
        final int[] drawn;
        Periods periods;

        /** All periods, where {@code periods} holds only some because all would be too many. */
        Optional<Periods.Rows> all = Optional.empty();

        Hire(int index, int copies, int[] slots, int[][] serves, int[] draws, int[] drawn, Periods periods) {
            this.index = index;
            this.copies = copies;
            this.slots = slots;
            this.serves = serves;
            this.draws = draws;
            this.drawn = drawn;
            this.periods = periods;
        }
    }

    /** Something to buy up to {@code copies} times. */
    static final class Buy {
        /** Its place among the question's purchases. */
        final int index;

        final int copies;
        final int[] slots;

        /** As in {@link Hire}; 0 before it is available. */
        final int[][] serves;

        final long cost;
        final long outlay;

        Buy(int index, int copies, int[] slots, int[][] serves, long cost, long outlay) {
            this.index = index;
            this.copies = copies;
            this.slots = slots;
            this.serves = serves;
            this.cost = cost;
            this.outlay = outlay;
        }
    }

    /** What a copy that covers {@code count} adds on each day where no more than {@code demand} can be used. */
    static int[] serving(int count, int[] demand, int fromDay) {
        int[] serves = new int[demand.length];
        for (int day = Math.max(0, fromDay); day < demand.length; day++) {
            serves[day] = Math.min(count, demand[day]);
        }
        return serves;
    }

    /** A way to cover it: which periods are held and how many of each purchase are made. */
    record Found(java.util.List<Held> held, java.util.List<Integer> bought, long cost) {
        Found {
            held = java.util.List.copyOf(held);
            bought = java.util.List.copyOf(bought);
        }
    }

    /** A period of one copy of {@code hires[hire]}. */
    record Held(int hire, int first, int last) {}
}
