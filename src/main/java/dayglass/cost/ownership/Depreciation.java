package dayglass.cost.ownership;

import dayglass.base.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How a price is written off over whole years, for the books. No tax advice. Each year's running sum is rounded half up
 * to the minor unit, so that the years add up exactly.
 */
public final class Depreciation {
    private Depreciation() {}

    /** The same amount each year. */
    public static List<Money> straightLine(Money cost, Money salvage, int years) {
        Money base = cost.minus(salvage);
        BigDecimal each = base.major().divide(BigDecimal.valueOf(years), Growth.EXACT_ENOUGH);
        return rounded(base, Collections.nCopies(years, each));
    }

    /** Of n years the first takes n shares, the next n - 1, and the last one. */
    public static List<Money> sumOfYearsDigits(Money cost, Money salvage, int years) {
        Money base = cost.minus(salvage);
        BigDecimal shares = BigDecimal.valueOf((long) years * (years + 1) / 2);
        List<BigDecimal> exact = new ArrayList<>();
        for (int year = 1; year <= years; year++) {
            exact.add(
                    base.major().multiply(BigDecimal.valueOf(years - year + 1L)).divide(shares, Growth.EXACT_ENOUGH));
        }
        return rounded(base, exact);
    }

    /**
     * A share of what is left each year, never below the salvage value.
     *
     * @param factor of the straight-line share, such as 2 for double declining
     * @param toStraightLine goes over to level amounts over the years left as soon as that is more
     */
    public static List<Money> declining(
            Money cost, Money salvage, int years, BigDecimal factor, boolean toStraightLine) {
        BigDecimal share =
                factor.divide(BigDecimal.valueOf(years), Growth.EXACT_ENOUGH).min(BigDecimal.ONE);
        BigDecimal left = cost.major();
        List<BigDecimal> exact = new ArrayList<>();
        for (int year = 0; year < years; year++) {
            BigDecimal room = left.subtract(salvage.major()).max(BigDecimal.ZERO);
            BigDecimal amount = left.multiply(share, Growth.EXACT_ENOUGH).min(room);
            if (toStraightLine) {
                amount = amount.max(room.divide(BigDecimal.valueOf(years - year), Growth.EXACT_ENOUGH));
            }
            exact.add(amount);
            left = left.subtract(amount);
        }
        return rounded(cost.minus(salvage), exact);
    }

    /** By a table of percentages of the cost; a hundred in all. */
    public static List<Money> byTable(Money cost, List<BigDecimal> percents) {
        List<BigDecimal> exact = percents.stream()
                .map(percent -> cost.major().multiply(percent.movePointLeft(2)))
                .toList();
        return rounded(cost, exact);
    }

    private static List<Money> rounded(Money most, List<BigDecimal> exact) {
        List<Money> years = new ArrayList<>();
        BigDecimal running = BigDecimal.ZERO;
        Money told = Money.zero(most.currency());
        for (BigDecimal amount : exact) {
            running = running.add(amount);
            Money soFar = NetCost.rounded(most.currency(), running);
            years.add(soFar.minus(told));
            told = soFar;
        }
        return years;
    }
}
