package dayglass.catalogue;

import dayglass.base.Currency;
import dayglass.base.Money;
import java.math.BigDecimal;

/**
 * The rate of exchange that is reckoned with before anything is paid.
 *
 * @param currency the foreign one
 * @param rate units of one's own currency for one of the foreign, above 0
 */
public record BudgetRate(Currency currency, BigDecimal rate) {
    public BudgetRate {
        if (rate.signum() <= 0) {
            throw new IllegalArgumentException("a rate of exchange is above 0, not " + rate);
        }
    }

    /** A line of a card in one's own currency: each of its prices is converted once. */
    public Rate convert(Rate foreign, Currency own) {
        return new Rate(
                foreign.code(),
                foreign.covers(),
                foreign.copies(),
                foreign.terms().withPrices(price -> convert(price, own)),
                foreign.available(),
                foreign.lets(),
                foreign.marks());
    }

    private Money convert(Money amount, Currency own) {
        return amount.at(rate, own);
    }
}
