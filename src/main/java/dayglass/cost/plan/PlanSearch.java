package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Held;
import dayglass.cost.plan.Resolved.Purchase;
import dayglass.cost.plan.Resolved.Rental;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/** The search for the least plan of one question, part by part. It can be stopped and gone on with. */
final class PlanSearch {
    /** Rentals times days squared from which on pricing all periods takes a time that is felt. */
    private static final long LARGE = 4_000_000;

    private final Resolved resolved;
    private final Parts parts;
    private final List<PartSearch> searches = new ArrayList<>();
    private boolean impossible;
    private boolean cashAlone;

    PlanSearch(Resolved resolved) {
        this.resolved = resolved;
        this.parts = new Parts(resolved);
    }

    /** What is known of one part: a best plan and a bound, exact amounts in minor units. */
    private sealed interface PartSearch permits Solved, Searched, Sketched {}

    private record Solved(List<Held> held, int buy, BigInteger cost) implements PartSearch {}

    private record Searched(Parts.Part part, CoverSearch search, Optional<BigInteger> floor) implements PartSearch {
        BigInteger bound(Scale scale) {
            BigInteger bound = scale.minorFrom(search.bound());
            return floor.map(bound::max).orElse(bound);
        }
    }

    /** The signal came before the search could begin. */
    private record Sketched(Parts.Part part, Optional<Cover.Found> found, BigInteger bound) implements PartSearch {}

    /** Makes first plans and bounds for every part. */
    void begin(StopSignal stop) {
        if (parts.cashLeavesGaps) {
            impossible = true;
            cashAlone = true;
            return;
        }
        for (Parts.Part part : parts.parts) {
            Optional<Solved> solved = oneSlot(part);
            if (solved.isPresent()) {
                searches.add(solved.get());
                continue;
            }
            Optional<int[]> fallback = fallback(part, stop);
            if (fallback.isEmpty()) {
                impossible = true;
                cashAlone = true;
                return;
            }
            searches.add(search(part, fallback.get(), stop));
            if (impossible) {
                return;
            }
        }
    }

    /** A part that is large has a plan before its periods are priced, which takes long. */
    private PartSearch search(Parts.Part part, int[] fallback, StopSignal stop) {
        boolean large = (long) part.rentals().size() * resolved.days * resolved.days > LARGE;
        Optional<Cover.Found> first = large ? new FirstPlan(parts, part).make(fallback) : Optional.empty();
        Optional<Cover> cover = new CoverBuilder(parts, part).cover(stop);
        if (cover.isEmpty()) {
            first = large ? first : new FirstPlan(parts, part).make(fallback);
            return new Sketched(part, first, new DayFloor(parts, part).bound());
        }
        return large ? searched(part, cover.get(), fallback, first, stop) : reduced(part, cover.get(), fallback, stop);
    }

    /**
     * Without what another outdoes. Where stock is drawn on, there is a plan before prices are raised: plans made of prices
     * may ask for more than there is until much has been searched.
     */
    private PartSearch reduced(Parts.Part whole, Cover cover, int[] fallback, StopSignal stop) {
        int[] kept = parts.scale().exact()
                ? Dominance.kept(cover, parts.plenty(whole))
                : IntStream.range(0, cover.hires.length).toArray();
        Parts.Part part = whole.ofRentals(kept);
        boolean draws = part.rentals().stream().anyMatch(r -> !r.offer.draws().isEmpty());
        Optional<Cover.Found> first = draws ? new FirstPlan(parts, part).make(fallback) : Optional.empty();
        return searched(part, cover.ofHires(kept), fallback, first, stop);
    }

    private PartSearch searched(
            Parts.Part part, Cover cover, int[] fallback, Optional<Cover.Found> first, StopSignal stop) {
        CoverSearch search = new CoverSearch(cover, unit(cover), fallback);
        search.offer(first);
        search.begin(stop);
        impossible = search.impossible();
        return new Searched(
                part, search, cover.whole() ? Optional.empty() : Optional.of(new DayFloor(parts, part).bound()));
    }

    /** Goes on until all is proved, the signal comes, or so much more work is done on each part. */
    void run(StopSignal stop, long mostWork) {
        for (PartSearch each : searches) {
            if (!impossible && each instanceof Searched searched) {
                searched.search().run(stop, mostWork);
                impossible = searched.search().impossible();
            }
        }
    }

    /**
     * What a search has come to.
     *
     * @param impossible it was proved that there is no plan
     * @param cashAlone and that the cash limit alone is the cause
     * @param bound no plan costs less, in minor units
     */
    record Result(boolean impossible, boolean cashAlone, Optional<Plan> plan, BigInteger bound) {}

    Result result() {
        return new Result(impossible, cashAlone, plan(), impossible ? BigInteger.ZERO : bound());
    }

    boolean impossible() {
        return impossible;
    }

    long work() {
        long work = 0;
        for (PartSearch each : searches) {
            if (each instanceof Searched searched) {
                work += searched.search().work();
            }
        }
        return work;
    }

    /** The best plan so far, or empty where a part has none yet. */
    Optional<Plan> plan() {
        List<Held> held = new ArrayList<>();
        Integer[] bought = Arrays.stream(parts.sure).boxed().toArray(Integer[]::new);
        for (PartSearch each : searches) {
            if (each instanceof Solved solved) {
                held.addAll(solved.held());
                if (solved.buy() >= 0) {
                    bought[solved.buy()]++;
                }
            } else {
                Optional<Cover.Found> found = found(each);
                if (found.isEmpty()) {
                    return Optional.empty();
                }
                add(part(each), found.get(), held, bought);
            }
        }
        if (impossible) {
            return Optional.empty();
        }
        boolean exact = searches.stream().allMatch(Solved.class::isInstance)
                || parts.scale().exact();
        return Optional.of(
                exact ? new Plan(held, List.of(bought), cost()) : Plan.priced(resolved, held, List.of(bought)));
    }

    private static Optional<Cover.Found> found(PartSearch each) {
        return each instanceof Searched searched ? searched.search().best() : ((Sketched) each).found();
    }

    private static Parts.Part part(PartSearch each) {
        return each instanceof Searched searched ? searched.part() : ((Sketched) each).part();
    }

    private BigInteger cost() {
        BigInteger sum = sureCost();
        for (PartSearch each : searches) {
            sum = sum.add(
                    each instanceof Solved solved
                            ? solved.cost()
                            : parts.scale().minorFrom(found(each).orElseThrow().cost()));
        }
        return sum;
    }

    private BigInteger sureCost() {
        BigInteger sum = BigInteger.ZERO;
        for (Purchase purchase : resolved.purchases) {
            sum = sum.add(purchase.netCost().multiply(BigInteger.valueOf(parts.sure[purchase.index()])));
        }
        return sum;
    }

    private static void add(Parts.Part part, Cover.Found found, List<Held> held, Integer[] bought) {
        for (Held period : found.held()) {
            held.add(new Held(part.rentals().get(period.hire()).index, period.first(), period.last()));
        }
        for (int b = 0; b < found.bought().size(); b++) {
            bought[part.purchases().get(b).index()] += found.bought().get(b);
        }
    }

    /** No plan costs less than this, in minor units. */
    BigInteger bound() {
        BigInteger sum = sureCost();
        for (PartSearch each : searches) {
            if (each instanceof Searched searched) {
                sum = sum.add(searched.bound(parts.scale()));
            } else {
                sum = sum.add(each instanceof Solved solved ? solved.cost() : ((Sketched) each).bound());
            }
        }
        return sum;
    }

    private Optional<Solved> oneSlot(Parts.Part part) {
        boolean single = part.slots().size() == 1
                && part.rentals().stream().allMatch(r -> r.offer.draws().isEmpty())
                && part.purchases().stream().allMatch(p -> p.netCost().signum() >= 0);
        if (!single) {
            return Optional.empty();
        }
        boolean[] need = new boolean[resolved.days];
        int[] demand = parts.demand[part.slots().get(0)];
        for (int day = 0; day < need.length; day++) {
            if (demand[day] > 1) {
                return Optional.empty();
            }
            need[day] = demand[day] > 0;
        }
        boolean small = part.rentals().stream().allMatch(Rental::small)
                && part.purchases().stream().allMatch(p -> p.netCost().bitLength() < 58);
        return small
                ? small(part, need)
                : new OneSlotExact(need, part.rentals())
                        .solve(part.purchases())
                        .map(found -> new Solved(
                                found.held(),
                                found.buy(),
                                Objects.requireNonNull(found.cost(), "everything can be covered")));
    }

    private static Optional<Solved> small(Parts.Part part, boolean[] need) {
        List<OneSlot.Offer> offers = new ArrayList<>();
        for (Rental rental : part.rentals()) {
            offers.add(new OneSlot.Offer(
                    rental.index, rental.offer.copies(), rental.costs(), rental.windowEnd, rental.anyStart));
        }
        List<OneSlot.Buyable> buys = part.purchases().stream()
                .map(p -> new OneSlot.Buyable(p.index(), p.netCost().longValueExact(), p.from()))
                .toList();
        return new OneSlot(need)
                .solve(offers, buys)
                .map(found -> new Solved(found.held(), found.buy(), BigInteger.valueOf(found.cost())));
    }

    /**
     * Purchases within the cash limit with which a plan exists; empty where the limit leaves none. Where the limit does
     * not bind, or rentals can cover everything, that is easy; otherwise the least outlay is itself searched for.
     */
    private Optional<int[]> fallback(Parts.Part part, StopSignal stop) {
        int count = part.purchases().size();
        int[][] missing = missing(part);
        boolean none = Arrays.stream(missing).allMatch(row -> Arrays.stream(row).allMatch(m -> m == 0));
        if (none || count == 0) {
            return Optional.of(new int[count]);
        }
        if (!parts.cashBinds) {
            return Optional.of(
                    part.purchases().stream().mapToInt(parts::worthBuying).toArray());
        }
        Cover.Buy[] buys = part.purchases().stream()
                .map(p -> new CoverBuilder(parts, part).buy(p, missing, 0))
                .map(b -> new Cover.Buy(b.index, b.copies, b.slots, b.serves, b.outlay, 0))
                .toArray(Cover.Buy[]::new);
        Cover cover = new Cover(resolved.days, missing, new Cover.Hire[0], buys, Long.MAX_VALUE, new int[0]);
        CoverSearch search = new CoverSearch(
                cover, 1, Arrays.stream(buys).mapToInt(b -> b.copies).toArray());
        search.begin(stop);
        search.run(() -> stop.stopped() || affordable(search), Long.MAX_VALUE);
        if (search.bound() > parts.cash()) {
            return Optional.empty();
        }
        return Optional.of(search.best()
                .filter(found -> affordable(search))
                .map(found -> found.bought().stream().mapToInt(i -> i).toArray())
                .orElse(new int[count]));
    }

    private boolean affordable(CoverSearch search) {
        return search.best().map(found -> found.cost() <= parts.cash()).orElse(false);
    }

    private int[][] missing(Parts.Part part) {
        int[][] left = resolved.withPurchases(all -> List.<Purchase>of()).shortages();
        return part.slots().stream()
                .map(slot -> {
                    int[] row = left[slot].clone();
                    for (int day = 0; day < row.length; day++) {
                        row[day] = Math.min(row[day], parts.demand[slot][day]);
                    }
                    return row;
                })
                .toArray(int[][]::new);
    }

    /** The largest step of which all costs are multiples: a bound may be rounded up to the next. */
    private long unit(Cover cover) {
        long step = 0;
        for (Cover.Buy buy : cover.buys) {
            step = common(step, Math.abs(buy.cost));
        }
        long least = parts.scale().exact() ? 1L << parts.scale().shift() : 1;
        for (Cover.Hire hire : cover.hires) {
            for (int at = 0; at < hire.periods.size() && step != least; at++) {
                step = common(step, hire.periods.cost[at]);
            }
        }
        return Math.max(least, step);
    }

    private static long common(long one, long other) {
        long a = one;
        long b = other;
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }
}
