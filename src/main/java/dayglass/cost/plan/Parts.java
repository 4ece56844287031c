package dayglass.cost.plan;

import dayglass.cost.plan.Resolved.Purchase;
import dayglass.cost.plan.Resolved.Rental;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A question taken apart: purchases that are made in any case, and covering problems that have nothing to do with each
 * other. Two slots belong together where one offer covers both, where offers draw on the same stock, or where the cash
 * limit makes purchases compete.
 */
final class Parts {
    final Resolved resolved;
    private Optional<Scale> scale = Optional.empty();
    private final List<Rental> renting;
    private final List<Purchase> useful;

    /** How many of each purchase, by its place in the question, are made whatever else. */
    final int[] sure;

    /** What the sure purchases and the owned units leave open. */
    final int[][] demand;

    final boolean cashBinds;

    /** Each purchase that the cash limit allows taken together with the rentals still leaves something open. */
    final boolean cashLeavesGaps;

    final List<Part> parts = new ArrayList<>();

    /** One problem by itself: the slots, rentals and purchases that it is about. */
    record Part(List<Integer> slots, List<Rental> rentals, List<Purchase> purchases) {
        Part ofRentals(int[] places) {
            return new Part(slots, Arrays.stream(places).mapToObj(rentals::get).toList(), purchases);
        }
    }

    Parts(Resolved resolved) {
        this.resolved = resolved;
        sure = new int[resolved.question.purchases().size()];
        demand = new int[resolved.open.length][];
        for (int slot = 0; slot < demand.length; slot++) {
            demand[slot] = resolved.open[slot].clone();
        }
        List<Purchase> affordable = resolved.purchases.stream()
                .filter(p -> resolved.cash()
                        .map(cash -> p.outlay().compareTo(cash) <= 0)
                        .orElse(true))
                .toList();
        cashLeavesGaps = affordable.size() < resolved.purchases.size()
                && !resolved.withPurchases(all -> affordable).coverable();
        cashBinds = resolved.cash()
                .map(cash -> affordable.stream()
                                .map(p -> p.outlay().multiply(BigInteger.valueOf(worthBuying(p))))
                                .reduce(BigInteger.ZERO, BigInteger::add)
                                .compareTo(cash)
                        > 0)
                .orElse(false);
        if (!cashBinds) {
            affordable.stream().filter(p -> p.netCost().signum() < 0).forEach(this::buyAll);
        }
        useful = affordable.stream()
                .filter(p -> worthBuying(p) > 0 && (cashBinds || p.netCost().signum() >= 0))
                .toList();
        renting = resolved.rentals.stream().filter(this::useful).toList();
        split();
    }

    /** How many can be worth buying: all that pay for themselves, otherwise what a slot can use at a time. */
    int worthBuying(Purchase purchase) {
        if (purchase.netCost().signum() < 0) {
            return purchase.copies();
        }
        return Math.min(purchase.copies(), atATime(purchase.offer().covers(), purchase.from()));
    }

    /**
     * How many copies of a rental can be worth holding on one day. Without long-hire discounts periods need not
     * overlap, as the earlier can end sooner at no more cost; with them the periods that reach furthest to either side
     * suffice, so twice the need at most.
     */
    int worthHolding(Rental rental) {
        return Math.min(rental.offer.copies(), usable(rental));
    }

    private int usable(Rental rental) {
        int needed = atATime(rental.offer.covers(), 0);
        return rental.longHire ? 2 * needed : needed;
    }

    /** Whether there are as many copies of each of a part's rentals as can be worth holding. */
    boolean[] plenty(Part part) {
        boolean[] plenty = new boolean[part.rentals().size()];
        for (int place = 0; place < plenty.length; place++) {
            Rental rental = part.rentals().get(place);
            plenty[place] = rental.offer.copies() >= usable(rental);
        }
        return plenty;
    }

    private int atATime(Map<String, Integer> covers, int from) {
        int most = 0;
        for (int slot = 0; slot < demand.length; slot++) {
            int count = covers.getOrDefault(resolved.slots.get(slot), 0);
            for (int day = Math.max(0, from); count > 0 && day < resolved.days; day++) {
                most = Math.max(most, (demand[slot][day] + count - 1) / count);
            }
        }
        return most;
    }

    private void buyAll(Purchase purchase) {
        sure[purchase.index()] = purchase.copies();
        for (int slot = 0; slot < demand.length; slot++) {
            long count = (long) purchase.offer().covers().getOrDefault(resolved.slots.get(slot), 0) * purchase.copies();
            for (int day = Math.max(0, purchase.from()); count > 0 && day < resolved.days; day++) {
                demand[slot][day] = (int) Math.max(0, demand[slot][day] - count);
            }
        }
    }

    private boolean useful(Rental rental) {
        return atATime(rental.offer.covers(), 0) > 0;
    }

    /** The units of the searches on these parts. */
    Scale scale() {
        if (scale.isEmpty()) {
            boolean small = renting.stream().allMatch(Rental::small);
            scale = Optional.of(scaleBy(small ? BigInteger.ONE : common()));
        }
        return scale.get();
    }

    private Scale scaleBy(BigInteger common) {
        BigInteger largest = BigInteger.ONE;
        BigInteger sum = BigInteger.ONE;
        for (Rental rental : renting) {
            BigInteger one = rental.pricing().largestTotal();
            largest = largest.max(one);
            sum = sum.add(one.multiply(BigInteger.valueOf(worthHolding(rental))));
        }
        for (Purchase purchase : useful) {
            BigInteger one = purchase.netCost().abs();
            largest = largest.max(one);
            sum = sum.add(one.multiply(BigInteger.valueOf(purchase.copies())));
        }
        long needs = 1;
        for (int[] row : demand) {
            for (int count : row) {
                needs += count;
            }
        }
        // A slot-day's price may rise to what the dearest period costs.
        BigInteger prices = largest.multiply(BigInteger.valueOf(needs));
        return Scale.forSumsUpTo(sum.max(prices).shiftLeft(2), common);
    }

    /** What divides every cost: enormous amounts are often multiples of something large. */
    private BigInteger common() {
        BigInteger common = BigInteger.ZERO;
        for (Purchase purchase : useful) {
            common = common.gcd(purchase.netCost());
        }
        for (Rental rental : renting) {
            for (int first = 0; first < rental.windowEnd.length && !common.equals(BigInteger.ONE); first++) {
                if (rental.windowEnd[first] >= 0) {
                    for (BigInteger total : rental.pricing().totalsFrom(first, rental.windowEnd[first])) {
                        common = total == null ? common : common.gcd(total);
                    }
                }
            }
        }
        return common.max(BigInteger.ONE);
    }

    private void split() {
        int[] head = new int[demand.length];
        Arrays.setAll(head, slot -> slot);
        Map<String, Integer> firstByStock = new TreeMap<>();
        for (Rental rental : renting) {
            List<Integer> slots = slots(rental.offer.covers());
            join(head, slots);
            for (String thing : rental.offer.draws().keySet()) {
                Integer other = firstByStock.putIfAbsent(thing, slots.get(0));
                if (other != null) {
                    join(head, List.of(slots.get(0), other));
                }
            }
        }
        List<Integer> competing = new ArrayList<>();
        for (Purchase purchase : useful) {
            join(head, slots(purchase.offer().covers()));
            competing.addAll(slots(purchase.offer().covers()));
        }
        if (cashBinds) {
            join(head, competing);
        }
        gather(head);
    }

    private void gather(int[] head) {
        int moneyPart = cashBinds
                ? useful.stream()
                        .flatMap(p -> slots(p.offer().covers()).stream())
                        .findFirst()
                        .map(slot -> find(head, slot))
                        .orElse(-1)
                : -2;
        for (int slot = 0; slot < head.length; slot++) {
            int top = find(head, slot);
            if (top != slot) {
                continue;
            }
            List<Integer> slots = new ArrayList<>();
            for (int other = 0; other < head.length; other++) {
                if (find(head, other) == top && needed(other)) {
                    slots.add(other);
                }
            }
            if (slots.isEmpty()) {
                continue;
            }
            parts.add(new Part(
                    slots,
                    renting.stream()
                            .filter(r -> !java.util.Collections.disjoint(slots, slots(r.offer.covers())))
                            .toList(),
                    useful.stream()
                            .filter(p -> top == moneyPart
                                    || !java.util.Collections.disjoint(
                                            slots, slots(p.offer().covers())))
                            .toList()));
        }
        if (moneyPart == -1 && !useful.isEmpty()) {
            parts.add(new Part(List.of(), List.of(), useful));
        }
    }

    private boolean needed(int slot) {
        for (int count : demand[slot]) {
            if (count > 0) {
                return true;
            }
        }
        return false;
    }

    /** The needed slots that something covers. */
    private List<Integer> slots(Map<String, Integer> covers) {
        List<Integer> found = new ArrayList<>();
        for (int slot = 0; slot < demand.length; slot++) {
            if (covers.containsKey(resolved.slots.get(slot)) && needed(slot)) {
                found.add(slot);
            }
        }
        return found;
    }

    private static void join(int[] head, List<Integer> slots) {
        for (int slot : slots) {
            head[find(head, slot)] = find(head, slots.get(0));
        }
    }

    private static int find(int[] head, int slot) {
        int at = slot;
        while (head[at] != at) {
            at = head[at];
        }
        return at;
    }

    /** The most that outlays may come to, as {@link #outlay} counts them. */
    long cash() {
        return cashBinds ? resolved.cash().orElseThrow().shiftRight(spareBits()).longValueExact() : Long.MAX_VALUE;
    }

    /**
     * Outlays and cash are counted in whole minor units; only beyond 2^57 of them, which no currency of two decimals
     * reaches within the limits of a question, are the last bits left out, upwards for an outlay.
     */
    long outlay(Purchase purchase) {
        if (!cashBinds) {
            return 0;
        }
        return purchase.outlay().equals(resolved.cash().orElseThrow())
                ? cash()
                : purchase.outlay().negate().shiftRight(spareBits()).negate().longValueExact();
    }

    private int spareBits() {
        return Math.max(0, resolved.cash().orElseThrow().bitLength() - 57);
    }
}
