package dayglass.cost.ownership;

import dayglass.base.Percent;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;

/**
 * Remembers each root and power of 140 digits that it worked out, where many things go by the same rates. One is made for
 * one reading and used by one thread.
 */
public final class Growths {
    private final Map<BigDecimal, Growth> byFactor = new HashMap<>();
    private final Map<Power, BigDecimal> powers = new HashMap<>();
    private final Map<Power, BigDecimal[]> presents = new HashMap<>();

    private record Power(BigDecimal aYear, int months) {}

    /** What one becomes that is worth so much of itself after a year. */
    BigDecimal over(BigDecimal aYear, int months) {
        return powers.computeIfAbsent(
                new Power(aYear, months), power -> of(aYear).over(months));
    }

    /** {@link Growth#presentByMonth}; whoever asks only reads it. */
    public BigDecimal[] presentByMonth(Percent growthAYear, int last) {
        BigDecimal aYear = BigDecimal.ONE.add(growthAYear.fraction());
        return presents.computeIfAbsent(
                new Power(aYear, last), power -> of(aYear).presentByMonth(last));
    }

    private Growth of(BigDecimal aYear) {
        return byFactor.computeIfAbsent(aYear, Growth::new);
    }
}
