package dayglass.base;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * A percentage, exact: {@code 8.875} per cent is {@code new Percent(new BigDecimal("8.875"))}.
 *
 * @param value the number before the per-cent sign
 */
public record Percent(BigDecimal value) {
    public static final Percent ZERO = new Percent(BigDecimal.ZERO);

    public static Percent of(String value) {
        return new Percent(new BigDecimal(value));
    }

    /** This share of an amount of minor units, rounded half up to the minor unit (a tie goes away from zero). */
    public BigInteger of(BigInteger minor) {
        return new BigDecimal(minor)
                .multiply(value)
                .movePointLeft(2)
                .setScale(0, RoundingMode.HALF_UP)
                .unscaledValue();
    }

    /** This share of an amount, rounded half up to the minor unit (a tie goes away from zero). */
    public Money of(Money amount) {
        return new Money(amount.currency(), of(amount.minor()));
    }

    /** As a plain factor: 8.875 per cent is 0.08875. */
    public BigDecimal fraction() {
        return value.movePointLeft(2);
    }
}
