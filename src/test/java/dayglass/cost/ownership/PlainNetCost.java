package dayglass.cost.ownership;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.PurchaseTerms.Extra;
import dayglass.cost.ownership.PurchaseTerms.Point;
import dayglass.cost.ownership.PurchaseTerms.Points;
import dayglass.cost.ownership.PurchaseTerms.YearlyLoss;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a purchase costs, slowly and obviously: every month is discounted by itself at 90 digits. What is then beyond
 * 60 decimals is noise and is cut before the one rounding, so that a true tie is seen as one.
 */
public final class PlainNetCost {
    private static final MathContext DIGITS = new MathContext(90);
    /** Two steps of Newton's method that differ by no more than this have met. */
    private static final BigDecimal CLOSE = new BigDecimal("1e-87");

    private static final BigDecimal MONTHS = BigDecimal.valueOf(12);

    private PlainNetCost() {}

    /** What is paid at once. */
    public static Money outlay(PurchaseTerms terms) {
        return Money.of(terms.price().currency(), outlayMajor(terms));
    }

    private static BigDecimal outlayMajor(PurchaseTerms terms) {
        int decimals = terms.price().currency().decimals();
        BigDecimal price = terms.price().major();
        BigDecimal sum = price.add(price.multiply(hundredth(terms.tax())).setScale(decimals, RoundingMode.HALF_UP));
        for (Extra extra : terms.extras()) {
            sum = sum.add(extra.amount().major());
        }
        return sum;
    }

    /** The net cost at a discount rate a year. */
    public static Money of(PurchaseTerms terms, Percent discountRate) {
        BigDecimal exact = exact(terms, discountRate);
        return Money.of(
                terms.price().currency(),
                exact.setScale(60, RoundingMode.HALF_EVEN)
                        .setScale(terms.price().currency().decimals(), RoundingMode.HALF_UP));
    }

    /** The net cost in major units before the rounding. */
    public static BigDecimal exact(PurchaseTerms terms, Percent discountRate) {
        int months = terms.termMonths();
        BigDecimal monthly = twelfthRoot(BigDecimal.ONE.add(hundredth(discountRate)));
        BigDecimal price = terms.price().major();
        BigDecimal insured = terms.holding().insured().map(Money::major).orElse(price);
        BigDecimal holdingPerYear = insured.multiply(hundredth(terms.holding().insurancePerYear()))
                .add(terms.holding().storagePerYear().major());
        BigDecimal lettingPerYear = terms.letting()
                .map(letting -> letting.daysPerYear()
                        .multiply(letting.dayRate().major())
                        .multiply(hundredth(letting.ownerShare())))
                .orElse(BigDecimal.ZERO);
        BigDecimal net = outlayMajor(terms);
        for (int month = 1; month <= months; month++) {
            BigDecimal worth = BigDecimal.ONE.divide(monthly.pow(month, DIGITS), DIGITS);
            BigDecimal perMonth = holdingPerYear.subtract(lettingPerYear).divide(MONTHS, DIGITS);
            net = net.add(perMonth.multiply(worth, DIGITS), DIGITS);
            if (terms.service().isPresent()
                    && month < months
                    && month % terms.service().get().everyMonths() == 0) {
                net = net.add(terms.service().get().cost().major().multiply(worth, DIGITS), DIGITS);
            }
        }
        BigDecimal kept = BigDecimal.ONE.subtract(hundredth(terms.resale().sellingCost()));
        BigDecimal resaleWorth = resale(terms).multiply(kept, DIGITS).divide(monthly.pow(months, DIGITS), DIGITS);
        return net.subtract(resaleWorth, DIGITS);
    }

    private static BigDecimal resale(PurchaseTerms terms) {
        BigDecimal price = terms.price().major();
        if (terms.resale().value() instanceof YearlyLoss yearly) {
            BigDecimal keptPerYear = BigDecimal.ONE.subtract(hundredth(yearly.loss()));
            return price.multiply(twelfthRoot(keptPerYear).pow(terms.termMonths(), DIGITS), DIGITS);
        }
        TreeMap<Integer, BigDecimal> values = new TreeMap<>(Map.of(0, price));
        for (Point point : ((Points) terms.resale().value()).points()) {
            values.put(point.months(), point.value().major());
        }
        Map.Entry<Integer, BigDecimal> before = values.floorEntry(terms.termMonths());
        Map.Entry<Integer, BigDecimal> after = values.ceilingEntry(terms.termMonths());
        if (after == null || after.getKey().equals(before.getKey())) {
            return before.getValue();
        }
        BigDecimal rise = after.getValue().subtract(before.getValue());
        return before.getValue()
                .add(rise.multiply(BigDecimal.valueOf(terms.termMonths() - before.getKey()))
                        .divide(BigDecimal.valueOf(after.getKey() - before.getKey()), DIGITS));
    }

    /** Newton's method from a double; 200 rounds are more than enough for numbers from 0 to 11. */
    private static BigDecimal twelfthRoot(BigDecimal number) {
        if (number.signum() == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal root = BigDecimal.valueOf(Math.max(1e-9, Math.pow(number.doubleValue(), 1.0 / 12)));
        for (int round = 0; round < 200; round++) {
            BigDecimal better = root.multiply(BigDecimal.valueOf(11))
                    .add(number.divide(root.pow(11, DIGITS), DIGITS))
                    .divide(MONTHS, DIGITS);
            if (better.subtract(root).abs().compareTo(CLOSE) <= 0) {
                return better;
            }
            root = better;
        }
        return root;
    }

    private static BigDecimal hundredth(Percent percent) {
        return percent.value().divide(BigDecimal.valueOf(100));
    }
}
