package dayglass.books.entry;

import dayglass.base.Currency;
import dayglass.base.Money;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A rate of exchange as it was found.
 *
 * @param rate units of the base currency for one of the foreign, above 0
 * @param source where it was read: a bank's list, a contract
 * @param on the day that it is of
 */
public record Exchange(BigDecimal rate, String source, LocalDate on) {
    public Exchange {
        if (rate.signum() <= 0) {
            throw new IllegalArgumentException("a rate of exchange is above 0, not " + rate);
        }
    }

    /** Of amounts that are in the base currency already. */
    public static Exchange none(LocalDate on) {
        return new Exchange(BigDecimal.ONE, "same currency", on);
    }

    /** The amount in the base currency, rounded half up to its minor unit (a tie goes away from zero). */
    public Money convert(Money amount, Currency base) {
        return amount.at(rate, base);
    }
}
