package dayglass.cost.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Moments and percentiles of the distributions. */
class SpreadTest {
    private static final int SLICES = 200_000;

    private static double mean(Spread spread) {
        double sum = 0;
        for (int slice = 0; slice < SLICES; slice++) {
            sum += spread.at((slice + 0.5) / SLICES);
        }
        return sum / SLICES;
    }

    private static double deviation(Spread spread, double mean) {
        double sum = 0;
        for (int slice = 0; slice < SLICES; slice++) {
            sum += Math.pow(spread.at((slice + 0.5) / SLICES) - mean, 2);
        }
        return Math.sqrt(sum / SLICES);
    }

    /** By the formulas of the mean, the variance and the quantiles of a triangular distribution. */
    @ParameterizedTest
    @CsvSource({
        "5,   8,   14,  9,        1.870829,  8.803848,   6.643168,   11.676210",
        "4,   6,   12,  7.333333, 1.699673,  7.101021,   5.264911,   9.809110",
        "100, 150, 300, 183.3333, 42.491829, 177.525513, 131.622777, 245.227744",
    })
    void triangular(double low, double mode, double high, double mean, double sd, double p50, double p10, double p90) {
        Spread spread = Spread.triangular(low, mode, high);
        assertEquals(p10, spread.at(0.1), 1e-6);
        assertEquals(p50, spread.at(0.5), 1e-6);
        assertEquals(p90, spread.at(0.9), 1e-6);
        assertEquals(mean, mean(spread), 1e-4);
        assertEquals(sd, deviation(spread, mean), sd * 1e-4);
    }

    /** Mean (a + 4 c + b) / 6, variance (mean - a)(b - mean) / 7; percentiles of the beta distribution. */
    @ParameterizedTest
    @CsvSource({
        "5,   8,   14,  8.5,      1.658312,  8.382313,   6.377249,   10.800110",
        "4,   6,   12,  6.666667, 1.425393,  6.510481,   4.897880,   8.671123",
        "100, 150, 300, 166.6667, 35.634832, 162.762034, 122.446992, 216.778075",
    })
    void pert(double low, double mode, double high, double mean, double sd, double p50, double p10, double p90) {
        Spread spread = Pert.of(low, mode, high);
        double tolerance = 1e-6 * (high - low);
        assertEquals(p10, spread.at(0.1), tolerance);
        assertEquals(p50, spread.at(0.5), tolerance);
        assertEquals(p90, spread.at(0.9), tolerance);
        assertEquals(mean, mean(spread), 1e-4);
        assertEquals(sd, deviation(spread, mean), sd * 1e-4);
    }

    /** Where the most likely value is an end, the beta distribution with exponents 1 and 5 has a closed form. */
    @Test
    void pertAtAnEnd() {
        for (double probability : new double[] {1e-6, 0.001, 0.2, 0.5, 0.995}) {
            double expected = 1 - Math.pow(1 - probability, 0.2);
            assertEquals(expected, Pert.of(0, 0, 1).at(probability), 1e-6);
            assertEquals(1 - expected, Pert.of(0, 1, 1).at(1 - probability), 1e-6);
        }
    }

    @Test
    void empiricalValuesComeAsOftenAsTheyStandThere() {
        Spread spread = Spread.empirical(List.of(9.0, 3.0, 9.0, 1.0));
        assertEquals(
                List.of(1.0, 3.0, 9.0, 9.0), List.of(spread.at(0.2), spread.at(0.3), spread.at(0.6), spread.at(0.99)));
    }

    @Test
    void noWidthIsFixed() {
        assertEquals(7, Spread.triangular(7, 7, 7).at(0.3));
        assertEquals(7, Pert.of(7, 7, 7).at(0.3));
    }
}
