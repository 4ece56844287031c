package dayglass.optics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** With how many digits a figure is told: lengths to a hundredth of a millimetre, the rest with four digits that count. */
public final class Figures {
    private static final int LENGTH_DECIMALS = 2;
    private static final int DIGITS = 4;

    private Figures() {}

    static BigDecimal lengthMm(BigDecimal mm) {
        return mm.setScale(LENGTH_DECIMALS, RoundingMode.HALF_UP);
    }

    static BigDecimal lengthMm(Ratio mm) {
        return mm.rounded(LENGTH_DECIMALS);
    }

    /** A difference of two lengths as they were given, without noughts that nobody measured. */
    public static BigDecimal difference(BigDecimal mm) {
        return plain(lengthMm(mm));
    }

    /** At least four digits that count; all digits before the point. */
    static BigDecimal telling(BigDecimal number) {
        if (number.signum() == 0) {
            return BigDecimal.ZERO.setScale(DIGITS - 1);
        }
        int before = number.precision() - number.scale();
        BigDecimal rounded = number.round(new MathContext(Math.max(DIGITS, before), RoundingMode.HALF_UP));
        int decimals = Math.max(0, DIGITS - (rounded.precision() - rounded.scale()));
        return rounded.setScale(decimals, RoundingMode.HALF_UP);
    }

    public static BigDecimal telling(double number) {
        return telling(new BigDecimal(number));
    }

    static BigDecimal telling(Ratio number) {
        return telling(number.inDigits());
    }

    /** Without noughts at the end: 1.330 becomes 1.33, 100 stays 100. */
    public static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
