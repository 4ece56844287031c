package dayglass.cost.rental;

/**
 * What one row of hires says about those from later first days, without laying their blocks. The hire of a period is at
 * least
 *
 * <ul>
 *   <li>the known hire to its last day less the known blocks that end right before its first day, for those and the
 *       period's own blocks are one way to cover both (and the extra day is counted from further back, which only allows
 *       more);
 *   <li>the potential of its first day less the greatest potential after its last ({@link BlockRow#potentials}).
 * </ul>
 */
final class KnownRow {
    private final HireCharges charges;
    private final double[] hire;
    private final double[] exactly;
    private final double[] potential;
    private final double[] greatestAfter;
    private int first = Integer.MAX_VALUE;
    private int last = -1;

    KnownRow(HireCharges charges, int days) {
        this.charges = charges;
        hire = new double[days];
        exactly = new double[days];
        potential = new double[days + 1];
        greatestAfter = new double[days];
    }

    /** Takes the row that the blocks were laid for last, where it reaches further than the one known so far. */
    void take(BlockRow blocks, int from, int to, long[] hires) {
        if (to <= last) {
            return;
        }
        first = from;
        last = to;
        for (int day = first; day <= last; day++) {
            hire[day] = hires[day - first];
            exactly[day] = blocks.exactly(day - first);
        }
        blocks.potentials(first, last, potential);
        double greatest = 0;
        for (int day = last; day >= first; day--) {
            greatest = Math.max(greatest, potential[day + 1]);
            greatestAfter[day] = greatest;
        }
    }

    /** The last day to which a period from {@code from} may be below the limit, less than {@code from} for none. */
    int lastUseful(PeriodCosts.Limit limit, int from, int to) {
        if (from < first || to > last) {
            return to;
        }
        double before = exactly[from];
        double ahead = potential[from];
        for (int day = to; day >= from; day--) {
            double behind = hire[day] - before;
            double on = ahead - greatestAfter[day];
            double least = behind > on ? behind : on;
            if (limit.allows(charges.atLeast(least, day - from + 1), day)) {
                return day;
            }
        }
        return from - 1;
    }
}
