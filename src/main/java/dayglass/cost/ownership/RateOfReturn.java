package dayglass.cost.ownership;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The rates a period at which flows at equal distances are worth nothing today. There may be none or several.
 *
 * <p>By the rule of signs (Descartes) there are at most as many as the flows change sign; {@link #all} says that so many
 * were found.
 *
 * @param perPeriod ascending, above -1, each good to {@link #STEP}: the value changes sign between it and a step on
 * @param all no others exist; where it is false more may
 */
public record RateOfReturn(List<BigDecimal> perPeriod, boolean all) {
    /** How finely a rate is told. */
    public static final BigDecimal STEP = new BigDecimal("0.0000000000001");

    private static final MathContext PRECISE = new MathContext(50, RoundingMode.HALF_EVEN);

    /** Rates are looked for where one unit a period on is worth between e^-7 and e^7 of one today. */
    private static final double WIDEST = 7;

    private static final int STEPS = 14_000;

    public RateOfReturn {
        perPeriod = List.copyOf(perPeriod);
    }

    public static RateOfReturn of(List<BigDecimal> flows) {
        double[] rough = flows.stream().mapToDouble(BigDecimal::doubleValue).toArray();
        List<BigDecimal> found = new ArrayList<>();
        double before = 0;
        for (int step = 0; step <= STEPS; step++) {
            double place = WIDEST - 2 * WIDEST * step / STEPS;
            double here = Math.signum(roughValue(rough, place));
            if (step > 0 && here != before) {
                found.add(root(flows, rate(place + 2 * WIDEST / STEPS), rate(place)));
            }
            before = here;
        }
        List<BigDecimal> distinct = found.stream().distinct().sorted().toList();
        return new RateOfReturn(distinct, distinct.size() == signChanges(flows));
    }

    /** The rates of months as they compound in a year, in per cent, rounded half up. */
    public List<BigDecimal> percentPerYear(int decimals) {
        return perPeriod.stream()
                .map(rate -> BigDecimal.ONE
                        .add(rate)
                        .pow(Growth.YEAR)
                        .subtract(BigDecimal.ONE)
                        .movePointRight(2)
                        .setScale(decimals, RoundingMode.HALF_UP))
                .toList();
    }

    /** What flows are worth in the first period, the first undiscounted. */
    public static BigDecimal netPresentValue(BigDecimal ratePerPeriod, List<BigDecimal> flows) {
        BigDecimal factor = BigDecimal.ONE.divide(BigDecimal.ONE.add(ratePerPeriod), PRECISE);
        BigDecimal value = BigDecimal.ZERO;
        for (int at = flows.size() - 1; at >= 0; at--) {
            value = value.multiply(factor, PRECISE).add(flows.get(at), PRECISE);
        }
        return value;
    }

    private static BigDecimal rate(double place) {
        return BigDecimal.valueOf(Math.exp(-place) - 1);
    }

    /** The sign of the value where one unit a period on is worth e^place; from the end that keeps numbers small. */
    private static double roughValue(double[] flows, double place) {
        double factor = Math.exp(-Math.abs(place));
        double value = 0;
        for (int at = 0; at < flows.length; at++) {
            value = value * factor + flows[place > 0 ? at : flows.length - 1 - at];
        }
        return value;
    }

    private static BigDecimal root(List<BigDecimal> flows, BigDecimal from, BigDecimal to) {
        BigDecimal low = from;
        BigDecimal high = to;
        int signLow = netPresentValue(low, flows).signum();
        while (high.subtract(low).compareTo(STEP) > 0) {
            BigDecimal middle = low.add(high).divide(BigDecimal.valueOf(2), PRECISE);
            int sign = netPresentValue(middle, flows).signum();
            if (sign == 0) {
                return middle.stripTrailingZeros();
            }
            if (sign == signLow) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static int signChanges(List<BigDecimal> flows) {
        int changes = 0;
        int last = 0;
        for (BigDecimal flow : flows) {
            if (flow.signum() != 0) {
                changes += last != 0 && flow.signum() != last ? 1 : 0;
                last = flow.signum();
            }
        }
        return changes;
    }
}
