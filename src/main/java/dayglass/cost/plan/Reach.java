package dayglass.cost.plan;

import java.util.Arrays;

/** What follows, without any reckoning of costs, from what a node has settled. */
final class Reach {
    private final Cover cover;

    Reach(Cover cover) {
        this.cover = cover;
    }

    /**
     * Whether what is left open can still cover everything within the stock. What follows from that is settled in the
     * node: a copy without which a day stays short is held, one for which no stock is left is not.
     */
    boolean settle(Node node) {
        for (boolean changed = true; changed; ) {
            changed = false;
            int[][] spare = spare(node);
            for (int[] days : spare) {
                if (Arrays.stream(days).anyMatch(count -> count < 0)) {
                    return false;
                }
            }
            int[][] left = stockLeft(node);
            for (int[] days : left) {
                if (Arrays.stream(days).anyMatch(count -> count < 0)) {
                    return false;
                }
            }
            for (Node.Group group : node.groups) {
                changed |= group.copies == 1 && follow(group, spare, left);
            }
        }
        return true;
    }

    /** By how much the cover of each slot-day could be too large if all that is not idle were held. */
    private int[][] spare(Node node) {
        int[][] spare = new int[cover.demand.length][];
        for (int slot = 0; slot < spare.length; slot++) {
            spare[slot] = Arrays.stream(cover.demand[slot]).map(count -> -count).toArray();
        }
        for (Node.Group group : node.groups) {
            Cover.Hire hire = cover.hires[group.hire];
            for (int i = 0; i < hire.slots.length; i++) {
                for (int day = 0; day < cover.days; day++) {
                    if (group.state[day] != HoldPath.IDLE) {
                        spare[hire.slots[i]][day] += group.copies * hire.serves[i][day];
                    }
                }
            }
        }
        for (int b = 0; b < cover.buys.length; b++) {
            for (int i = 0; i < cover.buys[b].slots.length; i++) {
                for (int day = 0; day < cover.days; day++) {
                    spare[cover.buys[b].slots[i]][day] += node.most[b] * cover.buys[b].serves[i][day];
                }
            }
        }
        return spare;
    }

    private int[][] stockLeft(Node node) {
        int[][] left = new int[cover.stock.length][cover.days];
        for (int thing = 0; thing < left.length; thing++) {
            Arrays.fill(left[thing], cover.stock[thing]);
        }
        for (Node.Group group : node.groups) {
            Cover.Hire hire = cover.hires[group.hire];
            for (int i = 0; i < hire.draws.length; i++) {
                for (int day = 0; day < cover.days; day++) {
                    if (group.state[day] == HoldPath.HELD) {
                        left[hire.draws[i]][day] -= group.copies * hire.drawn[i];
                    }
                }
            }
        }
        return left;
    }

    private boolean follow(Node.Group group, int[][] spare, int[][] left) {
        Cover.Hire hire = cover.hires[group.hire];
        boolean changed = false;
        for (int day = 0; day < cover.days; day++) {
            if (group.state[day] != HoldPath.FREE) {
                continue;
            }
            for (int i = 0; i < hire.slots.length; i++) {
                if (hire.serves[i][day] > spare[hire.slots[i]][day]) {
                    group.state[day] = HoldPath.HELD;
                    changed = true;
                }
            }
            for (int i = 0; i < hire.draws.length && group.state[day] == HoldPath.FREE; i++) {
                if (hire.drawn[i] > left[hire.draws[i]][day]) {
                    group.state[day] = HoldPath.IDLE;
                    changed = true;
                }
            }
        }
        return changed;
    }
}
