package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Hire;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which hires of a covering problem can be left out because another serves all that they serve, every day, draws on no
 * more stock and charges no more for any of their periods. A sheet of many ways is completed by many offers of which few
 * are worth a thought; a set is no way to get one lens that is let by itself.
 *
 * <p>Every period of the one left out must be able to become one of the other: there must be as many of that as can be
 * worth holding, or as many as there is stock for, which the one left out uses up as well.
 */
final class Dominance {
    private static final long NONE = HoldPath.NONE;

    private final List<Hire> hires;
    private final int days;
    private final int[] stock;
    private final boolean[] plenty;

    /** By place, {@link #leastWithin}, made when it is first asked for. */
    private final long[][] costs;

    private Dominance(Cover cover, boolean[] plenty) {
        hires = List.of(cover.hires);
        days = cover.days;
        stock = cover.stock;
        this.plenty = plenty;
        costs = new long[hires.size()][0];
    }

    /**
     * The places of the hires to keep, ascending. Of two that are alike the first is kept.
     *
     * @param plenty by place, whether there are as many copies of a hire as can be worth holding
     */
    static int[] kept(Cover cover, boolean[] plenty) {
        Dominance dominance = new Dominance(cover, plenty);
        boolean[] out = new boolean[cover.hires.length];
        // From the last, so that the first of two that are alike stays.
        for (int one = out.length - 1; one >= 0; one--) {
            for (int other = 0; other < out.length && !out[one]; other++) {
                out[one] = other != one && !out[other] && dominance.outdoes(other, one);
            }
        }
        return IntStream.range(0, out.length).filter(place -> !out[place]).toArray();
    }

    private boolean outdoes(int other, int one) {
        return servesAll(hires.get(other), hires.get(one))
                && drawsNoMore(hires.get(other), hires.get(one))
                && (plenty[other] || asManyAsInStock(hires.get(other)))
                && chargesNoMore(other, hires.get(one));
    }

    private static boolean servesAll(Hire other, Hire one) {
        for (int i = 0; i < one.slots.length; i++) {
            int place = Arrays.binarySearch(other.slots, one.slots[i]);
            if (place < 0) {
                return false;
            }
            for (int day = 0; day < one.serves[i].length; day++) {
                if (other.serves[place][day] < one.serves[i][day]) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean drawsNoMore(Hire other, Hire one) {
        for (int i = 0; i < other.draws.length; i++) {
            int place = Arrays.binarySearch(one.draws, other.draws[i]);
            if (place < 0 || one.drawn[place] < other.drawn[i]) {
                return false;
            }
        }
        return true;
    }

    private boolean asManyAsInStock(Hire hire) {
        return IntStream.range(0, hire.draws.length).anyMatch(i -> hire.copies >= stock[hire.draws[i]] / hire.drawn[i]);
    }

    private boolean chargesNoMore(int other, Hire one) {
        costs[other] = costs[other].length == 0 ? leastWithin(hires.get(other)) : costs[other];
        long[] least = costs[other];
        for (int first = 0; first < days; first++) {
            for (int at = one.periods.from[first]; at < one.periods.from[first + 1]; at++) {
                if (least[first * days + one.periods.last[at]] > one.periods.cost[at]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** By first and last day, the least charge of a period within these days that serves all that the whole would. */
    private long[] leastWithin(Hire hire) {
        boolean[] serves = new boolean[days];
        for (int[] slot : hire.serves) {
            for (int day = 0; day < days; day++) {
                serves[day] |= slot[day] > 0;
            }
        }
        long[] least = new long[days * days];
        Arrays.fill(least, NONE);
        for (int first = days - 1; first >= 0; first--) {
            for (int at = hire.periods.from[first]; at < hire.periods.from[first + 1]; at++) {
                least[first * days + hire.periods.last[at]] = hire.periods.cost[at];
            }
            for (int last = first; last < days; last++) {
                long earlier = serves[last] || last == first ? NONE : least[first * days + last - 1];
                long later = serves[first] || last == first ? NONE : least[(first + 1) * days + last];
                least[first * days + last] = Math.min(least[first * days + last], Math.min(earlier, later));
            }
        }
        return least;
    }
}
