package dayglass.cost.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The bundles of purchases that paid at some prices: each is worth trying in a plan. */
final class Bundles {
    private static final int MOST_BUNDLES = 200;

    private final Set<List<Integer>> seen = new LinkedHashSet<>();

    void note(int[] counts) {
        if (counts.length > 0 && seen.size() < MOST_BUNDLES) {
            seen.add(Arrays.stream(counts).boxed().toList());
        }
    }

    /** Those of the greatest worth, if a copy of each purchase is worth so much. */
    List<int[]> best(int most, long[] worth) {
        return seen.stream()
                .sorted(Comparator.comparingLong(bundle -> -worth(bundle, worth)))
                .limit(most)
                .map(bundle -> bundle.stream().mapToInt(count -> count).toArray())
                .toList();
    }

    private static long worth(List<Integer> bundle, long[] worth) {
        long sum = 0;
        for (int b = 0; b < worth.length; b++) {
            sum += bundle.get(b) * worth[b];
        }
        return sum;
    }
}
