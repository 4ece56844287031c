package dayglass.cost.ownership;

import dayglass.base.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the user's own sales say about resale: the share of the price paid that came back, by age. */
public final class OwnSales {
    private OwnSales() {}

    /** Something bought and sold after so many months. */
    public record Sale(int months, Money paid, Money soldFor) {}

    /** Points for something of another price: of sales at the same age the mean share, each value rounded half up. */
    public static PurchaseTerms.Points points(Money price, List<Sale> sales) {
        Map<Integer, List<BigDecimal>> shares = new TreeMap<>();
        for (Sale sale : sales) {
            shares.computeIfAbsent(sale.months(), month -> new ArrayList<>())
                    .add(sale.soldFor().major().divide(sale.paid().major(), Growth.EXACT_ENOUGH));
        }
        List<PurchaseTerms.Point> points = new ArrayList<>();
        shares.forEach((months, all) -> {
            BigDecimal sum = all.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal share = sum.divide(BigDecimal.valueOf(all.size()), Growth.EXACT_ENOUGH);
            points.add(new PurchaseTerms.Point(
                    months, NetCost.rounded(price.currency(), price.major().multiply(share))));
        });
        return new PurchaseTerms.Points(points);
    }
}
