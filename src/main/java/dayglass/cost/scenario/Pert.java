package dayglass.cost.scenario;

/**
 * The distribution of PERT: a beta distribution between {@code low} and {@code high} whose mean is (low + 4 mode +
 * high) / 6. Quantiles between 0.01 and 0.99 are read from a table of {@value #CELLS} cells with straight lines between;
 * beyond, they are solved each time.
 */
final class Pert implements Spread {
    private static final int CELLS = 4_096;
    private static final double TAIL = 0.01;
    private static final int MOST_STEPS = 200;
    private static final double STIRLING_FROM = 16;
    private static final double GOOD_ENOUGH = 1e-15;
    private final double low;
    private final double width;
    private final double alpha;
    private final double beta;
    private final double logScale;
    private final double[] table = new double[CELLS + 1];

    private Pert(double low, double mode, double high) {
        this.low = low;
        this.width = high - low;
        this.alpha = 1 + 4 * (mode - low) / width;
        this.beta = 1 + 4 * (high - mode) / width;
        this.logScale = logGamma(alpha + beta) - logGamma(alpha) - logGamma(beta);
        for (int cell = 1; cell < CELLS; cell++) {
            table[cell] = solve((double) cell / CELLS, table[cell - 1]);
        }
        table[CELLS] = 1;
    }

    static Spread of(double low, double mode, double high) {
        return low == high ? Spread.fixed(low) : new Pert(low, mode, high);
    }

    @Override
    public double at(double probability) {
        return low + width * share(probability);
    }

    private double share(double probability) {
        if (probability < TAIL || probability > 1 - TAIL) {
            return solve(probability, 0);
        }
        double place = probability * CELLS;
        int cell = (int) place;
        return table[cell] + (place - cell) * (table[cell + 1] - table[cell]);
    }

    /** By halving; {@code from} lies below the solution. */
    private double solve(double probability, double from) {
        double below = from;
        double above = 1;
        while (above - below > GOOD_ENOUGH) {
            double middle = (below + above) / 2;
            if (middle <= below || middle >= above) {
                break;
            }
            if (cumulative(middle) < probability) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }

    /** The regularised incomplete beta function, by its continued fraction on the side where it converges fast. */
    private double cumulative(double x) {
        double front = Math.exp(logScale + alpha * Math.log(x) + beta * Math.log1p(-x));
        return x < (alpha + 1) / (alpha + beta + 2)
                ? front * fraction(x, alpha, beta) / alpha
                : 1 - front * fraction(1 - x, beta, alpha) / beta;
    }

    private static double fraction(double x, double a, double b) {
        double c = 1;
        double d = 1 / (1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m <= MOST_STEPS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / (1 + even * d);
            c = 1 + even / c;
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / (1 + odd * d);
            c = 1 + odd / c;
            value *= d * c;
            if (Math.abs(d * c - 1) < GOOD_ENOUGH) {
                break;
            }
        }
        return value;
    }

    /** By Stirling's series from 16 up, to which a smaller argument is raised by the recurrence. */
    private static double logGamma(double x) {
        double raised = x;
        double product = 1;
        while (raised < STIRLING_FROM) {
            product *= raised++;
        }
        double square = 1 / (raised * raised);
        double series = (1.0 / 12 - square * (1.0 / 360 - square * (1.0 / 1_260 - square / 1_680))) / raised;
        return (raised - 0.5) * Math.log(raised) - raised + 0.5 * Math.log(2 * Math.PI) + series - Math.log(product);
    }
}
