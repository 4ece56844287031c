package dayglass.cost.rental;

import java.util.Arrays;

/**
 * The totals of all periods that begin on one weekday, by length, where no price depends on anything else. Totals are
 * worked out when they are asked for.
 */
final class WeekdayRow {
    private static final long UNKNOWN = -1;

    private final HireCharges charges;
    private final long[] hire;
    private final double[] atLeast;
    private final long[] total;

    /** Lays the blocks from day {@code first} to {@code last}, which no period of the weekday passes in length. */
    WeekdayRow(BlockRow blocks, HireCharges charges, int first, int last) {
        this.charges = charges;
        int length = last - first + 1;
        hire = new long[length];
        blocks.lay(first, last, hire);
        atLeast = new double[length];
        for (int i = 0; i < length; i++) {
            atLeast[i] =
                    hire[i] >= PeriodCosts.NONE ? Double.POSITIVE_INFINITY : charges.atLeast((double) hire[i], i + 1);
        }
        total = new long[length];
        Arrays.fill(total, UNKNOWN);
    }

    /** The total of the period of {@code i} + 1 days. */
    long total(int i) {
        if (total[i] == UNKNOWN) {
            total[i] = hire[i] >= PeriodCosts.NONE ? PeriodCosts.NONE : charges.total(hire[i], charges.discount(i + 1));
        }
        return total[i];
    }

    /** As {@link PeriodCosts#totalsBelow}. */
    int totalsBelow(PeriodCosts.Limit limit, int first, int last, long[] into) {
        int end = last;
        while (end >= first
                && !(limit.allows(atLeast[end - first], end) && limit.allows((double) total(end - first), end))) {
            end--;
        }
        for (int day = first; day <= end; day++) {
            int i = day - first;
            into[i] = limit.allows(atLeast[i], day) ? total(i) : PeriodCosts.NONE;
        }
        return end;
    }
}
