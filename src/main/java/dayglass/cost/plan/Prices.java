package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Found;
import dayglass.cost.plan.Cover.Held;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The Lagrangian relaxation of a covering problem: each slot-day gets a price, each offer holds itself when that pays,
 * and what the prices add up to is a bound that no plan can beat. Prices are whole numbers when a bound is taken from
 * them, so that the bound is exact. They are raised where cover is missing and lowered where there is too much
 * (subgradient steps of Polyak's length towards an {@link Aim}, deflected).
 *
 * <p>Source: Fisher, The Lagrangian Relaxation Method for Solving Integer Programming Problems, Management Science 27
 * (1981); Camerini, Fratta and Maffioli, On improving relaxation methods by modified gradient techniques (1975). From
 * memory.
 */
final class Prices {
    private static final double KEPT_OF_DIRECTION = 0.8;
    private static final double AVERAGE_STEP = 0.12;

    private final Cover cover;
    private final HoldPath path;
    private final PurchaseMix mix;
    private final int slotDays;
    private final int rows;

    /** Up to where each price may rise. */
    private final double[] highest;

    /** How many are needed, by row; a row of stock always counts. */
    private final int[] needed;

    private final long[] whole;
    private final long[][] reward;
    private final int[] surplus;
    private final double[] direction;
    private final long[] worth;

    /** How often, of late, each group held each day, and each purchase was made: 0 to 1, a hint where to branch. */
    double[][] held = new double[0][];

    double[] made;

    /** The paths of the last valuation, by group: which days are held. */
    boolean[][] holding = new boolean[0][];

    /** Valuations so far, a measure of work. */
    long steps;

    private final Bundles bundles = new Bundles();

    Prices(Cover cover) {
        this.cover = cover;
        path = new HoldPath(cover.days);
        mix = new PurchaseMix(cover.buys, cover.cash);
        slotDays = cover.demand.length * cover.days;
        rows = slotDays + cover.stock.length * cover.days;
        needed = new int[rows];
        Arrays.fill(needed, slotDays, rows, 1);
        for (int slot = 0; slot < cover.demand.length; slot++) {
            System.arraycopy(cover.demand[slot], 0, needed, slot * cover.days, cover.days);
        }
        highest = cover.highestPrices();
        whole = new long[rows];
        reward = new long[cover.hires.length][cover.days];
        surplus = new int[rows];
        direction = new double[rows];
        worth = new long[cover.buys.length];
        made = new double[cover.buys.length];
    }

    int rows() {
        return rows;
    }

    /**
     * How long a bound is raised.
     *
     * @param most valuations at most
     * @param patience of the {@link Aim}
     * @param misses after so many misses one after the other it is enough
     */
    record Pace(int most, int patience, int misses) {}

    /**
     * Raises the bound of a node.
     *
     * @param target a cost known to be reachable, towards which the steps are measured
     * @param enough a bound from which on the node needs no more work
     */
    Raised raise(Node node, Pace pace, long target, long enough, BooleanSupplier stop) {
        prepare(node);
        double[] prices = node.prices.clone();
        double[] best = prices.clone();
        long value = value(node, prices);
        long bound = value;
        average(true);
        Optional<Found> plan = better(node, value, Optional.empty());
        Aim aim = new Aim(target, pace.patience(), bound);
        Arrays.fill(direction, 0);
        for (int step = 1; step < pace.most() && bound < enough && !stop.getAsBoolean(); step++) {
            if (!move(prices, aim.level() - value)) {
                break;
            }
            value = value(node, prices);
            average(false);
            plan = better(node, value, plan);
            if (value > bound) {
                bound = value;
                System.arraycopy(prices, 0, best, 0, rows);
            }
            if (!aim.reached(bound)) {
                if (aim.misses() >= pace.misses()) {
                    break;
                }
                Arrays.fill(direction, 0);
                System.arraycopy(best, 0, prices, 0, rows);
                value = value(node, prices);
            }
        }
        return new Raised(best, bound, plan);
    }

    /** The offers' choices of the last valuation, where they are a plan by themselves and a cheaper one. */
    private Optional<Found> better(Node node, long value, Optional<Found> plan) {
        if (value >= HoldPath.NONE || !covered()) {
            return plan;
        }
        long cost = cost(value);
        return plan.isEmpty() || cost < plan.get().cost() ? Optional.of(plan(node, cost)) : plan;
    }

    /** The bound that these prices give, the paths behind it left in {@link #holding}. */
    long value(Node node, double[] prices) {
        steps++;
        long value = open(prices);
        for (int g = 0; g < node.groups.length; g++) {
            Node.Group group = node.groups[g];
            Cover.Hire hire = cover.hires[group.hire];
            long least = path.solve(hire.periods, group.state, reward[group.hire]);
            if (least >= HoldPath.NONE) {
                return HoldPath.NONE;
            }
            value += group.copies * least;
            boolean[] days = holding[g];
            Arrays.fill(days, false);
            path.visit((first, last) -> Arrays.fill(days, first, last + 1, true));
            serve(hire, group.copies, days);
        }
        return cover.buys.length == 0 ? value : value - purchases(node);
    }

    /** What the needs are worth at these prices, less the stock, as whole numbers; nothing is held yet. */
    private long open(double[] prices) {
        round(prices);
        long value = 0;
        for (int row = 0; row < slotDays; row++) {
            surplus[row] = -needed[row];
            value += whole[row] * needed[row];
        }
        for (int row = slotDays; row < rows; row++) {
            surplus[row] = cover.stock[(row - slotDays) / cover.days];
            value -= whole[row] * surplus[row];
        }
        rewards();
        return value;
    }

    /**
     * The bound that these prices give over all periods, those too that are not in memory.
     *
     * @return empty where the signal came first
     */
    Optional<Long> valueOfAll(Node root, double[] prices, StopSignal stop) {
        long value = open(prices);
        for (int h = 0; h < cover.hires.length; h++) {
            if (stop.stopped()) {
                return Optional.empty();
            }
            value += cover.hires[h].copies * path.least(cover.hires[h].all.orElseThrow(), reward[h]);
        }
        return Optional.of(cover.buys.length == 0 ? value : value - purchases(root));
    }

    /** Whether the offers' choices of the last valuation are a plan by themselves. */
    private boolean covered() {
        for (int row = 0; row < rows; row++) {
            if (surplus[row] < 0) {
                return false;
            }
        }
        return true;
    }

    /** What the choices of the last valuation cost: prices were paid for more than was needed. */
    private long cost(long value) {
        long cost = value;
        for (int row = 0; row < rows; row++) {
            cost += whole[row] * surplus[row];
        }
        return cost;
    }

    private Found plan(Node node, long cost) {
        List<Held> periods = new ArrayList<>();
        for (Node.Group group : node.groups) {
            path.solve(cover.hires[group.hire].periods, group.state, reward[group.hire]);
            for (int copy = 0; copy < group.copies; copy++) {
                path.visit((first, last) -> periods.add(new Held(group.hire, first, last)));
            }
        }
        return new Found(periods, Arrays.stream(mix.counts()).boxed().toList(), cost);
    }

    private void prepare(Node node) {
        if (holding.length < node.groups.length) {
            holding = new boolean[node.groups.length][cover.days];
            held = new double[node.groups.length][cover.days];
        }
    }

    /** Whole-number prices; a slot-day without need has none. */
    private void round(double[] prices) {
        for (int row = 0; row < rows; row++) {
            whole[row] = needed[row] > 0 ? (long) (prices[row] + 0.5) : 0;
        }
    }

    private void rewards() {
        for (int h = 0; h < cover.hires.length; h++) {
            Cover.Hire hire = cover.hires[h];
            long[] sum = reward[h];
            Arrays.fill(sum, 0);
            for (int i = 0; i < hire.slots.length; i++) {
                int at = hire.slots[i] * cover.days;
                int[] serves = hire.serves[i];
                for (int day = 0; day < cover.days; day++) {
                    sum[day] += whole[at + day] * serves[day];
                }
            }
            for (int i = 0; i < hire.draws.length; i++) {
                int at = slotDays + hire.draws[i] * cover.days;
                for (int day = 0; day < cover.days; day++) {
                    sum[day] -= whole[at + day] * hire.drawn[i];
                }
            }
        }
    }

    private void serve(Cover.Hire hire, int copies, boolean[] days) {
        for (int i = 0; i < hire.slots.length; i++) {
            int at = hire.slots[i] * cover.days;
            for (int day = 0; day < cover.days; day++) {
                if (days[day]) {
                    surplus[at + day] += copies * hire.serves[i][day];
                }
            }
        }
        for (int i = 0; i < hire.draws.length; i++) {
            int at = slotDays + hire.draws[i] * cover.days;
            for (int day = 0; day < cover.days; day++) {
                if (days[day]) {
                    surplus[at + day] -= copies * hire.drawn[i];
                }
            }
        }
    }

    private long purchases(Node node) {
        for (int b = 0; b < worth.length; b++) {
            Cover.Buy buy = cover.buys[b];
            long sum = -buy.cost;
            for (int i = 0; i < buy.slots.length; i++) {
                int at = buy.slots[i] * cover.days;
                for (int day = 0; day < cover.days; day++) {
                    sum += whole[at + day] * buy.serves[i][day];
                }
            }
            worth[b] = sum;
        }
        long gain = mix.choose(worth, node.least, node.most);
        if (gain == Long.MIN_VALUE) {
            return -HoldPath.NONE;
        }
        for (int b = 0; b < worth.length; b++) {
            int count = mix.counts()[b];
            for (int i = 0; count > 0 && i < cover.buys[b].slots.length; i++) {
                int at = cover.buys[b].slots[i] * cover.days;
                for (int day = 0; day < cover.days; day++) {
                    surplus[at + day] += count * cover.buys[b].serves[i][day];
                }
            }
        }
        return gain;
    }

    /** The purchases of the last valuation. */
    int[] bought() {
        return mix.counts();
    }

    private void average(boolean first) {
        double share = first ? 1 : AVERAGE_STEP;
        for (int g = 0; g < holding.length; g++) {
            for (int day = 0; day < cover.days; day++) {
                held[g][day] += share * ((holding[g][day] ? 1 : 0) - held[g][day]);
            }
        }
        for (int b = 0; b < made.length; b++) {
            made[b] += share * (mix.counts()[b] - made[b]);
        }
        bundles.note(mix.counts());
    }

    /** How large a part of its copies each offer held on each day of late, 0 to 1. */
    double[][] likely(Node node) {
        double[][] likely = new double[cover.hires.length][cover.days];
        for (int g = 0; g < node.groups.length; g++) {
            Node.Group group = node.groups[g];
            for (int day = 0; day < cover.days; day++) {
                likely[group.hire][day] += held[g][day] * group.copies / cover.hires[group.hire].copies;
            }
        }
        return likely;
    }

    /** The bundles of purchases that paid at some prices and are worth the most at those of the last valuation. */
    List<int[]> bundles(int most) {
        return bundles.best(most, worth);
    }

    /** One step; false where nothing pulls any more. */
    private boolean move(double[] prices, double aim) {
        double squares = 0;
        for (int row = 0; row < rows; row++) {
            double pull = -surplus[row];
            boolean atNought = pull < 0 && prices[row] <= 0;
            direction[row] = atNought || needed[row] == 0 ? 0 : pull + KEPT_OF_DIRECTION * direction[row];
            squares += direction[row] * direction[row];
        }
        if (squares < 1e-9) {
            return false;
        }
        double step = aim / squares;
        for (int row = 0; row < rows; row++) {
            prices[row] = Math.min(highest[row], Math.max(0, prices[row] + step * direction[row]));
        }
        return true;
    }

    /**
     * Settles what these prices prove: a day or purchase whose other setting would pass {@code limit} is fixed in the
     * node, in place.
     *
     * @param excess {@code limit} less the bound of the prices
     * @return whether anything was settled
     */
    boolean settle(Node node, double[] prices, long excess) {
        round(prices);
        rewards();
        boolean changed = false;
        long[] ifHeld = new long[cover.days];
        long[] ifIdle = new long[cover.days];
        for (Node.Group group : node.groups) {
            Periods periods = cover.hires[group.hire].periods;
            if (path.solve(periods, group.state, reward[group.hire]) >= HoldPath.NONE) {
                return changed;
            }
            path.regrets(periods, group.state, reward[group.hire], ifHeld, ifIdle);
            for (int day = 0; day < cover.days; day++) {
                if (group.state[day] == HoldPath.FREE && (ifHeld[day] > excess || ifIdle[day] > excess)) {
                    group.state[day] = ifHeld[day] > excess ? HoldPath.IDLE : HoldPath.HELD;
                    changed = true;
                }
            }
        }
        return changed;
    }

    /** Drops, for good, the periods that no plan below the limit can use; with the root's prices and bound alone. */
    void forget(Node root, double[] prices, long excess) {
        round(prices);
        rewards();
        long[] unused = new long[cover.days];
        for (Node.Group group : root.groups) {
            Cover.Hire hire = cover.hires[group.hire];
            if (path.solve(hire.periods, group.state, reward[group.hire]) < HoldPath.NONE) {
                path.regrets(hire.periods, group.state, reward[group.hire], unused, new long[cover.days]);
                Periods all = hire.periods;
                hire.periods = all.only((first, at) -> path.regret(all, first, at) <= excess);
            }
        }
    }
}
