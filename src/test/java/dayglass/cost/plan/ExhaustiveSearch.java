package dayglass.cost.plan;

import dayglass.base.Money;
import dayglass.cost.ownership.PlainNetCost;
import dayglass.cost.rental.PlainPricing;
import dayglass.cost.rental.PlainPricing.Rates;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The least total of a small question by trying everything: every number of every purchase, and day by day every way
 * in which each copy can be away, be kept or begin a new period. Meant to be plainly right, not fast; a few days and
 * at most five copies in all.
 */
public final class ExhaustiveSearch {
    private static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

    /** What the search found, in the terms of the comparison; empty where it cannot be done. */
    public record Findings(
            Optional<Money> ownedOnly,
            Optional<Money> dayRateOnly,
            Optional<Money> weekRateOnly,
            Optional<Money> rentOnly,
            Optional<Money> buyOnly,
            Optional<Money> best,
            List<Costing.Shortage> shortages,
            boolean cashLimitOnly) {}

    /** One copy of one rental, and what each of its periods costs in minor units. */
    private static final class Track {
        private final Question.Rental rental;
        private final OptionalLong[][] prices;

        Track(Question.Rental rental, OptionalLong[][] prices) {
            this.rental = rental;
            this.prices = prices;
        }
    }

    private final Question question;
    private final PlainNeeds needs;
    private final int days;

    private ExhaustiveSearch(Question question) {
        this.question = question;
        this.needs = new PlainNeeds(question);
        this.days = question.schedule().days();
    }

    public static Findings of(Question question) {
        return new ExhaustiveSearch(question).findings();
    }

    private Findings findings() {
        List<Track> none = List.of();
        List<Track> every = tracks(Rates.EVERY_BLOCK);
        OptionalLong best = least(every, true, true);
        List<Costing.Shortage> shortages = shortages(every);
        boolean cashLimitOnly = best.isEmpty()
                && shortages.isEmpty()
                && least(every, true, false).isPresent();
        return new Findings(
                money(least(none, false, true)),
                money(least(tracks(Rates.DAYS_ALONE), false, true)),
                money(least(tracks(Rates.WEEKS_ALONE), false, true)),
                money(least(every, false, true)),
                money(least(none, true, true)),
                money(best),
                shortages,
                cashLimitOnly);
    }

    private Optional<Money> money(OptionalLong minor) {
        return minor.isPresent()
                ? Optional.of(Money.ofMinor(question.currency(), minor.getAsLong()))
                : Optional.empty();
    }

    // --- rentals: every period of every copy, priced

    private List<Track> tracks(Rates rates) {
        List<Track> tracks = new ArrayList<>();
        for (Question.Rental rental : question.rentals()) {
            OptionalLong[][] prices = prices(rental, rates);
            for (int copy = 0; copy < rental.copies(); copy++) {
                tracks.add(new Track(rental, prices));
            }
        }
        if (tracks.size() > 6 || days > 12) {
            throw new IllegalArgumentException("too large to be tried out whole");
        }
        return tracks;
    }

    private OptionalLong[][] prices(Question.Rental rental, Rates rates) {
        PlainPricing pricing = new PlainPricing(rental.terms(), question.schedule(), question.currency(), rates);
        OptionalLong[][] prices = new OptionalLong[days][days];
        for (int first = 0; first < days; first++) {
            for (int last = first; last < days; last++) {
                boolean open = PlainNeeds.insideOneWindow(
                        rental.available(),
                        question.schedule().dateOf(first),
                        question.schedule().dateOf(last));
                prices[first][last] = open
                        ? pricing.price(first, last)
                                .map(price -> OptionalLong.of(minor(price.total())))
                                .orElse(OptionalLong.empty())
                        : OptionalLong.empty();
            }
        }
        return prices;
    }

    private long minor(BigDecimal major) {
        return major.movePointRight(question.currency().decimals()).longValueExact();
    }

    // --- purchases: every number of each

    private OptionalLong least(List<Track> tracks, boolean purchases, boolean cashBinds) {
        long least = IMPOSSIBLE;
        Map<String, Long> rentalCosts = new HashMap<>();
        for (int[] bought :
                purchases ? bundles() : List.of(new int[question.purchases().size()])) {
            Money outlay = Money.zero(question.currency());
            Money net = Money.zero(question.currency());
            for (int index = 0; index < bought.length; index++) {
                Question.Purchase purchase = question.purchases().get(index);
                outlay = outlay.plus(PlainNetCost.outlay(purchase.terms()).times(bought[index]));
                net = net.plus(PlainNetCost.of(purchase.terms(), question.discountRate())
                        .times(bought[index]));
            }
            if (cashBinds
                    && question.cashLimit().isPresent()
                    && outlay.compareTo(question.cashLimit().get()) > 0) {
                continue;
            }
            boolean[][] enough = enough(tracks, bought);
            long rent = rentalCosts.computeIfAbsent(Arrays.deepToString(enough), key -> leastRent(tracks, enough));
            if (rent < IMPOSSIBLE) {
                least = Math.min(least, Math.addExact(rent, net.minor().longValueExact()));
            }
        }
        return least < IMPOSSIBLE ? OptionalLong.of(least) : OptionalLong.empty();
    }

    private List<int[]> bundles() {
        List<int[]> bundles =
                new ArrayList<>(List.of(new int[question.purchases().size()]));
        for (int index = 0; index < question.purchases().size(); index++) {
            for (int[] bundle : List.copyOf(bundles)) {
                for (int count = 1; count <= question.purchases().get(index).copies(); count++) {
                    int[] more = bundle.clone();
                    more[index] = count;
                    bundles.add(more);
                }
            }
        }
        return bundles;
    }

    // --- what is enough on a day

    /** For each day and each set of copies held (a bit each): whether the day is covered within the stock. */
    private boolean[][] enough(List<Track> tracks, int[] bought) {
        boolean[][] enough = new boolean[days][1 << tracks.size()];
        for (int day = 0; day < days; day++) {
            for (int held = 0; held < 1 << tracks.size(); held++) {
                enough[day][held] = withinStock(tracks, held) && covered(tracks, held, bought, day);
            }
        }
        return enough;
    }

    private boolean covered(List<Track> tracks, int held, int[] bought, int day) {
        for (String slot : needs.slots()) {
            if (serving(tracks, held, bought, slot, day) < needs.count(slot, day)) {
                return false;
            }
        }
        return true;
    }

    private int serving(List<Track> tracks, int held, int[] bought, String slot, int day) {
        int serving = 0;
        for (int index = 0; index < tracks.size(); index++) {
            if ((held >> index & 1) == 1) {
                serving += tracks.get(index).rental.covers().getOrDefault(slot, 0);
            }
        }
        for (int index = 0; index < bought.length; index++) {
            Question.Purchase purchase = question.purchases().get(index);
            if (!question.schedule().dateOf(day).isBefore(purchase.availableFrom())) {
                serving += bought[index] * purchase.covers().getOrDefault(slot, 0);
            }
        }
        for (Question.Owned owned : question.owned()) {
            if (PlainNeeds.open(owned.available(), question.schedule().dateOf(day))) {
                serving += owned.covers().getOrDefault(slot, 0);
            }
        }
        return serving;
    }

    private boolean withinStock(List<Track> tracks, int held) {
        for (Map.Entry<String, Integer> stock : question.stock().entrySet()) {
            int drawn = 0;
            for (int index = 0; index < tracks.size(); index++) {
                if ((held >> index & 1) == 1) {
                    drawn += tracks.get(index).rental.draws().getOrDefault(stock.getKey(), 0);
                }
            }
            if (drawn > stock.getValue()) {
                return false;
            }
        }
        return true;
    }

    // --- rentals day by day

    /**
     * The state is a digit a copy: 0 for away, s + 1 for held since day s. Each day every copy that is held may be kept,
     * given back that morning, or given back and taken anew; every copy that is away may stay away or be taken.
     */
    private long leastRent(List<Track> tracks, boolean[][] enough) {
        long[] costs = new long[Math.toIntExact(Math.round(Math.pow(days + 1, tracks.size())))];
        Arrays.fill(costs, IMPOSSIBLE);
        costs[0] = 0;
        for (int day = 0; day < days; day++) {
            long[] next = new long[costs.length];
            Arrays.fill(next, IMPOSSIBLE);
            for (int state = 0; state < costs.length; state++) {
                if (costs[state] < IMPOSSIBLE) {
                    step(tracks, enough, day, state, costs[state], new Partial(0, 0, 1, 0), next);
                }
            }
            costs = next;
        }
        long least = IMPOSSIBLE;
        for (int state = 0; state < costs.length; state++) {
            long cost = costs[state];
            int rest = state;
            for (int index = 0; index < tracks.size() && cost < IMPOSSIBLE; index++, rest /= days + 1) {
                cost = givenBack(tracks.get(index), rest % (days + 1), days - 1, cost);
            }
            least = Math.min(least, cost);
        }
        return least;
    }

    /** The first copies' new digits, as a state, the copies held among them, and the place of the next digit. */
    private record Partial(int state, int held, int place, int index) {
        Partial with(int digit, int base) {
            return new Partial(state + digit * place, digit == 0 ? held : held | 1 << index, place * base, index + 1);
        }
    }

    private void step(
            List<Track> tracks, boolean[][] enough, int day, int rest, long cost, Partial partial, long[] next) {
        if (cost >= IMPOSSIBLE) {
            return;
        }
        int base = days + 1;
        if (partial.index() == tracks.size()) {
            if (enough[day][partial.held()]) {
                next[partial.state()] = Math.min(next[partial.state()], cost);
            }
            return;
        }
        int digit = rest % base;
        long back = givenBack(tracks.get(partial.index()), digit, day - 1, cost);
        step(tracks, enough, day, rest / base, back, partial.with(0, base), next);
        step(tracks, enough, day, rest / base, back, partial.with(day + 1, base), next);
        if (digit != 0) {
            step(tracks, enough, day, rest / base, cost, partial.with(digit, base), next);
        }
    }

    private static long givenBack(Track track, int digit, int last, long cost) {
        if (digit == 0) {
            return cost;
        }
        OptionalLong price = track.prices[digit - 1][last];
        return price.isPresent() ? Math.addExact(cost, price.getAsLong()) : IMPOSSIBLE;
    }

    // --- what nothing can cover

    /** Each slot and day that stays short with everything taken that can be had together on that day. */
    private List<Costing.Shortage> shortages(List<Track> tracks) {
        int[] allBought = question.purchases().stream()
                .mapToInt(Question.Purchase::copies)
                .toArray();
        List<Costing.Shortage> shortages = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (String slot : needs.slots()) {
                int most = 0;
                for (int held = 0; held < 1 << tracks.size(); held++) {
                    if (withinStock(tracks, held) && allCanBeHeld(tracks, held, day)) {
                        most = Math.max(most, serving(tracks, held, allBought, slot, day));
                    }
                }
                if (most < needs.count(slot, day)) {
                    shortages.add(
                            new Costing.Shortage(slot, question.schedule().dateOf(day), needs.count(slot, day) - most));
                }
            }
        }
        return shortages;
    }

    private boolean allCanBeHeld(List<Track> tracks, int held, int day) {
        for (int index = 0; index < tracks.size(); index++) {
            if ((held >> index & 1) == 1 && !canBeHeld(tracks.get(index), day)) {
                return false;
            }
        }
        return true;
    }

    private boolean canBeHeld(Track track, int day) {
        for (int first = 0; first <= day; first++) {
            for (int last = day; last < days; last++) {
                if (track.prices[first][last].isPresent()) {
                    return true;
                }
            }
        }
        return false;
    }
}
