package dayglass.cost.plan;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.Schedule;
import dayglass.cost.ownership.PlainNetCost;
import dayglass.cost.rental.RentalTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A question as a mixed-integer programme for a general solver: a whole-number column for each period of each rental
 * and for each purchase; a row for each slot and day, for each stock on a day, and for the cash. The relaxation is as
 * tight as the periods themselves.
 *
 * <p>A period is left out where other periods inside it of the same rental serve every day on which any slot that the
 * rental covers is needed, at no more: they hold no copy longer, so that no limit can stand against the exchange. Rows
 * that repeat an earlier one are left out too.
 */
public final class PeriodModel {
    /** Two ways to write the same programme; which suits a solver better is found by trying. */
    public enum Form {
        /** A period stands in the rows of each of its days. */
        COVERING,
        /**
         * A further column for the copies held of each rental on each day, which changes by what begins and what ended:
         * a period stands in two rows only, however long it is.
         */
        BALANCED
    }

    private static final long NO_PRICE = Long.MAX_VALUE / 4;

    /**
     * A column from 0 to {@code most} with its cost in minor units.
     *
     * @param whole it must be a whole number; the others are whole by themselves once these are
     */
    public record Column(String name, long cost, int most, boolean whole) {}

    /** One part of a row. */
    public record Term(int column, long factor) {}

    /** The sum of the terms lies from {@code least} to {@code most}; either may be absent. */
    public record Row(List<Term> terms, Optional<Long> least, Optional<Long> most) {
        public Row {
            terms = List.copyOf(terms);
        }
    }

    private final Form form;
    private final Question question;
    private final Schedule schedule;
    private final int days;
    private final PlainNeeds needs;
    private final List<Column> columns = new ArrayList<>();
    private final Map<String, List<Term>> terms = new LinkedHashMap<>();
    private final Set<Row> rows = new LinkedHashSet<>();

    /**
     * Models a question.
     *
     * @throws TooLarge where more columns matter than {@code mostColumns}
     */
    public PeriodModel(Question question, Form form, int mostColumns) throws TooLarge {
        this.form = form;
        this.question = question;
        this.schedule = question.schedule();
        this.days = schedule.days();
        this.needs = new PlainNeeds(question);
        for (Question.Rental rental : question.rentals()) {
            addPeriods(rental);
            if (columns.size() > mostColumns) {
                throw new TooLarge(columns.size());
            }
        }
        addPurchases();
        addRows();
    }

    /** The model would have more columns than the caller wants. */
    public static final class TooLarge extends Exception {
        private static final long serialVersionUID = 1L;

        private final int columns;

        TooLarge(int columns) {
            super(columns + " columns and more");
            this.columns = columns;
        }

        int columns() {
            return columns;
        }
    }

    public List<Column> columns() {
        return columns;
    }

    public List<Row> rows() {
        return List.copyOf(rows);
    }

    // --- columns

    private void addPeriods(Question.Rental rental) {
        if (form == Form.BALANCED) {
            addHeld(rental);
        }
        boolean[] useful = useful(rental);
        // The least cost to serve the useful days from first to last by periods inside, by first and by last day; the
        // same figures twice, so that the innermost loop runs along both.
        long[][] byFirst = new long[days + 1][days + 1];
        long[][] byLast = new long[days + 1][days + 1];
        for (int first = days - 1; first >= 0; first--) {
            long[] prices = pricesFrom(rental, first);
            for (int last = first; last < days; last++) {
                long others = leastOfParts(byFirst[first], byLast[last], useful, first, last);
                if (prices[last] < others) {
                    addPeriod(rental, first, last, prices[last]);
                }
                byFirst[first][last] = Math.min(prices[last], others);
                byLast[last][first] = byFirst[first][last];
            }
        }
    }

    private static long leastOfParts(long[] fromFirst, long[] toLast, boolean[] useful, int first, int last) {
        long least = NO_PRICE;
        if (!useful[first]) {
            least = first == last ? 0 : toLast[first + 1];
        }
        if (!useful[last] && first < last) {
            least = Math.min(least, fromFirst[last - 1]);
        }
        for (int cut = first; cut < last; cut++) {
            least = Math.min(least, fromFirst[cut] + toLast[cut + 1]);
        }
        return least;
    }

    private boolean[] useful(Question.Rental rental) {
        boolean[] useful = new boolean[days];
        for (int day = 0; day < days; day++) {
            for (String slot : rental.covers().keySet()) {
                useful[day] |= needs.count(slot, day) > 0;
            }
        }
        return useful;
    }

    private void addHeld(Question.Rental rental) {
        for (int day = 0; day < days; day++) {
            int held = columns.size();
            columns.add(new Column(rental.id() + " held " + day, 0, rental.copies(), false));
            term(balance(rental, day), held, 1);
            if (day + 1 < days) {
                term(balance(rental, day + 1), held, -1);
            }
            serve(rental, held, day);
        }
    }

    private void addPeriod(Question.Rental rental, int first, int last, long price) {
        int column = columns.size();
        columns.add(new Column(rental.id() + " " + first + "-" + last, price, rental.copies(), true));
        if (form == Form.BALANCED) {
            term(balance(rental, first), column, -1);
            if (last + 1 < days) {
                term(balance(rental, last + 1), column, 1);
            }
            return;
        }
        for (int day = first; day <= last; day++) {
            term("copies " + rental.id() + " " + day, column, 1);
            serve(rental, column, day);
        }
    }

    /** A copy held on a day serves slots and draws on the stock. */
    private void serve(Question.Rental rental, int column, int day) {
        for (Map.Entry<String, Integer> covered : rental.covers().entrySet()) {
            if (needs.count(covered.getKey(), day) > 0) {
                term("slot " + covered.getKey() + " " + day, column, covered.getValue());
            }
        }
        for (Map.Entry<String, Integer> drawn : rental.draws().entrySet()) {
            term("stock " + drawn.getKey() + " " + day, column, drawn.getValue());
        }
    }

    private static String balance(Question.Rental rental, int day) {
        return "balance " + rental.id() + " " + day;
    }

    private void addPurchases() {
        for (Question.Purchase purchase : question.purchases()) {
            int column = columns.size();
            long cost = PlainNetCost.of(purchase.terms(), question.discountRate())
                    .minor()
                    .longValueExact();
            columns.add(new Column(purchase.id(), cost, purchase.copies(), true));
            int from = Math.max(0, schedule.dayOf(purchase.availableFrom()));
            for (int day = from; day < days; day++) {
                for (Map.Entry<String, Integer> covered : purchase.covers().entrySet()) {
                    if (needs.count(covered.getKey(), day) > 0) {
                        term("slot " + covered.getKey() + " " + day, column, covered.getValue());
                    }
                }
            }
            term("cash", column, PlainNetCost.outlay(purchase.terms()).minor().longValueExact());
        }
    }

    private void term(String row, int column, long factor) {
        terms.computeIfAbsent(row, name -> new ArrayList<>()).add(new Term(column, factor));
    }

    // --- rows

    private void addRows() {
        for (int day = 0; day < days; day++) {
            for (String slot : needs.slots()) {
                long missing = (long) needs.count(slot, day) - owned(slot, day);
                if (missing > 0) {
                    addRow(new Row(taken("slot " + slot + " " + day), Optional.of(missing), Optional.empty()));
                }
            }
            for (Question.Rental rental : question.rentals()) {
                addRow(new Row(taken(balance(rental, day)), Optional.of(0L), Optional.of(0L)));
                addRow(new Row(taken("copies " + rental.id() + " " + day), Optional.empty(), Optional.of((long)
                        rental.copies())));
            }
            for (Map.Entry<String, Integer> stock : question.stock().entrySet()) {
                addRow(new Row(taken("stock " + stock.getKey() + " " + day), Optional.empty(), Optional.of((long)
                        stock.getValue())));
            }
        }
        if (question.cashLimit().isPresent()) {
            Money limit = question.cashLimit().get();
            addRow(new Row(
                    taken("cash"), Optional.empty(), Optional.of(limit.minor().longValueExact())));
        }
    }

    private List<Term> taken(String row) {
        return terms.getOrDefault(row, List.of());
    }

    private void addRow(Row row) {
        boolean unmet = row.least().orElse(0L) > 0;
        if (unmet || !row.terms().isEmpty()) {
            rows.add(row);
        }
    }

    private int owned(String slot, int day) {
        LocalDate date = schedule.dateOf(day);
        return question.owned().stream()
                .filter(unit -> PlainNeeds.open(unit.available(), date))
                .mapToInt(unit -> unit.covers().getOrDefault(slot, 0))
                .sum();
    }

    // --- prices, for every last day of a first day at once

    /** The price of the period from a day to each last day; checked against plain pricing in PeriodModelTest. */
    long[] pricesFrom(Question.Rental rental, int first) {
        RentalTerms terms = rental.terms();
        int horizon = days + 401;
        long[] reach = new long[horizon];
        Arrays.fill(reach, NO_PRICE);
        reach[first] = 0;
        long[] hire = new long[days];
        Arrays.fill(hire, NO_PRICE);
        for (int day = first; day < days; day++) {
            if (reach[day] >= NO_PRICE) {
                continue;
            }
            for (RentalTerms.Block block : terms.blocks()) {
                if (block.startsOn().isEmpty() || block.startsOn().get() == schedule.weekdayOf(day)) {
                    long price = minor(block.price());
                    lay(reach, hire, day, block.days(), block.days() == 1 ? factored(terms, price, day) : price);
                }
            }
            if (terms.extraDay().isPresent()
                    && day - first >= terms.extraDay().get().afterDays()) {
                lay(
                        reach,
                        hire,
                        day,
                        1,
                        factored(terms, minor(terms.extraDay().get().price()), day));
            }
        }
        long[] prices = new long[days];
        Arrays.fill(prices, NO_PRICE);
        int lastOpen = lastOpenDay(rental.available(), first);
        for (int last = first; last <= lastOpen; last++) {
            if (hire[last] < NO_PRICE) {
                prices[last] = charged(terms, hire[last], last - first + 1);
            }
        }
        return prices;
    }

    /** A block laid on a day ends the hire of every period that it reaches, and begins the next block's day. */
    private void lay(long[] reach, long[] hire, int day, int blockDays, long price) {
        long cost = reach[day] + price;
        int next = day + blockDays;
        reach[next] = Math.min(reach[next], cost);
        for (int last = day; last < Math.min(days, next); last++) {
            hire[last] = Math.min(hire[last], cost);
        }
    }

    /** The last day of the window that a period from a day lies in; windows do not overlap, so there is one at most. */
    private int lastOpenDay(List<DateRange> windows, int first) {
        LocalDate date = schedule.dateOf(first);
        if (windows.isEmpty()) {
            return days - 1;
        }
        return windows.stream()
                .filter(window -> window.contains(date))
                .mapToInt(window -> Math.min(days - 1, schedule.dayOf(window.lastDay())))
                .findFirst()
                .orElse(first - 1);
    }

    private long factored(RentalTerms terms, long price, int day) {
        BigDecimal factor = terms.dayFactors().getOrDefault(schedule.useOn(day), BigDecimal.ONE);
        return BigDecimal.valueOf(price)
                .multiply(factor)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static long charged(RentalTerms terms, long hire, int length) {
        long discount = terms.longHire().stream()
                .filter(entry -> entry.fromDays() <= length)
                .max(Comparator.comparingInt(RentalTerms.LongHire::fromDays))
                .map(entry -> part(hire, entry.percent().value()))
                .orElse(0L);
        Map<String, Long> amounts = new LinkedHashMap<>();
        amounts.put(RentalTerms.AddOn.HIRE, Math.max(hire - discount, minor(terms.minimumCharge())));
        amounts.put(RentalTerms.AddOn.TRIP, minor(terms.perTrip()));
        for (RentalTerms.AddOn addOn : terms.addOns()) {
            long base = 0;
            for (String name : addOn.on()) {
                base += amounts.getOrDefault(name, 0L);
            }
            amounts.put(addOn.name(), part(base, addOn.percent().value()));
        }
        return amounts.values().stream().mapToLong(Long::longValue).sum();
    }

    private static long part(long amount, BigDecimal percent) {
        return BigDecimal.valueOf(amount)
                .multiply(percent)
                .movePointLeft(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static long minor(Money money) {
        return money.minor().longValueExact();
    }
}
