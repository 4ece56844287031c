package dayglass.base;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * An exact amount in whole minor units of its currency; it may be negative and never overflows.
 *
 * @param currency the currency; amounts of two currencies never meet
 * @param minor the amount in minor units (cents, yen, ...)
 */
public record Money(Currency currency, BigInteger minor) implements Comparable<Money> {
    public static Money zero(Currency currency) {
        return new Money(currency, BigInteger.ZERO);
    }

    public static Money ofMinor(Currency currency, long minor) {
        return new Money(currency, BigInteger.valueOf(minor));
    }

    /**
     * The amount that a decimal in major units says.
     *
     * @throws ArithmeticException where it has more decimals than the currency
     */
    public static Money of(Currency currency, BigDecimal major) {
        return new Money(
                currency,
                major.setScale(currency.decimals(), RoundingMode.UNNECESSARY).unscaledValue());
    }

    public static Money of(String currencyCode, String major) {
        return of(Currency.of(currencyCode), new BigDecimal(major));
    }

    public Money plus(Money other) {
        requireSame(other);
        return new Money(currency, minor.add(other.minor));
    }

    public Money minus(Money other) {
        requireSame(other);
        return new Money(currency, minor.subtract(other.minor));
    }

    public Money times(long factor) {
        return new Money(currency, minor.multiply(BigInteger.valueOf(factor)));
    }

    /**
     * The same in another currency, rounded half up to its minor unit (a tie goes away from zero).
     *
     * @param rate units of the other currency for one of this
     */
    public Money at(BigDecimal rate, Currency other) {
        return of(other, major().multiply(rate).setScale(other.decimals(), RoundingMode.HALF_UP));
    }

    public int signum() {
        return minor.signum();
    }

    public BigDecimal major() {
        return new BigDecimal(minor, currency.decimals());
    }

    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return minor.compareTo(other.minor);
    }

    /** The amount in major units with all the currency's decimals, without its code: {@code 1234.50}. */
    public String amount() {
        return major().toPlainString();
    }

    @Override
    public String toString() {
        return amount() + " " + currency;
    }

    private void requireSame(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(currency + " and " + other.currency + " do not mix");
        }
    }
}
