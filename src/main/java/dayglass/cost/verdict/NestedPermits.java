package dayglass.cost.verdict;

import dayglass.base.DateRange;
import dayglass.base.Money;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A day, a week, four weeks, or the thing itself, for whoever learns only day by day when it is needed. The time is cut
 * into cells, the cells of a longer permit made of whole cells of the next shorter one; the purchase is one cell that
 * never ends. A needed day on which nothing is held puts the same sum aside for each cell that it lies in, as much as
 * fills the first of them to its price; the longest cell that is full is taken.
 *
 * <p>With k kinds, the purchase one of them, that costs at most k times the least that permits for the same cells could
 * have cost, whatever comes. Proof: what a taken cell costs was put aside by days inside it, and each day's sum counts
 * in k cells at most, so all costs at most k times all sums; no cell was ever filled above its price, so whoever covers
 * all days pays each day's sum at least once. For one kind of rental and the purchase it is the break-even rule with its
 * factor of two. Permits that begin on any day could cost half as much as those for cells and no less, as two cells cover
 * any such permit. (The parking permit problem: Meyerson 2005, who shows that no rule without chance has a factor of a
 * lower order than k; the argument by sums is that of Buchbinder and Naor 2009. Both from memory.)
 */
public final class NestedPermits {
    private final List<Permit> permits;
    private final Money purchase;

    /** Something rented for a price for so many days on end. */
    public record Permit(int days, Money price) {}

    /**
     * Something taken.
     *
     * @param on the needed day on which the rule says so
     * @param days that it serves; empty for the purchase, which serves for ever
     */
    public record Taken(LocalDate on, Optional<DateRange> days, Money price) {}

    /**
     * What the rule would have done.
     *
     * @param kinds of permits, the purchase one of them: the factor that is never passed
     * @param hindsight the least that the same cells could have cost
     * @param hindsightAnyDay the least where a permit may begin on any day
     */
    public record Ruling(List<Taken> taken, int kinds, Money cost, Money hindsight, Money hindsightAnyDay) {
        public Ruling {
            taken = List.copyOf(taken);
        }

        /** The day on which it buys. */
        public Optional<LocalDate> buysOn() {
            return taken.stream()
                    .filter(each -> each.days().isEmpty())
                    .map(Taken::on)
                    .findFirst();
        }
    }

    /**
     * @param permits at least one, the shortest first, the days of each a multiple of those of the one before
     * @throws IllegalArgumentException where that is not so
     */
    public NestedPermits(List<Permit> permits, Money purchase) {
        if (permits.isEmpty()) {
            throw new IllegalArgumentException("there is no permit");
        }
        for (int at = 1; at < permits.size(); at++) {
            int shorter = permits.get(at - 1).days();
            if (permits.get(at).days() <= shorter || permits.get(at).days() % shorter != 0) {
                throw new IllegalArgumentException(permits + " do not lie in each other");
            }
        }
        this.permits = List.copyOf(permits);
        this.purchase = purchase;
    }

    /** The rule along the days on which the thing was needed, at least one; cells are counted from the first one's Monday. */
    public Ruling along(NavigableSet<LocalDate> needed) {
        Map<Cell, Money> aside = new HashMap<>();
        TreeSet<LocalDate> covered = new TreeSet<>();
        List<Taken> taken = new ArrayList<>();
        for (LocalDate day : needed) {
            boolean bought = taken.stream().anyMatch(each -> each.days().isEmpty());
            if (!bought && !covered.contains(day)) {
                Taken next = take(day, begin(needed), aside);
                taken.add(next);
                next.days().ifPresent(days -> days.stream().forEach(covered::add));
            }
        }
        Money cost = taken.stream().map(Taken::price).reduce(none(), Money::plus);
        return new Ruling(taken, permits.size() + 1, cost, inCells(needed), onAnyDay(needed));
    }

    private Money none() {
        return Money.zero(purchase.currency());
    }

    /** A stretch that a permit serves, by its first day; that of the purchase begins with the first cell of all. */
    private record Cell(int kind, LocalDate from) {}

    private Cell cellOf(int kind, LocalDate day, LocalDate begin) {
        if (kind == permits.size()) {
            return new Cell(kind, begin);
        }
        int days = permits.get(kind).days();
        return new Cell(kind, day.minusDays(ChronoUnit.DAYS.between(begin, day) % days));
    }

    private static LocalDate begin(NavigableSet<LocalDate> needed) {
        return needed.first().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private Money priceOf(Cell cell) {
        return cell.kind() == permits.size()
                ? purchase
                : permits.get(cell.kind()).price();
    }

    private Taken take(LocalDate day, LocalDate begin, Map<Cell, Money> aside) {
        List<Cell> cells = new ArrayList<>();
        for (int kind = 0; kind <= permits.size(); kind++) {
            cells.add(cellOf(kind, day, begin));
        }
        Money sum = cells.stream()
                .map(cell -> priceOf(cell).minus(aside.getOrDefault(cell, none())))
                .min(Money::compareTo)
                .orElseThrow();
        Cell full = cells.get(0);
        for (Cell cell : cells) {
            full = aside.merge(cell, sum, Money::plus).equals(priceOf(cell)) ? cell : full;
        }
        Optional<DateRange> days = Optional.empty();
        if (full.kind() < permits.size()) {
            days = Optional.of(new DateRange(
                    full.from(), full.from().plusDays(permits.get(full.kind()).days())));
        }
        return new Taken(day, days, priceOf(full));
    }

    /** Each cell by its own price or by the cells that it is made of, whichever is less. */
    private Money inCells(NavigableSet<LocalDate> needed) {
        LocalDate begin = begin(needed);
        Map<LocalDate, Money> costs = new TreeMap<>();
        needed.forEach(
                day -> costs.put(cellOf(0, day, begin).from(), permits.get(0).price()));
        Map<LocalDate, Money> shorter = costs;
        for (int kind = 1; kind <= permits.size(); kind++) {
            Map<LocalDate, Money> longer = new TreeMap<>();
            for (Map.Entry<LocalDate, Money> each : shorter.entrySet()) {
                Cell cell = cellOf(kind, each.getKey(), begin);
                Money sum = longer.getOrDefault(cell.from(), none()).plus(each.getValue());
                longer.put(cell.from(), least(sum, priceOf(cell)));
            }
            shorter = longer;
        }
        return shorter.values().stream().reduce(none(), Money::plus);
    }

    /** The last day needed ends some permit; what is needed before that permit begins is paid for at its own least. */
    private Money onAnyDay(NavigableSet<LocalDate> needed) {
        List<LocalDate> days = List.copyOf(needed);
        List<Money> leastOfFirst = new ArrayList<>(List.of(none()));
        for (LocalDate day : days) {
            Money least = purchase;
            for (Permit permit : permits) {
                int before = needed.headSet(day.minusDays(permit.days() - 1L)).size();
                least = least(least, permit.price().plus(leastOfFirst.get(before)));
            }
            leastOfFirst.add(least);
        }
        return leastOfFirst.get(days.size());
    }

    private static Money least(Money one, Money other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
