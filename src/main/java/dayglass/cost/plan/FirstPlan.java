package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Found;
import dayglass.cost.plan.Cover.Held;
import dayglass.cost.plan.Resolved.Rental;
import dayglass.cost.rental.PeriodCosts;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan that is soon made and seldom the least: slot after slot is covered one at a time by what is left of the offers,
 * each time as cheaply as can be. So a question too large to search through within its time has a plan all the same.
 */
final class FirstPlan {
    private final Parts parts;
    private final Parts.Part part;
    private final int days;
    private final List<PeriodCosts> costs = new ArrayList<>();
    private final int[][] open;
    private final int[][] left;
    private final Map<String, int[]> stock = new java.util.TreeMap<>();
    private final List<Held> held = new ArrayList<>();
    private final long[] row;

    FirstPlan(Parts parts, Parts.Part part) {
        this.parts = parts;
        this.part = part;
        days = parts.resolved.days;
        row = new long[days + 1];
        open = part.slots().stream().map(slot -> parts.demand[slot].clone()).toArray(int[][]::new);
        left = new int[part.rentals().size()][days];
        for (int i = 0; i < left.length; i++) {
            Rental rental = part.rentals().get(i);
            Arrays.fill(left[i], rental.offer.copies());
            for (String thing : rental.offer.draws().keySet()) {
                stock.computeIfAbsent(thing, name -> {
                    int[] free = new int[days];
                    Arrays.fill(free, parts.resolved.question.stock().getOrDefault(name, 0));
                    return free;
                });
            }
        }
    }

    /**
     * Makes the plan; empty where this order of slots leads to none.
     *
     * @param bought how many of each of the part's purchases are made
     */
    Optional<Found> make(int[] bought) {
        if (!part.rentals().stream().allMatch(Rental::small)) {
            return Optional.empty();
        }
        part.rentals().forEach(rental -> costs.add(rental.costs()));
        BigInteger cost = BigInteger.ZERO;
        for (int b = 0; b < bought.length; b++) {
            Resolved.Purchase purchase = part.purchases().get(b);
            cost = cost.add(purchase.netCost().multiply(BigInteger.valueOf(bought[b])));
            serve(purchase.offer().covers(), bought[b], Math.max(0, purchase.from()), days - 1);
        }
        for (int slot = 0; slot < open.length; slot++) {
            while (Arrays.stream(open[slot]).anyMatch(count -> count > 0)) {
                if (!coverOne(slot)) {
                    return Optional.empty();
                }
            }
        }
        for (Held period : held) {
            costs.get(period.hire()).totalsFrom(period.first(), period.last(), row);
            cost = cost.add(BigInteger.valueOf(row[period.last() - period.first()]));
        }
        List<Integer> purchases = Arrays.stream(bought).boxed().toList();
        return Optional.of(new Found(held, purchases, parts.scale().of(cost)));
    }

    private boolean coverOne(int slot) {
        boolean[] need = new boolean[days];
        for (int day = 0; day < days; day++) {
            need[day] = open[slot][day] > 0;
        }
        String name = parts.resolved.slots.get(part.slots().get(slot));
        List<OneSlot.Offer> offers = new ArrayList<>();
        for (int i = 0; i < left.length; i++) {
            Rental rental = part.rentals().get(i);
            if (rental.offer.covers().containsKey(name)) {
                offers.add(new OneSlot.Offer(i, Integer.MAX_VALUE, costs.get(i), windows(i), rental.anyStart));
            }
        }
        Optional<OneSlot.Found> found = new OneSlot(need).solve(offers, List.of());
        if (found.isEmpty() || found.get().cost() >= PeriodCosts.NONE) {
            return false;
        }
        for (Held period : apart(found.get().held())) {
            held.add(period);
            take(period);
        }
        return stock.values().stream().allMatch(free -> Arrays.stream(free).allMatch(count -> count >= 0));
    }

    /** A period paid beyond what it serves ends where the same offer is needed again: they need but one copy. */
    private List<Held> apart(List<Held> latestFirst) {
        List<Held> apart = new ArrayList<>();
        int[] next = new int[left.length];
        Arrays.fill(next, days);
        for (Held period : latestFirst) {
            int hire = period.hire();
            apart.add(new Held(hire, period.first(), Math.min(period.last(), next[hire] - 1)));
            next[hire] = period.first();
        }
        return apart;
    }

    /** The last day of the window on which a copy is left, by first day. */
    private int[] windows(int rental) {
        int[] end = part.rentals().get(rental).windowEnd.clone();
        Map<String, Integer> draws = part.rentals().get(rental).offer.draws();
        int stop = days;
        for (int day = days - 1; day >= 0; day--) {
            boolean free = left[rental][day] > 0;
            for (Map.Entry<String, Integer> draw : draws.entrySet()) {
                free &= stock.getOrDefault(draw.getKey(), new int[days])[day] >= draw.getValue();
            }
            stop = free ? stop : day;
            end[day] = Math.min(end[day], stop - 1 < day ? -1 : stop - 1);
        }
        return end;
    }

    private void take(Held period) {
        Question.Rental offer = part.rentals().get(period.hire()).offer;
        serve(offer.covers(), 1, period.first(), period.last());
        for (int day = period.first(); day <= period.last(); day++) {
            left[period.hire()][day]--;
            for (Map.Entry<String, Integer> draw : offer.draws().entrySet()) {
                stock.getOrDefault(draw.getKey(), new int[days])[day] -= draw.getValue();
            }
        }
    }

    private void serve(Map<String, Integer> covers, int copies, int first, int last) {
        for (int slot = 0; slot < open.length; slot++) {
            int count = copies
                    * covers.getOrDefault(parts.resolved.slots.get(part.slots().get(slot)), 0);
            for (int day = first; count > 0 && day <= last; day++) {
                open[slot][day] -= count;
            }
        }
    }
}
