package dayglass.cost.plan;

import dayglass.cost.plan.Resolved.Purchase;
import dayglass.cost.plan.Resolved.Rental;
import dayglass.cost.rental.PeriodCosts;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the covering problem of a part, in the search's units: prices every period that can matter. */
final class CoverBuilder {
    /** So many periods at most are held in memory. */
    private static final long MOST_PERIODS = 24_000_000;

    /** Where there are more, periods begin on the first day of a need or on one day of the week, and end before these. */
    private static final int WEEK = 7;

    private final Parts parts;
    private final Parts.Part part;
    private final Resolved resolved;

    CoverBuilder(Parts parts, Parts.Part part) {
        this.parts = parts;
        this.part = part;
        this.resolved = parts.resolved;
    }

    /** The covering problem, or empty where the signal came before all periods were priced. */
    Optional<Cover> cover(StopSignal stop) {
        int[][] needs = part.slots().stream().map(slot -> parts.demand[slot]).toArray(int[][]::new);
        List<String> things = part.rentals().stream()
                .flatMap(r -> r.offer.draws().keySet().stream())
                .distinct()
                .sorted()
                .toList();
        Cover.Hire[] hires = new Cover.Hire[part.rentals().size()];
        for (int i = 0; i < hires.length; i++) {
            if (stop.stopped()) {
                return Optional.empty();
            }
            hires[i] = hire(part.rentals().get(i), needs, things);
        }
        Cover.Buy[] buys = part.purchases().stream()
                .map(purchase -> buy(purchase, needs, parts.scale().of(purchase.netCost())))
                .toArray(Cover.Buy[]::new);
        int[] stock = things.stream()
                .mapToInt(thing -> resolved.question.stock().getOrDefault(thing, 0))
                .toArray();
        return Optional.of(new Cover(resolved.days, needs, hires, buys, parts.cash(), stock));
    }

    private Cover.Hire hire(Rental rental, int[][] needs, List<String> things) {
        int[] slots = places(rental.offer.covers());
        int[][] serves = new int[slots.length][];
        boolean[] needed = new boolean[resolved.days];
        for (int i = 0; i < slots.length; i++) {
            String name = resolved.slots.get(part.slots().get(slots[i]));
            serves[i] = Cover.serving(rental.offer.covers().getOrDefault(name, 0), needs[slots[i]], 0);
            for (int day = 0; day < needed.length; day++) {
                needed[day] |= serves[i][day] > 0;
            }
        }
        List<String> drawn = rental.offer.draws().keySet().stream().sorted().toList();
        Cover.Hire hire = new Cover.Hire(
                rental.index,
                parts.worthHolding(rental),
                slots,
                serves,
                drawn.stream().mapToInt(things::indexOf).toArray(),
                drawn.stream()
                        .mapToInt(thing -> rental.offer.draws().getOrDefault(thing, 0))
                        .toArray(),
                Periods.thatMatter(
                        needed,
                        tooMany() ? some(rows(rental), needed, rental.windowEnd) : rows(rental),
                        PeriodCosts.NONE));
        hire.all = tooMany() ? Optional.of(rows(rental)) : Optional.empty();
        return hire;
    }

    private boolean tooMany() {
        return (long) part.rentals().size() * resolved.days * resolved.days / 2 > MOST_PERIODS;
    }

    private static Periods.Rows some(Periods.Rows rows, boolean[] needed, int[] windowEnd) {
        int days = needed.length;
        boolean[] begins = new boolean[days + 1];
        begins[days] = true;
        for (int day = 0; day < days; day++) {
            boolean opens = day == 0 || !needed[day - 1] || windowEnd[day] != windowEnd[day - 1];
            begins[day] = needed[day] && (opens || day % WEEK == 0);
        }
        return (first, into) -> {
            int count = begins[first] ? rows.row(first, into) : 0;
            for (int i = 0; i < count; i++) {
                int last = first + i;
                boolean closes = begins[last + 1] || !needed[Math.min(last + 1, days - 1)] || last == windowEnd[first];
                into[i] = closes && needed[last] ? into[i] : PeriodCosts.NONE;
            }
            return count;
        };
    }

    private Periods.Rows rows(Rental rental) {
        Scale scale = parts.scale();
        int shift = scale.shift();
        if (rental.small() && scale.exact() && scale.common().equals(BigInteger.ONE)) {
            PeriodCosts costs = rental.costs();
            return (first, into) -> {
                int last = rental.windowEnd[first];
                if (last < 0) {
                    return 0;
                }
                costs.totalsFrom(first, last, into);
                for (int i = 0; i <= last - first; i++) {
                    into[i] = into[i] >= PeriodCosts.NONE ? into[i] : into[i] << shift;
                }
                return last - first + 1;
            };
        }
        return (first, into) -> {
            int last = rental.windowEnd[first];
            if (last < 0) {
                return 0;
            }
            var totals = rental.pricing().totalsFrom(first, last);
            for (int i = 0; i < totals.length; i++) {
                BigInteger total = totals[i];
                into[i] = total == null ? PeriodCosts.NONE : scale.of(total);
            }
            return totals.length;
        };
    }

    Cover.Buy buy(Purchase purchase, int[][] needs, long cost) {
        int[] slots = places(purchase.offer().covers());
        int[][] serves = new int[slots.length][];
        for (int i = 0; i < slots.length; i++) {
            String name = resolved.slots.get(part.slots().get(slots[i]));
            serves[i] = Cover.serving(
                    purchase.offer().covers().getOrDefault(name, 0), needs[slots[i]], Math.max(0, purchase.from()));
        }
        return new Cover.Buy(
                purchase.index(), parts.worthBuying(purchase), slots, serves, cost, parts.outlay(purchase));
    }

    /** Where the part's slots that something covers stand in the part. */
    private int[] places(Map<String, Integer> covers) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < part.slots().size(); i++) {
            if (covers.containsKey(resolved.slots.get(part.slots().get(i)))) {
                places.add(i);
            }
        }
        return places.stream().mapToInt(i -> i).toArray();
    }
}
