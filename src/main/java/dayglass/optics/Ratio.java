package dayglass.optics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact fraction of positive decimals, so that a picture that just reaches is not lost to a rounding.
 *
 * @param over above 0
 */
public record Ratio(BigDecimal of, BigDecimal over) implements Comparable<Ratio> {
    /** Digits that are kept where a result cannot be exact. */
    static final MathContext DIGITS = new MathContext(40, RoundingMode.HALF_UP);

    static Ratio whole(BigDecimal number) {
        return new Ratio(number, BigDecimal.ONE);
    }

    Ratio times(Ratio other) {
        return new Ratio(of.multiply(other.of), over.multiply(other.over));
    }

    Ratio over(Ratio other) {
        return new Ratio(of.multiply(other.over), over.multiply(other.of));
    }

    Ratio plus(Ratio other) {
        return new Ratio(of.multiply(other.over).add(other.of.multiply(over)), over.multiply(other.over));
    }

    Ratio squared() {
        return times(this);
    }

    /** Rounded once, half up. */
    BigDecimal rounded(int decimals) {
        return of.divide(over, decimals, RoundingMode.HALF_UP);
    }

    BigDecimal inDigits() {
        return of.divide(over, DIGITS);
    }

    public double inDouble() {
        return inDigits().doubleValue();
    }

    @Override
    public int compareTo(Ratio other) {
        return of.multiply(other.over).compareTo(other.of.multiply(over));
    }
}
