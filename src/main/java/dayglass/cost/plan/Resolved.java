package dayglass.cost.plan;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.NetCost;
import dayglass.cost.rental.PeriodCosts;
import dayglass.cost.rental.PeriodPricing;
import dayglass.cost.rental.RentalTerms;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** A question by day numbers and minor units: everything that each search on it needs, worked out once. */
final class Resolved {
    final Question question;
    final Schedule schedule;
    final int days;
    final List<String> slots;

    /** How many are asked for, by slot and day. */
    final int[][] asked;

    /** What the owned units leave open. */
    final int[][] open;

    final List<Rental> rentals;
    final List<Purchase> purchases;

    /** A rental with its windows: the last day of the window open on each day, -1 where none is. */
    static final class Rental {
        final int index;
        final Question.Rental offer;
        final int[] windowEnd;
        final boolean longHire;
        final boolean anyStart;
        private final Schedule schedule;
        private final boolean small;
        private Optional<PeriodPricing> pricing = Optional.empty();

        Rental(int index, Question.Rental offer, int[] windowEnd, Schedule schedule) {
            this.index = index;
            this.offer = offer;
            this.windowEnd = windowEnd;
            this.schedule = schedule;
            RentalTerms terms = offer.terms();
            longHire = !terms.longHire().isEmpty();
            boolean early = longHire || terms.extraDay().isPresent();
            for (RentalTerms.Block block : terms.blocks()) {
                early |= block.startsOn().isPresent();
            }
            anyStart = early;
            small = PeriodCosts.fit(terms, schedule.days());
        }

        /** Whether its totals may be reckoned in {@code long}. */
        boolean small() {
            return small;
        }

        PeriodPricing pricing() {
            if (pricing.isEmpty()) {
                pricing = Optional.of(new PeriodPricing(offer.terms(), schedule));
            }
            return pricing.get();
        }

        PeriodCosts costs() {
            return new PeriodCosts(offer.terms(), schedule);
        }
    }

    /** A purchase with its net cost and outlay, in minor units. */
    record Purchase(int index, Question.Purchase offer, int from, int copies, BigInteger netCost, BigInteger outlay) {}

    private Resolved(
            Question question,
            List<String> slots,
            int[][] asked,
            int[][] open,
            List<Rental> rentals,
            List<Purchase> purchases) {
        this.question = question;
        this.schedule = question.schedule();
        this.days = schedule.days();
        this.slots = slots;
        this.asked = asked;
        this.open = open;
        this.rentals = rentals;
        this.purchases = purchases;
    }

    static Resolved of(Question question) {
        List<String> slots = List.copyOf(new LinkedHashSet<>(
                question.needs().stream().map(Question.Need::slot).toList()));
        int[][] asked = asked(question, slots);
        int[][] open = new int[slots.size()][];
        for (int slot = 0; slot < open.length; slot++) {
            open[slot] = asked[slot].clone();
        }
        for (Question.Owned owned : question.owned()) {
            int[] windows = windows(owned.available(), question.schedule());
            for (int slot = 0; slot < open.length; slot++) {
                int count = owned.covers().getOrDefault(slots.get(slot), 0);
                for (int day = 0; count > 0 && day < windows.length; day++) {
                    if (windows[day] >= 0) {
                        open[slot][day] = Math.max(0, open[slot][day] - count);
                    }
                }
            }
        }
        List<Rental> rentals = new ArrayList<>();
        for (int i = 0; i < question.rentals().size(); i++) {
            Question.Rental offer = question.rentals().get(i);
            rentals.add(new Rental(i, offer, windows(offer.available(), question.schedule()), question.schedule()));
        }
        List<Purchase> purchases = new ArrayList<>();
        Growths growths = new Growths();
        for (int i = 0; i < question.purchases().size(); i++) {
            Question.Purchase offer = question.purchases().get(i);
            purchases.add(new Purchase(
                    i,
                    offer,
                    question.schedule().dayOf(offer.availableFrom()),
                    offer.copies(),
                    NetCost.of(offer.terms(), question.discountRate(), growths).minor(),
                    NetCost.outlay(offer.terms()).minor()));
        }
        return new Resolved(question, slots, asked, open, rentals, purchases);
    }

    private static int[][] asked(Question question, List<String> slots) {
        Schedule schedule = question.schedule();
        int[][] asked = new int[slots.size()][schedule.days()];
        for (Question.Need need : question.needs()) {
            int[] row = asked[slots.indexOf(need.slot())];
            Set<DayUse> on = need.on().isEmpty() ? Set.of() : EnumSet.copyOf(need.on());
            for (int day = 0; !on.isEmpty() && day < row.length; day++) {
                Optional<DayUse> use = schedule.scheduledUseOn(day);
                if (use.isPresent() && on.contains(use.get())) {
                    row[day] += need.count();
                }
            }
            for (DateRange dates : need.dates()) {
                int until = Math.min(row.length, schedule.dayOf(dates.until()));
                for (int day = Math.max(0, schedule.dayOf(dates.from())); day < until; day++) {
                    row[day] += need.count();
                }
            }
        }
        return asked;
    }

    private static int[] windows(List<DateRange> available, Schedule schedule) {
        int[] end = new int[schedule.days()];
        if (available.isEmpty()) {
            Arrays.fill(end, end.length - 1);
            return end;
        }
        Arrays.fill(end, -1);
        for (DateRange window : available) {
            long first = java.time.temporal.ChronoUnit.DAYS.between(
                    schedule.horizon().from(), window.from());
            long until = java.time.temporal.ChronoUnit.DAYS.between(
                    schedule.horizon().from(), window.until());
            int from = (int) Math.max(0, Math.min(first, end.length));
            int to = (int) Math.max(from, Math.min(until, end.length));
            Arrays.fill(end, from, to, to - 1);
        }
        return end;
    }

    /** The same with other terms for the rentals; those left without terms fall out. */
    Resolved withTerms(java.util.function.Function<RentalTerms, Optional<RentalTerms>> change) {
        List<Rental> changed = new ArrayList<>();
        for (Rental rental : rentals) {
            change.apply(rental.offer.terms()).ifPresent(terms -> {
                Question.Rental offer = rental.offer;
                changed.add(new Rental(
                        rental.index,
                        new Question.Rental(
                                offer.id(),
                                offer.supplier(),
                                offer.covers(),
                                offer.copies(),
                                terms,
                                offer.available(),
                                offer.draws()),
                        rental.windowEnd,
                        schedule));
            });
        }
        return new Resolved(question, slots, asked, open, changed, purchases);
    }

    Resolved withPurchases(UnaryOperator<List<Purchase>> change) {
        return new Resolved(question, slots, asked, open, rentals, change.apply(purchases));
    }

    Resolved withoutRentals() {
        return new Resolved(question, slots, asked, open, List.of(), purchases);
    }

    /** The same without the rental on the days from first to last. */
    Resolved without(int rental, int first, int last) {
        List<Rental> changed = new ArrayList<>();
        for (Rental each : rentals) {
            changed.add(
                    each.index != rental
                            ? each
                            : new Rental(each.index, each.offer, cut(each.windowEnd, first, last), schedule));
        }
        return new Resolved(question, slots, asked, open, changed, purchases);
    }

    private static int[] cut(int[] windowEnd, int first, int last) {
        int[] cut = windowEnd.clone();
        for (int day = 0; day < cut.length; day++) {
            if (day >= first && day <= last) {
                cut[day] = -1;
            } else if (day < first && cut[day] >= first) {
                cut[day] = first - 1;
            }
        }
        return cut;
    }

    Optional<BigInteger> cash() {
        return question.cashLimit().map(Money::minor);
    }

    /** Whether everything there is leaves nothing short. */
    boolean coverable() {
        for (int[] row : shortages()) {
            for (int missing : row) {
                if (missing > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How many are missing on each slot and day when everything there is gets held. */
    int[][] shortages() {
        int[][] missing = new int[open.length][];
        for (int slot = 0; slot < open.length; slot++) {
            missing[slot] = open[slot].clone();
        }
        List<Rental> drawing = new ArrayList<>();
        for (Rental rental : rentals) {
            if (rental.offer.draws().isEmpty()) {
                take(missing, rental.offer.covers(), rental.offer.copies(), holdable(rental));
            } else {
                drawing.add(rental);
            }
        }
        for (Purchase purchase : purchases) {
            boolean[] there = new boolean[days];
            Arrays.fill(there, Math.max(0, Math.min(purchase.from(), days)), days, true);
            take(missing, purchase.offer().covers(), purchase.copies(), there);
        }
        takeFromStock(missing, drawing);
        return missing;
    }

    /** On each day as many of the rentals that share stock are held as the stock allows, for each slot by itself. */
    private void takeFromStock(int[][] missing, List<Rental> drawing) {
        if (drawing.isEmpty()) {
            return;
        }
        List<boolean[]> holdable = drawing.stream().map(this::holdable).toList();
        for (int day = 0; day < days; day++) {
            for (int slot = 0; slot < missing.length; slot++) {
                if (missing[slot][day] > 0) {
                    List<Rental> there = new ArrayList<>();
                    for (int i = 0; i < drawing.size(); i++) {
                        if (holdable.get(i)[day]
                                && drawing.get(i).offer.covers().containsKey(slots.get(slot))) {
                            there.add(drawing.get(i));
                        }
                    }
                    int most = mostFromStock(
                            there, 0, slots.get(slot), missing[slot][day], new HashMap<>(question.stock()));
                    missing[slot][day] -= Math.min(most, missing[slot][day]);
                }
            }
        }
    }

    /** The most of a slot that the rentals from {@code at} on can serve together, up to {@code enough}. */
    private static int mostFromStock(List<Rental> there, int at, String slot, int enough, Map<String, Integer> left) {
        if (at == there.size() || enough <= 0) {
            return 0;
        }
        Question.Rental offer = there.get(at).offer;
        int fits = offer.copies();
        for (Map.Entry<String, Integer> draw : offer.draws().entrySet()) {
            fits = Math.min(fits, left.getOrDefault(draw.getKey(), 0) / draw.getValue());
        }
        int most = 0;
        for (int count = fits; count >= 0 && most < enough; count--) {
            int served = count * offer.covers().getOrDefault(slot, 0);
            Map<String, Integer> rest = new HashMap<>(left);
            for (Map.Entry<String, Integer> draw : offer.draws().entrySet()) {
                rest.merge(draw.getKey(), -count * draw.getValue(), Integer::sum);
            }
            most = Math.max(most, served + mostFromStock(there, at + 1, slot, enough - served, rest));
        }
        return most;
    }

    private void take(int[][] missing, Map<String, Integer> covers, int copies, boolean[] days) {
        for (int slot = 0; slot < missing.length; slot++) {
            int count = covers.getOrDefault(slots.get(slot), 0);
            for (int day = 0; count > 0 && day < days.length; day++) {
                if (days[day]) {
                    missing[slot][day] = (int) Math.max(0L, missing[slot][day] - (long) count * copies);
                }
            }
        }
    }

    /** The days on which some period can hold it: blocks may not begin on every day. */
    private boolean[] holdable(Rental rental) {
        boolean[] holdable = new boolean[days];
        boolean anyDay = false;
        for (RentalTerms.Block block : rental.offer.terms().blocks()) {
            anyDay |= block.startsOn().isEmpty();
        }
        Optional<PeriodCosts> costs = !anyDay && rental.small() ? Optional.of(rental.costs()) : Optional.empty();
        long[] row = new long[days];
        for (int first = 0; first < days; first++) {
            int end = rental.windowEnd[first];
            if (anyDay) {
                holdable[first] = end >= 0;
            } else if (end >= 0 && costs.isPresent()) {
                costs.get().totalsFrom(first, end, row);
                for (int day = first; day <= end; day++) {
                    holdable[day] |= row[day - first] < PeriodCosts.NONE;
                }
            } else if (end >= 0) {
                var totals = rental.pricing().totalsFrom(first, end);
                for (int i = 0; i < totals.length; i++) {
                    holdable[first + i] |= totals[i] != null;
                }
            }
        }
        return holdable;
    }
}
