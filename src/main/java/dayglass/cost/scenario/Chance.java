package dayglass.cost.scenario;

/**
 * Numbers that look drawn by lot and follow from a seed: each draw and each input has its own, so that no order of work
 * changes any, and an input that is spread otherwise leaves those of the others as they are. The mixing is that of
 * SplitMix64 (Steele, Lea and Flood 2014).
 */
final class Chance {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double HALF_STEP = 0x1.0p-54;

    private final long seed;

    Chance(long seed) {
        this.seed = mix(seed + GOLDEN);
    }

    /** Evenly between 0 and 1, neither of which it reaches. */
    double of(int draw, int input) {
        long bits = mix(mix(seed + GOLDEN * (draw + 1L)) + GOLDEN * (input + 1L));
        return (bits >>> 11) * 0x1.0p-53 + HALF_STEP;
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
