package dayglass.cost.plan;

import dayglass.cost.plan.Resolved.Purchase;
import dayglass.cost.plan.Resolved.Rental;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The programme of {@link OneSlot} for amounts that no {@code long} holds: slower, and exact whatever they are. */
final class OneSlotExact {
    private final boolean[] need;
    private final List<Rental> rentals;
    private final int until;
    private final @Nullable BigInteger[] least;
    private final Step[] steps;

    /** How a day was reached: from {@code first}, by a rental's place or -1, held to {@code last}. */
    private record Step(int first, int rental, int last) {}

    OneSlotExact(boolean[] need, List<Rental> rentals) {
        this.need = need;
        this.rentals = rentals;
        int end = need.length;
        while (end > 0 && !need[end - 1]) {
            end--;
        }
        until = end;
        least = new BigInteger[until + 1];
        steps = new Step[until + 1];
    }

    /** A way to cover the slot, {@code buy} -1 for none, {@code cost} null where nothing covers it. */
    record Found(List<Cover.Held> held, int buy, @Nullable BigInteger cost) {
        Found {
            held = List.copyOf(held);
        }
    }

    /** The least cost, or empty where the programme cannot tell. */
    Optional<Found> solve(List<Purchase> purchases) {
        least[0] = BigInteger.ZERO;
        for (int first = 0; first < until; first++) {
            BigInteger sofar = least[first];
            if (sofar == null) {
                continue;
            }
            if (!need[first]) {
                reach(first + 1, sofar, new Step(first, -1, first));
            }
            for (int i = 0; i < rentals.size(); i++) {
                begin(i, first, sofar);
            }
        }
        BigInteger cost = least[until];
        int served = until;
        int buy = -1;
        for (Purchase purchase : purchases) {
            int from = Math.max(0, Math.min(purchase.from(), until));
            BigInteger before = least[from];
            if (before != null
                    && (cost == null || before.add(purchase.netCost()).compareTo(cost) < 0)) {
                cost = before.add(purchase.netCost());
                served = from;
                buy = purchase.index();
            }
        }
        List<Cover.Held> held = cost == null ? List.of() : held(served);
        return fits(held) ? Optional.of(new Found(held, buy, cost)) : Optional.empty();
    }

    private void begin(int at, int first, BigInteger sofar) {
        Rental rental = rentals.get(at);
        int last = rental.windowEnd[first];
        if (last < 0) {
            return;
        }
        @Nullable BigInteger[] totals = rental.pricing().totalsFrom(first, last);
        BigInteger cheapest = null;
        int cheapestEnd = last;
        for (int day = last; day >= first; day--) {
            BigInteger total = totals[day - first];
            if (total != null && (cheapest == null || total.compareTo(cheapest) <= 0)) {
                cheapest = total;
                cheapestEnd = day;
            }
            if (cheapest != null && need[day]) {
                reach(day + 1, sofar.add(cheapest), new Step(first, at, cheapestEnd));
            }
        }
    }

    private void reach(int day, BigInteger cost, Step step) {
        BigInteger known = least[day];
        if (known == null || cost.compareTo(known) < 0) {
            least[day] = cost;
            steps[day] = step;
        }
    }

    private List<Cover.Held> held(int served) {
        List<Cover.Held> held = new ArrayList<>();
        for (int day = served; day > 0; day = steps[day].first()) {
            Step step = steps[day];
            if (step.rental() >= 0) {
                held.add(new Cover.Held(rentals.get(step.rental()).index, step.first(), step.last()));
            }
        }
        return held;
    }

    private boolean fits(List<Cover.Held> held) {
        for (Rental rental : rentals) {
            for (int day = 0; day < need.length; day++) {
                int on = day;
                long copies = held.stream()
                        .filter(h -> h.hire() == rental.index && h.first() <= on && on <= h.last())
                        .count();
                if (copies > rental.offer.copies()) {
                    return false;
                }
            }
        }
        return true;
    }
}
