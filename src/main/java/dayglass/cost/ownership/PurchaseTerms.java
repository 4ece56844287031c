package dayglass.cost.ownership;

import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A purchase over its term. Months count from the purchase.
 *
 * @param price before tax
 * @param tax on the price alone, rounded to the minor unit
 * @param extras paid with it, not taxed
 * @param termMonths after which it is sold, 1 to 600
 */
public record PurchaseTerms(
        Money price,
        Percent tax,
        List<Extra> extras,
        int termMonths,
        Resale resale,
        Holding holding,
        Optional<Service> service,
        Optional<Letting> letting) {

    public PurchaseTerms {
        extras = List.copyOf(extras);
    }

    /** The same, sold after another number of months. */
    public PurchaseTerms soldAfter(int months) {
        return new PurchaseTerms(price, tax, extras, months, resale, holding, service, letting);
    }

    /** The same, let on so many days a year; nothing changes where it is not let. */
    public PurchaseTerms lettingOn(BigDecimal daysPerYear) {
        return new PurchaseTerms(
                price,
                tax,
                extras,
                termMonths,
                resale,
                holding,
                service,
                letting.map(each -> new Letting(daysPerYear, each.dayRate(), each.ownerShare())));
    }

    public record Extra(String name, Money amount) {}

    /** What it sells for at the end of the term, less a selling cost in per cent of that. */
    public record Resale(ResaleValue value, Percent sellingCost) {}

    /** The value over time: a yearly loss, or points in time. */
    public sealed interface ResaleValue permits YearlyLoss, Points {}

    /** Loses this share of its value a year; negative where it gains. */
    public record YearlyLoss(Percent loss) implements ResaleValue {}

    /** Values at months, linear between them and level after the last; a missing month 0 means the price. */
    public record Points(List<Point> points) implements ResaleValue {
        public Points {
            points = List.copyOf(points);
        }
    }

    public record Point(int months, Money value) {}

    /**
     * Yearly costs of having it: insurance and storage.
     *
     * @param insurancePerYear of the value insured
     * @param insured that value; empty for the price
     */
    public record Holding(Percent insurancePerYear, Money storagePerYear, Optional<Money> insured) {
        /** Insured at its price. */
        public Holding(Percent insurancePerYear, Money storagePerYear) {
            this(insurancePerYear, storagePerYear, Optional.empty());
        }
    }

    /** The value that the insurance is reckoned on. */
    public Money insuredValue() {
        return holding.insured().orElse(price);
    }

    public record Service(int everyMonths, Money cost) {}

    /** Income from letting it to others: days a year at a rate, of which the owner keeps a share. */
    public record Letting(BigDecimal daysPerYear, Money dayRate, Percent ownerShare) {}
}
