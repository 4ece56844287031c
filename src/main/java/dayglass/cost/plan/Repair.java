package dayglass.cost.plan;

import dayglass.cost.plan.Cover.Found;
import dayglass.cost.plan.Cover.Held;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Makes a plan out of prices: each copy in turn holds itself where that pays for what is still open, at prices that
 * rise until nothing is open; then each copy gives back what the others cover.
 */
final class Repair {
    private static final int MOST_ROUNDS = 50;
    private static final int MOST_SWEEPS = 6;
    /** The ways to go about it, by turns: none is the best for all questions. */
    private static final List<Temper> TEMPERS =
            List.of(new Temper(1.1, 0.85, 0.3), new Temper(1.1, 0.6, 0.6), new Temper(1.05, 0.6, 0.4));

    /**
     * How copies are paid.
     *
     * @param rise by which factor prices of what is open rise each round; the slower, the better and the longer
     * @param shy what part of a price is paid at all
     * @param eager what part more on the days of which the relaxation is sure
     */
    private record Temper(double rise, double shy, double eager) {}

    private final Cover cover;
    private final HoldPath path;
    private final int[] hireOf;
    private final boolean[][] held;
    private final List<List<Held>> periods;
    private final long[] costOf;
    private final int[][] open;
    private final int[][] free;
    private final int[] bought;
    private final long[] reward;
    private final byte[] state;
    private final double highest;
    private int made;

    Repair(Cover cover) {
        this.cover = cover;
        path = new HoldPath(cover.days);
        List<Integer> copies = new ArrayList<>();
        for (int h = 0; h < cover.hires.length; h++) {
            for (int i = 0; i < cover.hires[h].copies; i++) {
                copies.add(h);
            }
        }
        hireOf = copies.stream().mapToInt(i -> i).toArray();
        held = new boolean[hireOf.length][cover.days];
        costOf = new long[hireOf.length];
        periods = new ArrayList<>();
        for (int copy = 0; copy < hireOf.length; copy++) {
            periods.add(List.of());
        }
        open = new int[cover.demand.length][];
        free = new int[cover.stock.length][];
        bought = new int[cover.buys.length];
        reward = new long[cover.days];
        state = new byte[cover.days];
        highest = cover.highestPrice();
    }

    /**
     * Makes a plan, or none where these prices lead to none.
     *
     * @param prices by slot and day
     * @param likely how sure the relaxation is of each offer's days, 0 to 1: those days are paid a little more
     * @param purchases how many of each to begin with, within the cash limit
     * @param stop when it says so, there is no plan
     */
    Optional<Found> plan(double[] prices, double[][] likely, int[] purchases, StopSignal stop) {
        clear(purchases);
        Temper temper = TEMPERS.get(made++ % TEMPERS.size());
        double[] rising = prices.clone();
        double floor =
                Arrays.stream(rising, 0, cover.demand.length * cover.days).max().orElse(0) / 50 + 1;
        for (int round = 0; round < MOST_ROUNDS && !(round > 0 && covered()); round++) {
            for (int copy = 0; copy < hireOf.length; copy++) {
                if (stop.stopped()) {
                    return Optional.empty();
                }
                improve(copy, rising, likely[hireOf[copy]], temper);
            }
            raise(rising, floor, temper.rise());
        }
        if (!covered()) {
            return Optional.empty();
        }
        for (int sweep = 0; sweep < MOST_SWEEPS && polish(); sweep++) {}
        giveBackPurchases();
        return Optional.of(found());
    }

    private void clear(int[] purchases) {
        for (int slot = 0; slot < open.length; slot++) {
            open[slot] = cover.demand[slot].clone();
        }
        for (int thing = 0; thing < free.length; thing++) {
            free[thing] = new int[cover.days];
            Arrays.fill(free[thing], cover.stock[thing]);
        }
        for (int copy = 0; copy < hireOf.length; copy++) {
            periods.set(copy, List.of());
            costOf[copy] = 0;
        }
        for (boolean[] days : held) {
            Arrays.fill(days, false);
        }
        System.arraycopy(purchases, 0, bought, 0, bought.length);
        for (int b = 0; b < bought.length; b++) {
            buy(b, bought[b]);
        }
    }

    private void buy(int b, int count) {
        Cover.Buy buy = cover.buys[b];
        for (int i = 0; i < buy.slots.length; i++) {
            for (int day = 0; day < cover.days; day++) {
                open[buy.slots[i]][day] -= count * buy.serves[i][day];
            }
        }
    }

    private boolean covered() {
        for (int[] days : open) {
            for (int missing : days) {
                if (missing > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private void raise(double[] prices, double floor, double rise) {
        for (int slot = 0; slot < open.length; slot++) {
            for (int day = 0; day < cover.days; day++) {
                if (open[slot][day] > 0) {
                    int row = slot * cover.days + day;
                    prices[row] = Math.min(highest, prices[row] * rise + floor);
                }
            }
        }
    }

    /** Lets one copy choose its days anew, paid by the price of what would be open without it. */
    private void improve(int copy, double[] prices, double[] likely, Temper temper) {
        Cover.Hire hire = cover.hires[hireOf[copy]];
        release(copy);
        Arrays.fill(reward, 0);
        boolean paid = false;
        for (int i = 0; i < hire.slots.length; i++) {
            int slot = hire.slots[i];
            for (int day = 0; day < cover.days; day++) {
                int useful = Math.min(hire.serves[i][day], open[slot][day]);
                if (useful > 0) {
                    paid = true;
                    double part = temper.shy() + temper.eager() * likely[day];
                    reward[day] += (long) (useful * prices[slot * cover.days + day] * part);
                }
            }
        }
        if (!paid) {
            periods.set(copy, List.of());
            costOf[copy] = 0;
            return;
        }
        states(hire, false);
        path.solve(hire.periods, state, reward);
        take(copy);
    }

    /** Lets each copy hold no more than the others need it for; true where that saved anything. */
    private boolean polish() {
        boolean better = false;
        Arrays.fill(reward, 0);
        for (int copy = 0; copy < hireOf.length; copy++) {
            if (periods.get(copy).isEmpty()) {
                continue;
            }
            long before = costOf[copy];
            release(copy);
            states(cover.hires[hireOf[copy]], true);
            path.solve(cover.hires[hireOf[copy]].periods, state, reward);
            take(copy);
            better |= costOf[copy] < before;
        }
        return better;
    }

    /** Idle where the stock is gone; held, where asked for, on the days that nothing else covers. */
    private void states(Cover.Hire hire, boolean must) {
        Arrays.fill(state, HoldPath.FREE);
        for (int i = 0; must && i < hire.slots.length; i++) {
            for (int day = 0; day < cover.days; day++) {
                if (open[hire.slots[i]][day] > 0 && hire.serves[i][day] > 0) {
                    state[day] = HoldPath.HELD;
                }
            }
        }
        for (int i = 0; i < hire.draws.length; i++) {
            for (int day = 0; day < cover.days; day++) {
                if (free[hire.draws[i]][day] < hire.drawn[i]) {
                    state[day] = HoldPath.IDLE;
                }
            }
        }
    }

    private void release(int copy) {
        move(copy, -1);
        Arrays.fill(held[copy], false);
    }

    private void take(int copy) {
        List<Held> taken = new ArrayList<>();
        int hire = hireOf[copy];
        costOf[copy] = 0;
        path.visit((first, last) -> {
            taken.add(new Held(hire, first, last));
            costOf[copy] += cover.hires[hire].periods.costOf(first, last);
            Arrays.fill(held[copy], first, last + 1, true);
        });
        periods.set(copy, taken);
        move(copy, 1);
    }

    private void move(int copy, int sign) {
        Cover.Hire hire = cover.hires[hireOf[copy]];
        for (int day = 0; day < cover.days; day++) {
            if (held[copy][day]) {
                for (int i = 0; i < hire.slots.length; i++) {
                    open[hire.slots[i]][day] -= sign * hire.serves[i][day];
                }
                for (int i = 0; i < hire.draws.length; i++) {
                    free[hire.draws[i]][day] -= sign * hire.drawn[i];
                }
            }
        }
    }

    private void giveBackPurchases() {
        for (int b = 0; b < bought.length; b++) {
            while (bought[b] > 0 && cover.buys[b].cost >= 0) {
                buy(b, -1);
                if (!covered()) {
                    buy(b, 1);
                    break;
                }
                bought[b]--;
            }
        }
    }

    private Found found() {
        long cost = Arrays.stream(costOf).sum();
        for (int b = 0; b < bought.length; b++) {
            cost += bought[b] * cover.buys[b].cost;
        }
        return new Found(
                periods.stream().flatMap(List::stream).toList(),
                Arrays.stream(bought).boxed().toList(),
                cost);
    }
}
