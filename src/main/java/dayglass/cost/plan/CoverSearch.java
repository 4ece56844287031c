package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Found;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The least cost of a {@link Cover}, by branch and bound on the bounds of {@link Prices}: the open node of the lowest
 * bound is raised, mended into a plan, settled as far as its prices prove, and split on the day or purchase about which
 * the relaxation is least sure. It can be stopped and gone on with; what it knows is true at any time.
 */
final class CoverSearch {
    /** Patience of the root's first round, and of its last: a round that brings little is followed by one of twice. */
    private static final int FIRST_PATIENCE = 15;

    private static final int LAST_PATIENCE = 120;

    /** A round at the root has this many steps for each of its patience, and may miss its aim so often. */
    private static final int ROOT_ROUND = 10;

    private static final int ROOT_MISSES = 4;
    private static final Prices.Pace AT_NODE = new Prices.Pace(1_000, 30, 1);
    private static final int MOST_BUNDLES = 3;

    /** Making a plan takes as long as many valuations, so not every node is mended into one. */
    private static final int MENDED_EACH = 3;

    private final Cover cover;
    private final long unit;
    private final Prices prices;
    private final Repair repair;
    private final Reach reach;
    private final PriorityQueue<Node> open =
            new PriorityQueue<>(java.util.Comparator.comparingLong(node -> node.bound));
    private Optional<Found> best = Optional.empty();
    private final int[] fallback;
    private boolean impossible;

    /** What is known of the plans that use periods too many to be held in memory. */
    private long boundOfAll = Long.MIN_VALUE / 4;

    private long periodsSeen;
    private long expanded;
    private Optional<Node> root = Optional.empty();

    /** The node to go on with: likelier child of the last one, so that a plan is reached soon. */
    private Optional<Node> next = Optional.empty();

    /**
     * @param unit the step in which costs differ, so that a bound just above a cost less one step closes a node
     * @param fallback purchases with which a plan is known to exist
     */
    CoverSearch(Cover cover, long unit, int[] fallback) {
        this.cover = cover;
        this.unit = unit;
        this.fallback = fallback;
        prices = new Prices(cover);
        repair = new Repair(cover);
        reach = new Reach(cover);
    }

    /** The best plan so far. */
    Optional<Found> best() {
        return best;
    }

    /** No plan costs less than this. */
    long bound() {
        if (!cover.whole()) {
            return boundOfAll;
        }
        long known = best.map(Found::cost).orElse(HoldPath.NONE);
        known = open.isEmpty() ? known : Math.min(known, open.peek().bound);
        return next.isEmpty() ? known : Math.min(known, next.get().bound);
    }

    boolean done() {
        return open.isEmpty() && next.isEmpty();
    }

    /** Whether it was proved that there is no plan at all. */
    boolean impossible() {
        return cover.whole() && (impossible || (done() && best.isEmpty()));
    }

    /** How much work was done: periods looked at. */
    long work() {
        return prices.steps * periodsSeen;
    }

    /** Bounds the whole problem and makes a first plan. */
    void begin(StopSignal stop) {
        size();
        Node top = Node.root(cover, firstPrices());
        offer(repair.plan(top.prices, new double[cover.hires.length][cover.days], fallback, patience(stop)));
        top = raiseRoot(top, stop);
        boundAll(top.prices, stop);
        if (top.bound > goal()) {
            impossible = best.isEmpty() && top.bound >= HoldPath.NONE / 2;
            return;
        }
        mend(top.prices, top, stop);
        double[][] likely = prices.likely(top);
        for (int[] bundle : prices.bundles(MOST_BUNDLES)) {
            offer(repair.plan(top.prices, likely, bundle, patience(stop)));
        }
        if (top.bound <= goal()) {
            root = Optional.of(top);
            open.add(top);
            forget();
        }
    }

    /** Raises the root's bound round after round; after each a plan is made of its prices and what they prove is used. */
    private Node raiseRoot(Node first, StopSignal stop) {
        Node top = first;
        int patience = FIRST_PATIENCE;
        for (int round = 0; patience <= LAST_PATIENCE && (round == 0 || !stop.stopped()); round++) {
            Prices.Pace pace = new Prices.Pace(patience * ROOT_ROUND, patience, ROOT_MISSES);
            Raised raised = prices.raise(top, pace, target(top.bound), goal(), stop::stopped);
            offer(raised.plan());
            long gained = raised.bound() - top.bound;
            top = top.priced(raised.prices(), raised.bound());
            if (round == 0) {
                boundAll(top.prices, stop);
            }
            if (top.bound <= goal()) {
                mend(top.prices, top, stop);
            }
            if (top.bound > goal()) {
                break;
            }
            if (best.isPresent()) {
                prices.forget(top, top.prices, goal() - top.bound);
            }
            patience = round > 0 && gained <= (goal() - top.bound) / 4 ? 2 * patience : patience;
        }
        return top;
    }

    private void boundAll(double[] at, StopSignal stop) {
        if (!cover.whole()) {
            prices.valueOfAll(Node.root(cover, at), at, stop)
                    .ifPresent(value -> boundOfAll = Math.max(boundOfAll, value));
        }
    }

    /** Goes on until the plan is proved, the signal comes or so much more work is done. */
    void run(StopSignal stop, long mostWork) {
        long until = mostWork == Long.MAX_VALUE ? mostWork : work() + mostWork;
        while (!done() && !stop.stopped() && work() < until) {
            Node node = next.orElseGet(open::poll);
            next = Optional.empty();
            if (node.bound > goal()) {
                open.removeIf(other -> other.bound > goal());
                continue;
            }
            long before = goal();
            expand(node, stop);
            if (goal() < before) {
                forget();
            }
        }
    }

    /** Drops the periods that only plans dearer than the best one use. */
    private void forget() {
        root.ifPresent(top -> prices.forget(top, top.prices, goal() - top.bound));
        size();
    }

    private void expand(Node parent, StopSignal stop) {
        Node node = parent.priced(parent.prices, parent.bound);
        if (!reach.settle(node)) {
            return;
        }
        Raised raised = prices.raise(node, AT_NODE, target(parent.bound), goal(), stop::stopped);
        long bound = Math.max(raised.bound(), parent.bound);
        offer(raised.plan());
        if (++expanded % MENDED_EACH == 1) {
            mend(raised.prices(), node, stop);
        }
        if (bound > goal()) {
            return;
        }
        node = node.priced(raised.prices(), bound);
        if (prices.settle(node, raised.prices(), goal() - raised.bound()) && !reach.settle(node)) {
            return;
        }
        split(node);
    }

    /** A cost that a plan worth finding does not pass. */
    private long goal() {
        return best.map(found -> found.cost() - unit).orElse(HoldPath.NONE / 4);
    }

    private long target(long bound) {
        return best.map(Found::cost).orElse(Math.max(bound, 0) * 2 + unit * 1_000);
    }

    /** The first plan is made whatever the signal says. */
    private StopSignal patience(StopSignal stop) {
        return best.isPresent() ? stop : StopSignal.NEVER;
    }

    private void mend(double[] at, Node node, StopSignal stop) {
        prices.value(node, at);
        double[][] likely = prices.likely(node);
        Optional<Found> plan = repair.plan(at, likely, prices.bought(), patience(stop));
        offer(plan.isPresent() ? plan : repair.plan(at, likely, fallback, patience(stop)));
    }

    /** Takes note of a plan. */
    void offer(Optional<Found> plan) {
        if (plan.isPresent()
                && (best.isEmpty() || plan.get().cost() < best.get().cost())) {
            best = plan;
        }
    }

    private void size() {
        periodsSeen = Arrays.stream(cover.hires)
                .mapToLong(hire -> hire.periods.size() + cover.days)
                .sum();
    }

    /** To begin with, a slot-day costs what its cheapest offer charges a day over its cheapest long period. */
    private double[] firstPrices() {
        double[] first = new double[prices.rows()];
        for (Cover.Hire hire : cover.hires) {
            double aDay = Double.MAX_VALUE;
            Periods all = hire.periods;
            for (int day = 0; day < cover.days; day++) {
                for (int at = all.from[day]; at < all.from[day + 1]; at++) {
                    aDay = Math.min(aDay, (double) all.cost[at] / (all.last[at] - day + 1));
                }
            }
            for (int i = 0; aDay < Double.MAX_VALUE && i < hire.slots.length; i++) {
                for (int day = 0; day < cover.days; day++) {
                    int row = hire.slots[i] * cover.days + day;
                    double price = aDay / hire.slots.length;
                    if (hire.serves[i][day] > 0 && (first[row] == 0 || price < first[row])) {
                        first[row] = price;
                    }
                }
            }
        }
        return first;
    }

    private void split(Node node) {
        List<Node> children = new ArrayList<>();
        int buy = unsurePurchase(node);
        if (buy >= 0) {
            int low = Math.min(node.most[buy] - 1, Math.max(node.least[buy], (int) Math.floor(prices.made[buy])));
            children.add(node.branchPurchase(buy, low + 1, node.most[buy]));
            children.add(node.branchPurchase(buy, node.least[buy], low));
            if (prices.made[buy] - low < 0.5) {
                Collections.reverse(children);
            }
        } else {
            splitDay(node, children);
        }
        if (children.isEmpty()) {
            close(node);
        } else {
            next = Optional.of(children.get(0));
            open.addAll(children.subList(1, children.size()));
        }
    }

    private int unsurePurchase(Node node) {
        int unsure = -1;
        double most = 0.03;
        for (int b = 0; b < cover.buys.length; b++) {
            double part = prices.made[b] - Math.floor(prices.made[b]);
            double doubt = Math.min(part, 1 - part);
            if (node.least[b] < node.most[b] && doubt > most) {
                most = doubt;
                unsure = b;
            }
        }
        return unsure;
    }

    private void splitDay(Node node, List<Node> children) {
        int group = -1;
        int unsure = -1;
        double most = -1;
        for (int g = 0; g < node.groups.length; g++) {
            Node.Group candidate = node.groups[g];
            for (int day = 0; day < cover.days; day++) {
                if (candidate.state[day] == HoldPath.FREE) {
                    double part = prices.held[g][day];
                    double doubt = Math.min(part, 1 - part);
                    if (doubt > most) {
                        most = doubt;
                        group = g;
                        unsure = day;
                    }
                }
            }
        }
        if (group >= 0) {
            int copies = node.groups[group].copies;
            int held = Math.min(copies, Math.max(1, (int) Math.ceil(prices.held[group][unsure] * copies)));
            children.add(node.branch(group, unsure, held, HoldPath.HELD));
            children.add(node.branch(group, unsure, copies - held + 1, HoldPath.IDLE));
            if (prices.held[group][unsure] * copies < held - 0.5) {
                Collections.reverse(children);
            }
            return;
        }
        for (int b = 0; b < cover.buys.length && children.isEmpty(); b++) {
            if (node.least[b] < node.most[b]) {
                children.add(node.branchPurchase(b, node.least[b] + 1, node.most[b]));
                children.add(node.branchPurchase(b, node.least[b], node.least[b]));
            }
        }
    }

    /** All days and purchases are settled: without prices the bound is the cost of the one plan left. */
    private void close(Node node) {
        double[] nothing = new double[prices.rows()];
        long cost = prices.value(node, nothing);
        if (cost < HoldPath.NONE && cost <= goal()) {
            offer(exact(node, cost));
        }
    }

    private Optional<Found> exact(Node node, long cost) {
        List<Cover.Held> held = new ArrayList<>();
        HoldPath path = new HoldPath(cover.days);
        int[][] drawn = new int[cover.stock.length][cover.days];
        for (Node.Group group : node.groups) {
            Cover.Hire hire = cover.hires[group.hire];
            path.solve(hire.periods, group.state, new long[cover.days]);
            for (int copy = 0; copy < group.copies; copy++) {
                path.visit((first, last) -> {
                    held.add(new Cover.Held(group.hire, first, last));
                    for (int i = 0; i < hire.draws.length; i++) {
                        for (int day = first; day <= last; day++) {
                            drawn[hire.draws[i]][day] += hire.drawn[i];
                        }
                    }
                });
            }
        }
        for (int thing = 0; thing < drawn.length; thing++) {
            for (int used : drawn[thing]) {
                if (used > cover.stock[thing]) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(new Found(held, Arrays.stream(node.least).boxed().toList(), cost));
    }
}
