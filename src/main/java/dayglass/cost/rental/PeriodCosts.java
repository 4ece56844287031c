package dayglass.cost.rental;

import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.cost.rental.RentalTerms.Block;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The totals of all rental periods of one offer in {@code long} minor units, fast enough for a search to ask for every
 * one of them. The same arithmetic as {@link PeriodPricing}, to the minor unit, for amounts that {@link #fit} says are
 * small enough. Not safe for use by two threads at once.
 */
public final class PeriodCosts {
    /** A period that cannot be charged. Adding a few of these does not overflow. */
    public static final long NONE = Long.MAX_VALUE / 8;

    /** Totals up to this leave room for every intermediate product and sum of a search. */
    private static final double MOST = 1L << 43;

    private static final int WEEK = 7;

    private final int days;
    private final BlockRow blocks;
    private final HireCharges charges;

    /** By the first day's number modulo {@link #alike}, where prices depend on the weekday at most. */
    private final Optional<@Nullable WeekdayRow[]> byWeekday;

    /** One row does for all first days, or seven. */
    private final int alike;

    private final Optional<KnownRow> known;

    public PeriodCosts(RentalTerms terms, Schedule schedule) {
        days = schedule.days();
        blocks = new BlockRow(terms, schedule);
        charges = new HireCharges(terms, days);
        alike = blocks.daysAlike() ? 1 : WEEK;
        byWeekday = blocks.weeksAlike() ? Optional.of(new WeekdayRow[WEEK]) : Optional.empty();
        known = byWeekday.isPresent() ? Optional.empty() : Optional.of(new KnownRow(charges, days));
    }

    /** Whether every total of these terms on so many days is small enough for this class; never too hopeful. */
    public static boolean fit(RentalTerms terms, int days) {
        double price = terms.extraDay().isPresent()
                ? terms.extraDay().get().price().minor().doubleValue()
                : 0;
        for (Block block : terms.blocks()) {
            price = Math.max(price, block.price().minor().doubleValue());
        }
        double factor = 1;
        for (BigDecimal each : terms.dayFactors().values()) {
            factor = Math.max(factor, each.doubleValue());
        }
        double sum = Math.max(
                        (price * factor + 1) * days,
                        terms.minimumCharge().minor().doubleValue())
                + terms.perTrip().minor().doubleValue();
        for (AddOn addOn : terms.addOns()) {
            // At most a percentage of all that came before, and a minor unit for the rounding.
            sum += sum * addOn.percent().value().doubleValue() / 100 + 1;
        }
        return sum < MOST;
    }

    /** Whether a period that ends earlier never costs more, all else equal: so it is without long-hire discounts. */
    public boolean growsWithLength() {
        return !charges.discountsLongHire();
    }

    /** What a way to cover everything up to a day costs without the period in question: only a cheaper one is of use. */
    public static final class Limit {
        /** By day; it does not fall from day to day. */
        public final double[] byDay;

        /** What a way has cost when the period begins. */
        public long sofar;

        public Limit(int days) {
            byDay = new double[days];
        }

        boolean allows(double total, int day) {
            return total + sofar <= byDay[day] - 1;
        }
    }

    /**
     * Writes the totals of the periods from {@code first} to each day up to {@code last}: {@code into[i]} for the
     * period of i + 1 days, {@link #NONE} where no blocks can be laid.
     */
    public void totalsFrom(int first, int last, long[] into) {
        if (byWeekday.isPresent()) {
            WeekdayRow row = row(first, byWeekday.get());
            for (int i = last - first; i >= 0; i--) {
                into[i] = row.total(i);
            }
            return;
        }
        blocks.lay(first, last, into);
        for (int i = last - first; i >= 0; i--) {
            into[i] = into[i] < NONE ? charges.total(into[i], charges.discount(i + 1)) : NONE;
        }
    }

    /**
     * The same for the periods below a limit; others may be left out as {@link #NONE}. Most periods are of no use to a
     * search that knows better ones, and an estimate tells without the exact blocks and roundings.
     *
     * @return the last day to which totals were written; less than {@code first} where none is of use
     */
    public int totalsBelow(Limit limit, int first, int last, long[] into) {
        if (byWeekday.isPresent()) {
            return row(first, byWeekday.get()).totalsBelow(limit, first, last, into);
        }
        KnownRow earlier = known.orElseThrow();
        int end = earlier.lastUseful(limit, first, last);
        if (end < first) {
            return end;
        }
        blocks.lay(first, end, into);
        earlier.take(blocks, first, end, into);
        for (int day = first; day <= end; day++) {
            int i = day - first;
            boolean allowed = into[i] < NONE && limit.allows(charges.atLeast((double) into[i], i + 1), day);
            into[i] = allowed ? charges.total(into[i], charges.discount(i + 1)) : NONE;
        }
        return end;
    }

    /** By day; no period costs less than the sum over its days. Not negative. */
    public double[] leastByDay() {
        double[] least = new double[days];
        double hire = -1;
        for (int day = 0; day < days; day++) {
            double here = blocks.leastOn(day);
            least[day] = day > 0 && here == hire ? least[day - 1] : charges.leastADay(here);
            hire = here;
        }
        return least;
    }

    private WeekdayRow row(int first, @Nullable WeekdayRow[] rows) {
        int place = first % alike;
        WeekdayRow row = rows[place];
        if (row == null) {
            row = new WeekdayRow(blocks, charges, place, days - 1);
            rows[place] = row;
        }
        return row;
    }
}
