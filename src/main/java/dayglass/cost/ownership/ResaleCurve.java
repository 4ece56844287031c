package dayglass.cost.ownership;

import dayglass.base.Money;
import java.math.BigDecimal;
import java.util.TreeMap;

/** What something bought sells for by month, before the selling cost. */
public final class ResaleCurve {
    private final BigDecimal price;
    private final PurchaseTerms.ResaleValue value;
    private final Growths growths;

    public ResaleCurve(Money price, PurchaseTerms.ResaleValue value) {
        this(price, value, new Growths());
    }

    /** One of many that go by the same losses. */
    public ResaleCurve(Money price, PurchaseTerms.ResaleValue value, Growths growths) {
        this.price = price.major();
        this.value = value;
        this.growths = growths;
    }

    /** In major units, unrounded. */
    public BigDecimal valueAt(int month) {
        if (value instanceof PurchaseTerms.YearlyLoss loss) {
            BigDecimal kept = BigDecimal.ONE.subtract(loss.loss().fraction());
            return price.multiply(growths.over(kept, month), Growth.EXACT_ENOUGH);
        }
        return between((PurchaseTerms.Points) value, month);
    }

    private BigDecimal between(PurchaseTerms.Points given, int month) {
        TreeMap<Integer, BigDecimal> points = new TreeMap<>();
        points.put(0, price);
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
                .divide(span, Growth.EXACT_ENOUGH)
                .add(before.getValue());
    }
}
