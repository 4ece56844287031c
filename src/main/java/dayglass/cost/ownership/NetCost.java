package dayglass.cost.ownership;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a purchase costs over its term, at present value: outlay, and what it costs to hold and service, less what it
 * earns by letting and brings at resale. Below zero where it earns more than it costs.
 *
 * <p>A flow of month m is worth (1 + r)^(-m/12) of itself, r the discount rate a year.
 */
public final class NetCost {
    /** An exact tie that came out a hair below itself is put back before the last rounding. */
    private static final int DECIMALS_KEPT = 45;

    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private final PurchaseTerms terms;
    private final BigDecimal[] present;
    private final Growths growths;

    private NetCost(PurchaseTerms terms, Percent discountRate, Growths growths) {
        this.terms = terms;
        this.growths = growths;
        this.present = growths.presentByMonth(discountRate, terms.termMonths());
    }

    /** What is paid at once: price, tax on it, extras. */
    public static Money outlay(PurchaseTerms terms) {
        Money outlay = terms.price().plus(terms.tax().of(terms.price()));
        for (PurchaseTerms.Extra extra : terms.extras()) {
            outlay = outlay.plus(extra.amount());
        }
        return outlay;
    }

    /** The net cost, rounded once, half up, to the minor unit. */
    public static Money of(PurchaseTerms terms, Percent discountRate) {
        return of(terms, discountRate, new Growths());
    }

    /** That of one of many which go by the same rates. */
    public static Money of(PurchaseTerms terms, Percent discountRate, Growths growths) {
        return new NetCost(terms, discountRate, growths).net();
    }

    private Money net() {
        BigDecimal net = outlay(terms)
                .major()
                .add(aYearOfHolding().subtract(aYearOfLetting()).multiply(yearsPresent()))
                .add(service())
                .subtract(resale());
        return rounded(terms.price().currency(), net);
    }

    /** The one rounding of what was worked out in major units: half up, a tie away from zero. */
    static Money rounded(Currency currency, BigDecimal major) {
        return Money.of(
                currency,
                major.setScale(DECIMALS_KEPT, RoundingMode.HALF_EVEN)
                        .setScale(currency.decimals(), RoundingMode.HALF_UP));
    }

    private BigDecimal aYearOfHolding() {
        return terms.insuredValue()
                .major()
                .multiply(terms.holding().insurancePerYear().fraction())
                .add(terms.holding().storagePerYear().major());
    }

    private BigDecimal aYearOfLetting() {
        return terms.letting()
                .map(letting -> letting.daysPerYear()
                        .multiply(letting.dayRate().major())
                        .multiply(letting.ownerShare().fraction()))
                .orElse(BigDecimal.ZERO);
    }

    /** The present value of a twelfth at the end of each month of the term. */
    private BigDecimal yearsPresent() {
        BigDecimal sum = BigDecimal.ZERO;
        for (int month = 1; month <= terms.termMonths(); month++) {
            sum = sum.add(present[month]);
        }
        return sum.divide(TWELVE, Growth.EXACT_ENOUGH);
    }

    private BigDecimal service() {
        BigDecimal sum = BigDecimal.ZERO;
        if (terms.service().isPresent()) {
            PurchaseTerms.Service service = terms.service().get();
            for (int month = service.everyMonths(); month < terms.termMonths(); month += service.everyMonths()) {
                sum = sum.add(service.cost().major().multiply(present[month]));
            }
        }
        return sum;
    }

    private BigDecimal resale() {
        BigDecimal kept = BigDecimal.ONE.subtract(terms.resale().sellingCost().fraction());
        BigDecimal value = new ResaleCurve(terms.price(), terms.resale().value(), growths).valueAt(terms.termMonths());
        return value.multiply(kept).multiply(present[terms.termMonths()], Growth.EXACT_ENOUGH);
    }
}
