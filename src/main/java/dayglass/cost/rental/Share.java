package dayglass.cost.rental;

import java.math.BigDecimal;
import java.math.BigInteger;

/** A fraction that is not negative, of amounts in {@code long} minor units. */
final class Share {
    static final Share NOTHING = new Share(0, 1);

    private static final int WORD_BITS = 62;

    private final long numerator;
    private final long denominator;
    private final int numeratorBits;

    private Share(long numerator, long denominator) {
        this.numerator = numerator;
        this.denominator = denominator;
        numeratorBits = bits(numerator) + 1;
    }

    /** The number divided by a power of ten: a percentage is {@code of(value, 2)}. */
    static Share of(BigDecimal value, int morePlaces) {
        long numerator = value.unscaledValue().longValueExact();
        int places = value.scale() + morePlaces;
        while (places > 0 && numerator % 10 == 0 && numerator != 0) {
            numerator /= 10;
            places--;
        }
        long denominator = 1;
        for (; places > 0; places--) {
            denominator = Math.multiplyExact(denominator, 10);
        }
        for (; places < 0; places++) {
            numerator = Math.multiplyExact(numerator, 10);
        }
        return numerator == 0 ? NOTHING : new Share(numerator, denominator);
    }

    boolean isNothing() {
        return numerator == 0;
    }

    double asDouble() {
        return (double) numerator / denominator;
    }

    /** This share of an amount that is not negative, half up. */
    long of(long amount) {
        if (numerator == 0) {
            return 0;
        }
        if (bits(amount) + numeratorBits < WORD_BITS) {
            return (amount * numerator + denominator / 2) / denominator;
        }
        BigInteger half = BigInteger.valueOf(denominator / 2);
        return BigInteger.valueOf(amount)
                .multiply(BigInteger.valueOf(numerator))
                .add(half)
                .divide(BigInteger.valueOf(denominator))
                .longValueExact();
    }

    private static int bits(long amount) {
        return Long.SIZE - Long.numberOfLeadingZeros(amount);
    }
}
