package dayglass.cost.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.cost.plan.StopSignal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The published cases of JCGM 101:2008, 9.2, by the propagator: sums of four inputs. A million draws reach two decimals
 * of the coverage interval, 0.05 where one input is much wider.
 */
class PublishedPropagationTest {
    private static final int DRAWS = 1_000_000;

    private static Spread rectangular(double deviation) {
        return probability -> (2 * probability - 1) * deviation * Math.sqrt(3);
    }

    /** By halving the distribution function, which is integrated by its series. */
    private static Spread normal() {
        double[] table = new double[8_001];
        double density = 1 / Math.sqrt(2 * Math.PI);
        double[] place = new double[table.length];
        for (int at = 0; at < table.length; at++) {
            place[at] = (at - 4_000) / 500.0;
            if (at > 0) {
                double middle = (place[at] + place[at - 1]) / 2;
                double simpson = (Math.exp(-place[at - 1] * place[at - 1] / 2)
                                + 4 * Math.exp(-middle * middle / 2)
                                + Math.exp(-place[at] * place[at] / 2))
                        / 6;
                table[at] = table[at - 1] + density * simpson / 500;
            }
        }
        return probability -> {
            int found = Arrays.binarySearch(table, probability);
            int above = found >= 0 ? found : Math.max(1, Math.min(table.length - 1, -found - 1));
            double share = (probability - table[above - 1]) / (table[above] - table[above - 1]);
            return place[above - 1] + share * (place[above] - place[above - 1]);
        };
    }

    private static double[] sums(List<Spread> inputs) {
        return Arrays.stream(new MonteCarlo(inputs, 101)
                        .run(DRAWS, drawn -> new double[] {Arrays.stream(drawn).sum()}, StopSignal.NEVER, done -> {}))
                .mapToDouble(each -> each[0])
                .sorted()
                .toArray();
    }

    private static void holds(List<Spread> inputs, double deviation, double half, double tolerance) {
        double[] sums = sums(inputs);
        double mean = Arrays.stream(sums).sum() / DRAWS;
        double variance =
                Arrays.stream(sums).map(each -> (each - mean) * (each - mean)).sum() / (DRAWS - 1);
        assertEquals(deviation, Math.sqrt(variance), tolerance);
        assertEquals(-half, Findings.percentile(sums, 0.025), tolerance);
        assertEquals(half, Findings.percentile(sums, 0.975), tolerance);
    }

    @Test
    void fourNormals() {
        holds(Collections.nCopies(4, normal()), 2, 3.92, 0.02);
    }

    @Test
    void fourRectangulars() {
        holds(Collections.nCopies(4, rectangular(1)), 2, 3.879407, 0.02);
    }

    @Test
    void threeRectangularsAndAWideOne() {
        holds(List.of(rectangular(1), rectangular(1), rectangular(1), rectangular(10)), 10.1489, 17.015814, 0.05);
    }
}
