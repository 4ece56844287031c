package dayglass.cost.scenario;

import java.util.Arrays;
import java.util.List;

/** How an uncertain number is spread: its quantiles. A double, since it says how likely something is. */
@FunctionalInterface
public interface Spread {
    /** The value that is not passed with so much probability, above 0 and below 1. */
    double at(double probability);

    /** Always the same. */
    static Spread fixed(double value) {
        return probability -> value;
    }

    /** Rises in a straight line from {@code low} to the most likely value and falls to {@code high}. */
    static Spread triangular(double low, double mode, double high) {
        if (low == high) {
            return fixed(low);
        }
        double share = (mode - low) / (high - low);
        return probability -> probability < share
                ? low + Math.sqrt(probability * (high - low) * (mode - low))
                : high - Math.sqrt((1 - probability) * (high - low) * (high - mode));
    }

    /** The distribution of PERT between {@code low} and {@code high}. */
    static Spread pert(double low, double mode, double high) {
        return Pert.of(low, mode, high);
    }

    /** Each of the values equally likely, one given twice twice as likely. */
    static Spread empirical(List<Double> values) {
        double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return probability -> sorted[(int) Math.min(sorted.length - 1L, (long) (probability * sorted.length))];
    }
}
