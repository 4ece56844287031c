package dayglass.cost.ownership;

import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.TreeMap;

/**
 * What a purchase costs over its term, at present value: outlay, and what it costs to hold and service, less what it
 * earns by letting and brings at resale. Below zero where it earns more than it costs.
 *
 * <p>A flow of month m is worth (1 + r)^(-m/12) of itself, r the discount rate a year.
 */
public final class NetCost {
    /** Far more than any amount here has digits, so that only the last rounding shows. */
    private static final MathContext EXACT_ENOUGH = new MathContext(140, RoundingMode.HALF_EVEN);

    /** An exact tie that came out a hair below itself is put back before the last rounding. */
    private static final int DECIMALS_KEPT = 45;

    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private final PurchaseTerms terms;
    private final Growth discount;

    private NetCost(PurchaseTerms terms, Percent discountRate) {
        this.terms = terms;
        this.discount = new Growth(BigDecimal.ONE.add(discountRate.fraction()));
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
        return new NetCost(terms, discountRate).net();
    }

    private Money net() {
        BigDecimal net = outlay(terms)
                .major()
                .add(aYearOfHolding().subtract(aYearOfLetting()).multiply(yearsPresent()))
                .add(service())
                .subtract(resale());
        return Money.of(
                terms.price().currency(),
                net.setScale(DECIMALS_KEPT, RoundingMode.HALF_EVEN)
                        .setScale(terms.price().currency().decimals(), RoundingMode.HALF_UP));
    }

    private BigDecimal aYearOfHolding() {
        return terms.price()
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
            sum = sum.add(present(month));
        }
        return sum.divide(TWELVE, EXACT_ENOUGH);
    }

    private BigDecimal service() {
        BigDecimal sum = BigDecimal.ZERO;
        if (terms.service().isPresent()) {
            PurchaseTerms.Service service = terms.service().get();
            for (int month = service.everyMonths(); month < terms.termMonths(); month += service.everyMonths()) {
                sum = sum.add(service.cost().major().multiply(present(month)));
            }
        }
        return sum;
    }

    private BigDecimal resale() {
        BigDecimal kept = BigDecimal.ONE.subtract(terms.resale().sellingCost().fraction());
        return valueAt(terms.termMonths()).multiply(kept).multiply(present(terms.termMonths()), EXACT_ENOUGH);
    }

    private BigDecimal valueAt(int month) {
        if (terms.resale().value() instanceof PurchaseTerms.YearlyLoss loss) {
            Growth kept = new Growth(BigDecimal.ONE.subtract(loss.loss().fraction()));
            return terms.price().major().multiply(kept.over(month), EXACT_ENOUGH);
        }
        return between((PurchaseTerms.Points) terms.resale().value(), month);
    }

    private BigDecimal between(PurchaseTerms.Points given, int month) {
        TreeMap<Integer, BigDecimal> points = new TreeMap<>();
        points.put(0, terms.price().major());
        given.points().forEach(point -> points.put(point.months(), point.value().major()));
        var before = points.floorEntry(month);
        var after = points.ceilingEntry(month);
        if (after == null || after.getKey().equals(before.getKey())) {
            return before.getValue();
        }
        BigDecimal span = BigDecimal.valueOf(after.getKey() - before.getKey());
        return after.getValue()
                .subtract(before.getValue())
                .multiply(BigDecimal.valueOf(month - before.getKey()))
                .divide(span, EXACT_ENOUGH)
                .add(before.getValue());
    }

    private BigDecimal present(int month) {
        return BigDecimal.ONE.divide(discount.over(month), EXACT_ENOUGH);
    }

    /** Powers of a yearly factor over months; exact where the month is a whole year and the power fits. */
    private static final class Growth {
        private final BigDecimal aYear;
        private final BigDecimal aMonth;

        Growth(BigDecimal aYear) {
            this.aYear = aYear;
            this.aMonth = twelfthRoot(aYear);
        }

        BigDecimal over(int months) {
            return aYear.pow(months / 12, EXACT_ENOUGH).multiply(aMonth.pow(months % 12, EXACT_ENOUGH), EXACT_ENOUGH);
        }

        /** By Newton's method, whose good digits double at each step. */
        private static BigDecimal twelfthRoot(BigDecimal value) {
            if (value.signum() == 0 || value.compareTo(BigDecimal.ONE) == 0) {
                return value;
            }
            BigDecimal root = BigDecimal.valueOf(Math.pow(value.doubleValue(), 1.0 / 12));
            for (int good = 12; good < 2 * EXACT_ENOUGH.getPrecision(); good *= 2) {
                BigDecimal other = value.divide(root.pow(11, EXACT_ENOUGH), EXACT_ENOUGH);
                root = root.multiply(BigDecimal.valueOf(11)).add(other).divide(TWELVE, EXACT_ENOUGH);
            }
            return root;
        }
    }
}
