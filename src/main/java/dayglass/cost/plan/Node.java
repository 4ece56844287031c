package dayglass.cost.plan;

import java.util.Arrays;

/**
 * A part of the search's tree: what has been settled about days held and purchases made, with a bound on what any plan
 * that keeps to it costs.
 */
final class Node {
    /** Copies of one offer that are bound to the same days; copies of an offer are alike until they are told apart. */
    static final class Group {
        final int hire;
        final int copies;
        final byte[] state;

        Group(int hire, int copies, byte[] state) {
            this.hire = hire;
            this.copies = copies;
            this.state = state;
        }

        Group with(int copiesNow, int day, byte settled) {
            byte[] changed = state.clone();
            changed[day] = settled;
            return new Group(hire, copiesNow, changed);
        }

        Group copy() {
            return new Group(hire, copies, state.clone());
        }
    }

    final Group[] groups;
    final int[] least;
    final int[] most;

    /** Prices to start from: the parent's best. */
    final double[] prices;

    final long bound;

    Node(Group[] groups, int[] least, int[] most, double[] prices, long bound) {
        this.groups = groups;
        this.least = least;
        this.most = most;
        this.prices = prices;
        this.bound = bound;
    }

    static Node root(Cover cover, double[] prices) {
        Group[] groups = new Group[cover.hires.length];
        for (int i = 0; i < groups.length; i++) {
            groups[i] = new Group(i, cover.hires[i].copies, new byte[cover.days]);
        }
        int[] most = Arrays.stream(cover.buys).mapToInt(buy -> buy.copies).toArray();
        return new Node(groups, new int[most.length], most, prices, Long.MIN_VALUE / 4);
    }

    /** The same with prices and bound as they came out; its groups are its own. */
    Node priced(double[] newPrices, long newBound) {
        Group[] own = Arrays.stream(groups).map(Group::copy).toArray(Group[]::new);
        return new Node(own, least.clone(), most.clone(), newPrices, newBound);
    }

    /** At least {@code held} copies of the group hold the day ({@code settled} HELD), or that many leave it idle. */
    Node branch(int group, int day, int copies, byte settled) {
        Group parent = groups[group];
        int rest = parent.copies - copies;
        Group[] changed = Arrays.copyOf(groups, rest > 0 ? groups.length + 1 : groups.length);
        changed[group] = parent.with(copies, day, settled);
        if (rest > 0) {
            changed[groups.length] = new Group(parent.hire, rest, parent.state.clone());
        }
        return new Node(changed, least.clone(), most.clone(), prices, bound);
    }

    Node branchPurchase(int buy, int newLeast, int newMost) {
        int[] lows = least.clone();
        int[] highs = most.clone();
        lows[buy] = newLeast;
        highs[buy] = newMost;
        return new Node(groups, lows, highs, prices, bound);
    }
}
