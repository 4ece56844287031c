package dayglass.inventory.worth;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.OwnSales;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.ownership.ResaleCurve;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What a unit would sell for, before the selling cost: by the house's own sales of the model where there are any, else by
 * a yearly loss off the price.
 *
 * @param paid for it
 * @param months that are full since then
 * @param sales of the model that it goes by; 0 where by the yearly loss
 */
public record ValueToday(Money paid, LocalDate boughtOn, int months, int sales, Money today, Money inAYear) {
    private static final int YEAR = 12;

    /** What all units of one reading go by alike. */
    record Basis(Percent lossPerYear, LocalDate today, Growths growths) {}

    /** Empty where the price or the day of the purchase is not recorded. */
    static Optional<ValueToday> of(Unit unit, List<OwnSales.Sale> sales, Basis basis) {
        return owned(unit)
                .flatMap(owned -> owned.price()
                        .flatMap(price -> owned.boughtOn()
                                .filter(day -> !day.isAfter(basis.today()))
                                .map(day -> of(price, day, sales, basis))));
    }

    private static Optional<Holding.Owned> owned(Unit unit) {
        return unit.holding()
                .fold(Optional::of, rented -> Optional.empty(), (Holding.Consigned lent) -> Optional.empty());
    }

    private static ValueToday of(Money price, LocalDate day, List<OwnSales.Sale> all, Basis basis) {
        List<OwnSales.Sale> sales = all.stream()
                .filter(sale -> sale.paid().currency().equals(price.currency()))
                .toList();
        ResaleCurve curve = new ResaleCurve(
                price,
                sales.isEmpty() ? new PurchaseTerms.YearlyLoss(basis.lossPerYear()) : OwnSales.points(price, sales),
                basis.growths());
        int months = monthsBetween(day, basis.today());
        return new ValueToday(
                price, day, months, sales.size(), at(curve, price, months), at(curve, price, months + YEAR));
    }

    private static Money at(ResaleCurve curve, Money price, int months) {
        return Money.of(
                price.currency(),
                curve.valueAt(months).setScale(price.currency().decimals(), RoundingMode.HALF_UP));
    }

    private static int monthsBetween(LocalDate from, LocalDate until) {
        return Math.toIntExact(ChronoUnit.MONTHS.between(from, until));
    }

    /** What a unit that was sold says: what was paid, what came back, after how long; empty where one is not recorded. */
    static Optional<OwnSales.Sale> sale(Unit unit) {
        return owned(unit)
                .flatMap(owned -> unit.departure()
                        .filter(gone -> gone.how().equals("sold"))
                        .flatMap(gone -> gone.price()
                                .flatMap(had -> owned.price()
                                        .filter(paid -> paid.signum() > 0
                                                && paid.currency().equals(had.currency()))
                                        .flatMap(paid -> owned.boughtOn()
                                                .filter(day -> !day.isAfter(gone.on()))
                                                .map(day -> new OwnSales.Sale(
                                                        Math.max(1, monthsBetween(day, gone.on())), paid, had))))));
    }
}
