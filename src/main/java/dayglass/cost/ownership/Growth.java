package dayglass.cost.ownership;

import dayglass.base.Percent;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** Powers of a yearly factor over months; exact where the month is a whole year and the power fits. */
public final class Growth {
    /** Far more than any amount here has digits, so that only the last rounding shows. */
    static final MathContext EXACT_ENOUGH = new MathContext(140, RoundingMode.HALF_EVEN);

    static final int YEAR = 12;

    private static final BigDecimal TWELVE = BigDecimal.valueOf(YEAR);
    private static final BigInteger HUNDRED = BigInteger.valueOf(100);

    private final BigDecimal aYear;
    private final BigDecimal aMonth;

    Growth(BigDecimal aYear) {
        this.aYear = aYear;
        this.aMonth = twelfthRoot(aYear);
    }

    /** Of something that grows by so much a year. */
    public static Growth by(Percent aYear) {
        return new Growth(BigDecimal.ONE.add(aYear.fraction()));
    }

    /**
     * A twelfth of an amount. One that ends after two more decimals is found without 140 digits, whose noughts would be
     * taken off again one by one.
     */
    static BigDecimal twelfth(BigDecimal aYear) {
        BigInteger[] hundredths = aYear.unscaledValue().multiply(HUNDRED).divideAndRemainder(TWELVE.toBigInteger());
        return hundredths[1].signum() == 0
                ? new BigDecimal(hundredths[0], aYear.scale() + 2)
                : aYear.divide(TWELVE, EXACT_ENOUGH);
    }

    BigDecimal over(int months) {
        return aYear.pow(months / YEAR, EXACT_ENOUGH).multiply(aMonth.pow(months % YEAR, EXACT_ENOUGH), EXACT_ENOUGH);
    }

    /** What one unit of month m is worth in month 0, for every month from 0 to the last. */
    public BigDecimal[] presentByMonth(int last) {
        BigDecimal[] present = new BigDecimal[last + 1];
        for (int month = 0; month <= last; month++) {
            present[month] = month < YEAR
                    ? BigDecimal.ONE.divide(over(month), EXACT_ENOUGH)
                    : present[month - YEAR].divide(aYear, EXACT_ENOUGH);
        }
        return present;
    }

    /** By Newton's method, whose good digits double at each step. */
    private static BigDecimal twelfthRoot(BigDecimal value) {
        if (value.signum() == 0 || value.compareTo(BigDecimal.ONE) == 0) {
            return value;
        }
        BigDecimal root = BigDecimal.valueOf(Math.pow(value.doubleValue(), 1.0 / YEAR));
        for (int good = 12; good < 2 * EXACT_ENOUGH.getPrecision(); good *= 2) {
            BigDecimal other = value.divide(root.pow(11, EXACT_ENOUGH), EXACT_ENOUGH);
            root = root.multiply(BigDecimal.valueOf(11)).add(other).divide(TWELVE, EXACT_ENOUGH);
        }
        return root;
    }
}
