package dayglass.optics;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** Compares fractions with powers of two as if both were known to the last digit. */
final class PowerOfTwo {
    private static final int FIRST_DIGITS = 40;

    private PowerOfTwo() {}

    /**
     * The sign of a fraction less 2 to the exponent.
     *
     * <p>With a whole exponent that is a comparison of whole numbers. With any other decimal the power is irrational
     * and never equals the fraction, so that enough digits always decide.
     *
     * @param exponent not negative
     */
    static int compare(Ratio fraction, BigDecimal exponent) {
        BigInteger whole = exponent.toBigInteger();
        BigDecimal rest = exponent.subtract(new BigDecimal(whole));
        BigDecimal power = new BigDecimal(BigInteger.TWO.pow(whole.intValueExact()));
        Ratio left = new Ratio(fraction.of(), fraction.over().multiply(power));
        if (rest.signum() == 0) {
            return left.compareTo(Ratio.whole(BigDecimal.ONE));
        }
        for (int digits = FIRST_DIGITS; ; digits *= 2) {
            MathContext context = new MathContext(digits, RoundingMode.HALF_EVEN);
            BigDecimal difference = left.of().divide(left.over(), context).subtract(ofRest(rest, context));
            if (difference.abs().compareTo(BigDecimal.ONE.movePointLeft(digits - 5)) > 0) {
                return difference.signum();
            }
        }
    }

    /** 2 to an exponent between 0 and 1, by the series of the exponential function. */
    private static BigDecimal ofRest(BigDecimal rest, MathContext context) {
        BigDecimal exponent = rest.multiply(logarithmOfTwo(context), context);
        BigDecimal sum = BigDecimal.ONE;
        BigDecimal term = BigDecimal.ONE;
        for (int i = 1; isSeen(term, context); i++) {
            term = term.multiply(exponent, context).divide(BigDecimal.valueOf(i), context);
            sum = sum.add(term, context);
        }
        return sum;
    }

    /** ln 2 = 2 (1/3 + 1/(3·3³) + 1/(5·3⁵) + …). */
    private static BigDecimal logarithmOfTwo(MathContext context) {
        BigDecimal nine = BigDecimal.valueOf(9);
        BigDecimal power = BigDecimal.valueOf(2).divide(BigDecimal.valueOf(3), context);
        BigDecimal sum = BigDecimal.ZERO;
        for (int odd = 1; isSeen(power, context); odd += 2) {
            sum = sum.add(power.divide(BigDecimal.valueOf(odd), context), context);
            power = power.divide(nine, context);
        }
        return sum;
    }

    private static boolean isSeen(BigDecimal term, MathContext context) {
        return term.compareTo(BigDecimal.ONE.movePointLeft(context.getPrecision() + 2)) > 0;
    }
}
