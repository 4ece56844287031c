package dayglass.cost.rental;

import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms.Block;
import dayglass.cost.rental.RentalTerms.ExtraDay;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The least hires from one first day to every last day, in {@code long} minor units: blocks laid end to end. Not safe
 * for use by two threads at once.
 */
final class BlockRow {
    private static final long NONE = PeriodCosts.NONE;
    private static final int WEEK = 7;

    /** The cheapest one-day block on each day. */
    private final long[] oneDay;

    private final int extraAfter;
    private final long[] extraDay;

    /** The longer blocks that may begin on a day, by the day's number modulo seven. */
    private final int[][] longerDays = new int[WEEK][];

    private final long[][] longerPrices = new long[WEEK][];

    /** By length: the least price of blocks that end after exactly so many days; then of those that run past the last. */
    private final long[] exactly;

    BlockRow(RentalTerms terms, Schedule schedule) {
        int days = schedule.days();
        int weekdayOfFirst = schedule.weekdayOf(0).getValue();
        exactly = new long[days + 2];
        oneDay = new long[days];
        Arrays.fill(oneDay, NONE);
        for (Block block : terms.blocks()) {
            if (block.days() == 1) {
                cheapen(oneDay, block, terms.dayFactors(), schedule);
            }
        }
        Optional<ExtraDay> extra = terms.extraDay().filter(some -> some.afterDays() < days);
        extraAfter = extra.isPresent() ? extra.get().afterDays() : days;
        extraDay = new long[extra.isPresent() ? days : 0];
        Arrays.fill(extraDay, NONE);
        if (extra.isPresent()) {
            cheapen(extraDay, new Block(1, extra.get().price(), Optional.empty()), terms.dayFactors(), schedule);
        }
        longer(terms.blocks(), weekdayOfFirst);
    }

    private static void cheapen(long[] prices, Block block, Map<DayUse, BigDecimal> factors, Schedule schedule) {
        long plain = block.price().minor().longValueExact();
        int day = 0;
        int step = 1;
        if (block.startsOn().isPresent()) {
            day = placeInWeek(block, schedule.weekdayOf(0).getValue());
            step = WEEK;
        }
        if (factors.isEmpty()) {
            for (; day < prices.length; day += step) {
                prices[day] = Math.min(prices[day], plain);
            }
            return;
        }
        Map<DayUse, Long> byUse = new EnumMap<>(DayUse.class);
        factors.forEach((use, factor) -> byUse.put(use, Share.of(factor, 0).of(plain)));
        for (; day < prices.length; day += step) {
            Long factored = byUse.get(schedule.useOn(day));
            prices[day] = Math.min(prices[day], factored == null ? plain : factored);
        }
    }

    private static int placeInWeek(Block block, int weekdayOfFirst) {
        return Math.floorMod(block.startsOn().orElseThrow().getValue() - weekdayOfFirst, WEEK);
    }

    private void longer(List<Block> blocks, int weekdayOfFirst) {
        int[] days = new int[blocks.size()];
        long[] prices = new long[days.length];
        int[] begins = new int[days.length];
        int count = 0;
        boolean everyDay = true;
        for (Block block : blocks) {
            if (block.days() > 1) {
                days[count] = block.days();
                prices[count] = block.price().minor().longValueExact();
                begins[count] = block.startsOn().isPresent() ? placeInWeek(block, weekdayOfFirst) : -1;
                everyDay &= begins[count++] < 0;
            }
        }
        for (int place = 0; place < WEEK; place++) {
            if (place > 0 && everyDay) {
                longerDays[place] = longerDays[0];
                longerPrices[place] = longerPrices[0];
                continue;
            }
            int[] someDays = new int[count];
            long[] somePrices = new long[count];
            int some = 0;
            for (int i = 0; i < count; i++) {
                if (begins[i] < 0 || begins[i] == place) {
                    someDays[some] = days[i];
                    somePrices[some++] = prices[i];
                }
            }
            longerDays[place] = Arrays.copyOf(someDays, some);
            longerPrices[place] = Arrays.copyOf(somePrices, some);
        }
    }

    /** Whether prices are the same on each day. */
    boolean daysAlike() {
        for (int place = 1; place < WEEK; place++) {
            if (longerDays[place] != longerDays[0]) {
                return false;
            }
        }
        return repeat(1);
    }

    /** Whether prices depend on the weekday alone: on each day they are those of the day a week before. */
    boolean weeksAlike() {
        return repeat(WEEK);
    }

    private boolean repeat(int after) {
        for (int day = after; day < oneDay.length; day++) {
            if (oneDay[day] != oneDay[day - after] || (extraDay.length > 0 && extraDay[day] != extraDay[day - after])) {
                return false;
            }
        }
        return true;
    }

    /**
     * Lays the cheapest blocks from a first day on: {@code into[i]} is the least hire of the period of i + 1 days, by
     * blocks that end on its last day or later.
     */
    void lay(int first, int last, long[] into) {
        int length = last - first + 1;
        int past = length + 1;
        long[] reached = exactly;
        Arrays.fill(reached, 1, past + 1, NONE);
        reached[0] = 0;
        int place = first % WEEK;
        long byOneDay = 0;
        for (int start = 0; start < length; start++) {
            long sofar = Math.min(byOneDay, reached[start]);
            reached[start] = sofar;
            byOneDay = NONE;
            if (sofar < NONE) {
                long price = oneDay[first + start];
                if (start >= extraAfter) {
                    price = Math.min(price, extraDay[first + start]);
                }
                byOneDay = sofar + price;
                int[] days = longerDays[place];
                long[] prices = longerPrices[place];
                for (int i = 0; i < days.length; i++) {
                    int end = Math.min(start + days[i], past);
                    reached[end] = Math.min(reached[end], sofar + prices[i]);
                }
            }
            place = place == WEEK - 1 ? 0 : place + 1;
        }
        reached[length] = Math.min(byOneDay, reached[length]);
        long cheapest = reached[past];
        for (int i = length; i >= 1; i--) {
            cheapest = Math.min(cheapest, reached[i]);
            into[i - 1] = cheapest;
        }
    }

    /**
     * A potential of each day up to the one after {@code last}: the potential of a day is at most the price of any block
     * that begins on it plus that of the day on which the block ends, whenever the period began. So the hire of a period
     * is at least the potential of its first day less the greatest of any day after its last.
     */
    void potentials(int first, int last, double[] into) {
        into[last + 1] = 0;
        for (int day = last; day >= first; day--) {
            long oneDayPrice = extraDay.length > 0 ? Math.min(oneDay[day], extraDay[day]) : oneDay[day];
            double least = Math.min((double) NONE, oneDayPrice + into[day + 1]);
            int[] days = longerDays[day % WEEK];
            long[] prices = longerPrices[day % WEEK];
            for (int i = 0; i < days.length; i++) {
                int end = day + days[i];
                least = Math.min(least, prices[i] + (end > last ? 0 : into[end]));
            }
            into[day] = least;
        }
    }

    /** What a day costs in the block that is the cheapest by the day: no hire is below the sum over its days. */
    double leastOn(int day) {
        double least = (double) (extraDay.length > 0 ? Math.min(oneDay[day], extraDay[day]) : oneDay[day]);
        for (int place = 0; place < WEEK; place++) {
            for (int i = 0; i < longerDays[place].length; i++) {
                least = Math.min(least, (double) longerPrices[place][i] / longerDays[place][i]);
            }
        }
        return least;
    }

    /** Of the blocks laid last: the least price of those that end after exactly so many days. */
    long exactly(int days) {
        return exactly[days];
    }
}
