package dayglass.cost.plan;

/**
 * The value that steps of Polyak's length aim at. It begins at the cost that a plan is known to have, for a bound that
 * can meet it is then met in few steps; what is not approached within some steps is taken to be out of reach, and half
 * of the way to it becomes the aim.
 *
 * <p>Source: Goffin and Kiwiel, Convergence of a simple subgradient level method, Mathematical Programming 85 (1999).
 * From memory.
 */
final class Aim {
    private final long target;
    private final int patience;
    private double level;
    private double mark;
    private int steps;
    private int misses;

    /**
     * @param target a cost known to be reachable
     * @param patience so many steps may pass until half of the way to the aim is done
     * @param bound where the way begins
     */
    Aim(long target, int patience, long bound) {
        this.target = target;
        this.patience = patience;
        level = (double) target;
        mark = (double) bound;
    }

    double level() {
        return level;
    }

    /** How often, one after the other, the aim was out of reach. */
    int misses() {
        return misses;
    }

    /** Notes the bound after one more step; false where the aim was missed and now lies lower. */
    boolean reached(long bound) {
        if (bound - mark >= (level - mark) / 2) {
            level = Math.min((double) target, bound + 2 * (level - mark));
            mark = (double) bound;
            steps = 0;
            misses = 0;
        } else if (++steps >= patience) {
            level = bound + (level - bound) / 2;
            mark = (double) bound;
            steps = 0;
            misses++;
            return false;
        }
        return true;
    }
}
