package dayglass.cost.plan;

import dayglass.cost.rental.PeriodCosts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One slot of which one is needed at a time: an interval covering problem, solved by a dynamic programme over days in
 * which periods follow on each other. A period may be paid longer than it serves, which is how two offers come to
 * overlap; where that would hold more copies of one offer than there are, this says nothing and the general search
 * decides.
 */
final class OneSlot {
    private static final long NONE = PeriodCosts.NONE;

    private final boolean[] need;
    private final int days;
    private final int lastNeed;
    private final long[] least;
    private final int[] by;
    private final int[] start;
    private final int[] end;
    private final long[] row;

    /** By day, what the cheapest known way to cover everything up to it costs. */
    private final PeriodCosts.Limit limit;

    OneSlot(boolean[] need) {
        this.need = need;
        days = need.length;
        int last = -1;
        for (int day = 0; day < days; day++) {
            if (need[day]) {
                last = day;
            }
        }
        lastNeed = last;
        least = new long[days + 1];
        by = new int[days + 1];
        start = new int[days + 1];
        end = new int[days + 1];
        row = new long[days + 1];
        limit = new PeriodCosts.Limit(days);
    }

    /** An offer: the last day of its window by first day, -1 where none is open; {@code anyStart}: an early start can pay. */
    static final class Offer {
        final int index;
        final int copies;
        final PeriodCosts costs;
        final int[] windowEnd;
        final boolean anyStart;

        Offer(int index, int copies, PeriodCosts costs, int[] windowEnd, boolean anyStart) {
            this.index = index;
            this.copies = copies;
            this.costs = costs;
            this.windowEnd = windowEnd;
            this.anyStart = anyStart;
        }
    }

    /** A purchase of one: what it costs and from which day it serves. */
    record Buyable(int index, long cost, int from) {}

    /** A way to cover the slot, {@code buy} -1 for none; costs in minor units. */
    record Found(List<Cover.Held> held, int buy, long cost) {
        Found {
            held = List.copyOf(held);
        }
    }

    /** The least cost, or empty where this programme cannot tell; {@link PeriodCosts#NONE} where nothing covers it. */
    Optional<Found> solve(List<Offer> offers, List<Buyable> buys) {
        Arrays.fill(least, NONE);
        Arrays.fill(limit.byDay, (double) NONE);
        least[0] = 0;
        for (int first = 0; first <= lastNeed; first++) {
            if (least[first] >= NONE) {
                continue;
            }
            if (!need[first] && least[first] < least[first + 1]) {
                least[first + 1] = least[first];
                by[first + 1] = -1;
            }
            for (int i = 0; i < offers.size(); i++) {
                begin(offers.get(i), i, first);
            }
        }
        long cost = least[lastNeed + 1];
        int buy = -1;
        int served = lastNeed + 1;
        for (Buyable candidate : buys) {
            int from = Math.max(0, Math.min(candidate.from(), lastNeed + 1));
            if (least[from] < NONE && least[from] + candidate.cost() < cost) {
                cost = least[from] + candidate.cost();
                buy = candidate.index();
                served = from;
            }
        }
        if (cost >= NONE) {
            return Optional.of(new Found(List.of(), -1, NONE));
        }
        List<Cover.Held> held = held(served);
        return held.isEmpty() || fits(offers, held)
                ? Optional.of(new Found(global(offers, held), buy, cost))
                : Optional.empty();
    }

    private void begin(Offer offer, int at, int first) {
        int last = offer.windowEnd[first];
        if (last < 0 || (!need[first] && !offer.anyStart)) {
            return;
        }
        if (offer.costs.growsWithLength()) {
            last = Math.min(last, lastNeed);
        }
        long sofar = least[first];
        limit.sofar = sofar;
        last = offer.costs.totalsBelow(limit, first, last, row);
        long cheapest = NONE;
        int cheapestEnd = last;
        for (int day = last; day >= first; day--) {
            if (row[day - first] <= cheapest) {
                cheapest = row[day - first];
                cheapestEnd = day;
            }
            if (need[day] && sofar + cheapest < least[day + 1]) {
                least[day + 1] = sofar + cheapest;
                by[day + 1] = at;
                start[day + 1] = first;
                end[day + 1] = cheapestEnd;
            }
        }
        double[] dearest = limit.byDay;
        for (int day = first; day <= last; day++) {
            dearest[day] = need[day] || day == 0 ? least[day + 1] : dearest[day - 1];
        }
    }

    /** Latest first, by place among the offers. */
    private List<Cover.Held> held(int served) {
        List<Cover.Held> held = new ArrayList<>();
        for (int day = served; day > 0; ) {
            if (by[day] < 0) {
                day--;
            } else {
                held.add(new Cover.Held(by[day], start[day], end[day]));
                day = start[day];
            }
        }
        return held;
    }

    private boolean fits(List<Offer> offers, List<Cover.Held> held) {
        int[][] copies = new int[offers.size()][];
        for (Cover.Held period : held) {
            if (copies[period.hire()] == null) {
                copies[period.hire()] = new int[days];
            }
            for (int day = period.first(); day <= period.last(); day++) {
                if (++copies[period.hire()][day] > offers.get(period.hire()).copies) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<Cover.Held> global(List<Offer> offers, List<Cover.Held> held) {
        return held.stream()
                .map(period -> new Cover.Held(offers.get(period.hire()).index, period.first(), period.last()))
                .toList();
    }
}
