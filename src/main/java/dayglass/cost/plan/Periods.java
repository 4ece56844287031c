package dayglass.cost.plan;

import java.util.Arrays;

/**
 * The rental periods of one offer that can matter, by first day, each with its cost. The cost is in the search's own
 * units. Storage is flat because a search walks through all of them again and again.
 */
final class Periods {
    /** The index of the first period of each first day; one more entry ends the last. */
    final int[] from;

    /** The last day of each period, ascending within a first day. */
    final int[] last;

    final long[] cost;

    private Periods(int[] from, int[] last, long[] cost) {
        this.from = from;
        this.last = last;
        this.cost = cost;
    }

    int days() {
        return from.length - 1;
    }

    int size() {
        return last.length;
    }

    /** The cost of a period that is among these. */
    long costOf(int first, int lastDay) {
        int at = Arrays.binarySearch(last, from[first], from[first + 1], lastDay);
        if (at < 0) {
            throw new IllegalArgumentException("no period from day " + first + " to " + lastDay);
        }
        return cost[at];
    }

    /** Gives a period's cost from each first day, for every last day in turn. */
    interface Rows {
        /** Fills {@code into} with the costs from {@code first} and says how many last days there are. */
        int row(int first, long[] into);
    }

    /** Says of a period whether it can still matter. */
    interface Test {
        boolean keeps(int first, int at);
    }

    /**
     * All periods but those for which a shorter one inside them meets the same needs at no higher cost: giving a copy
     * back earlier never hinders.
     *
     * @param needed the days on which the offer could serve anything
     * @param none a cost from which on a period does not exist
     */
    static Periods thatMatter(boolean[] needed, Rows rows, long none) {
        int days = needed.length;
        int[][] ends = new int[days][];
        long[][] costs = new long[days][];
        long[] row = new long[days + 1];
        long[] next = new long[days + 1];
        Arrays.fill(next, none);
        int[] keptEnds = new int[days];
        long[] keptCosts = new long[days];
        for (int first = days - 1; first >= 0; first--) {
            int count = rows.row(first, row);
            int kept = 0;
            for (int i = 0; i < count; i++) {
                boolean shorterEnd = !needed[first + i] && (i == 0 || row[i - 1] <= row[i]);
                boolean laterStart = !needed[first] && (i == 0 || next[i - 1] <= row[i]);
                if (row[i] < none && !shorterEnd && !laterStart) {
                    keptEnds[kept] = first + i;
                    keptCosts[kept++] = row[i];
                }
            }
            ends[first] = Arrays.copyOf(keptEnds, kept);
            costs[first] = Arrays.copyOf(keptCosts, kept);
            Arrays.fill(row, count, days + 1, none);
            long[] swap = next;
            next = row;
            row = swap;
        }
        return flatten(ends, costs);
    }

    private static Periods flatten(int[][] ends, long[][] costs) {
        int[] from = new int[ends.length + 1];
        for (int day = 0; day < ends.length; day++) {
            from[day + 1] = from[day] + ends[day].length;
        }
        int[] last = new int[from[ends.length]];
        long[] cost = new long[last.length];
        for (int day = 0; day < ends.length; day++) {
            System.arraycopy(ends[day], 0, last, from[day], ends[day].length);
            System.arraycopy(costs[day], 0, cost, from[day], ends[day].length);
        }
        return new Periods(from, last, cost);
    }

    /** Those of these periods that a test keeps. */
    Periods only(Test test) {
        int[] newFrom = new int[from.length];
        int[] newLast = new int[last.length];
        long[] newCost = new long[last.length];
        int kept = 0;
        for (int first = 0; first < days(); first++) {
            newFrom[first] = kept;
            for (int at = from[first]; at < from[first + 1]; at++) {
                if (test.keeps(first, at)) {
                    newLast[kept] = last[at];
                    newCost[kept++] = cost[at];
                }
            }
        }
        newFrom[days()] = kept;
        return new Periods(newFrom, Arrays.copyOf(newLast, kept), Arrays.copyOf(newCost, kept));
    }
}
