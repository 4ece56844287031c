package dayglass.cost.plan;

import java.util.Arrays;

/**
 * When to hold one copy of one offer, if each held day earns a reward: the cheapest chain of periods and idle days
 * through the horizon. An exact dynamic programme over days; a copy is never held twice on one day because periods
 * follow on each other. Not safe for use by two threads at once.
 */
final class HoldPath {
    static final byte FREE = 0;
    static final byte HELD = 1;
    static final byte IDLE = 2;

    /** More than any path costs; a few of these can be added. */
    static final long NONE = Long.MAX_VALUE / 8;

    private final long[] reach;
    private final long[] toGo;
    private final int[] back;
    private final int[] stopBefore;
    private final long[] costs;
    private final int days;

    HoldPath(int days) {
        this.days = days;
        reach = new long[days + 1];
        toGo = new long[days + 1];
        back = new int[days + 1];
        stopBefore = new int[days + 1];
        costs = new long[days + 1];
    }

    /**
     * Finds the cheapest path.
     *
     * @param state of each day: free, to be held, or to be left idle
     * @param reward of each day held, in the units of the costs; may be negative
     * @return its cost less its rewards, {@link #NONE} or more where no path keeps to the states
     */
    long solve(Periods periods, byte[] state, long[] reward) {
        limits(state);
        Arrays.fill(reach, NONE);
        reach[0] = 0;
        long all = 0;
        int[] last = periods.last;
        long[] cost = periods.cost;
        for (int day = 0; day < days; day++) {
            all += reward[day];
            long here = reach[day];
            if (here >= NONE) {
                continue;
            }
            if (state[day] != HELD && here + reward[day] < reach[day + 1]) {
                reach[day + 1] = here + reward[day];
                back[day + 1] = -1;
            }
            int stop = stopBefore[day];
            int end = periods.from[day + 1];
            for (int at = periods.from[day]; at < end && last[at] < stop; at++) {
                long sum = here + cost[at];
                int next = last[at] + 1;
                if (sum < reach[next]) {
                    reach[next] = sum;
                    back[next] = day;
                }
            }
        }
        return reach[days] >= NONE ? NONE : reach[days] - all;
    }

    /** What {@link #solve} would return for all periods that the rows give, every day being free. */
    long least(Periods.Rows rows, long[] reward) {
        Arrays.fill(reach, NONE);
        reach[0] = 0;
        long all = 0;
        for (int day = 0; day < days; day++) {
            long here = reach[day];
            reach[day + 1] = Math.min(reach[day + 1], here + reward[day]);
            all += reward[day];
            int count = rows.row(day, costs);
            for (int i = 0; i < count; i++) {
                reach[day + i + 1] = Math.min(reach[day + i + 1], here + costs[i]);
            }
        }
        return reach[days] - all;
    }

    /** Receives the periods of a path. */
    interface PeriodVisitor {
        void visit(int first, int last);
    }

    /** Walks the path that {@link #solve} found, latest period first. */
    void visit(PeriodVisitor visitor) {
        for (int day = days; day > 0; ) {
            int first = back[day];
            if (first < 0) {
                day--;
            } else {
                visitor.visit(first, day - 1);
                day = first;
            }
        }
    }

    /**
     * By how much each day's being held or idle, and each period's being used, would raise the value that
     * {@link #solve} gave; to be called right after it with the same arguments.
     */
    void regrets(Periods periods, byte[] state, long[] reward, long[] ifHeld, long[] ifIdle) {
        backward(periods, state, reward);
        long least = reach[days];
        Arrays.fill(ifHeld, NONE);
        long[] best = new long[days + 1];
        Arrays.fill(best, NONE);
        for (int day = 0; day < days; day++) {
            ifIdle[day] = state[day] == HELD ? NONE : reach[day] + reward[day] + toGo[day + 1] - least;
            // best[d]: the least over paths with a period that began by now and ends on day d or later.
            int end = periods.from[day + 1];
            for (int at = periods.from[day]; at < end && periods.last[at] < stopBefore[day]; at++) {
                int lastDay = periods.last[at];
                best[lastDay] = Math.min(best[lastDay], reach[day] + periods.cost[at] + toGo[lastDay + 1] - least);
            }
            long held = NONE;
            for (int later = day; later < days; later++) {
                held = Math.min(held, best[later]);
            }
            ifHeld[day] = held;
        }
    }

    /** By how much the use of the period at {@code at} would raise the value; after {@link #regrets}. */
    long regret(Periods periods, int first, int at) {
        int lastDay = periods.last[at];
        if (lastDay >= stopBefore[first]) {
            return NONE;
        }
        return reach[first] + periods.cost[at] + toGo[lastDay + 1] - reach[days];
    }

    private void backward(Periods periods, byte[] state, long[] reward) {
        toGo[days] = 0;
        for (int day = days - 1; day >= 0; day--) {
            long least = state[day] == HELD ? NONE : Math.min(NONE, toGo[day + 1] + reward[day]);
            int end = periods.from[day + 1];
            for (int at = periods.from[day]; at < end && periods.last[at] < stopBefore[day]; at++) {
                least = Math.min(least, periods.cost[at] + toGo[periods.last[at] + 1]);
            }
            toGo[day] = least;
        }
    }

    /** For each day, the next one that must stay idle. */
    private void limits(byte[] state) {
        int stop = days;
        for (int day = days - 1; day >= 0; day--) {
            if (state[day] == IDLE) {
                stop = day;
            }
            stopBefore[day] = stop;
        }
    }
}
