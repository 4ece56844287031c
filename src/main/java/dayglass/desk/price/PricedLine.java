package dayglass.desk.price;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.inventory.Unit;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one rental period of a package costs: total = hire - discount + trip + add-ons.
 *
 * @param line the line of the package that it is for, from 0; the first, where a set serves several
 * @param units those that go out, in the order of the set; empty where it is rented in for the customer
 * @param how the blocks that make up the hire, in words
 * @param hire by the card, with its own discount for length and at least its minimum
 * @param off the desk's discount, of the hire
 * @param lateDay what a day more comes to for one that is late, add-ons included and taxes apart
 * @param rate the line of the card that it was priced by, which an extension is priced by again
 * @param rentedIn from whom and at what cost, where it is not from the shelf
 */
public record PricedLine(
        int line,
        String what,
        List<Unit.Id> units,
        DateRange dates,
        String how,
        Money hire,
        Percent off,
        Money discount,
        Money trip,
        List<AddOn> addOns,
        Money total,
        Money lateDay,
        Rate rate,
        Optional<RentedIn> rentedIn) {
    public PricedLine {
        units = List.copyOf(units);
        addOns = List.copyOf(addOns);
    }

    /** An add-on as charged. */
    public record AddOn(String name, Mark mark, Money amount) {}

    /**
     * Where it comes from.
     *
     * @param cost what the supplier charges, everything included
     * @param taxes those of the card that are in it, by code; what was priced before they stood apart tells none
     * @param foreign the same by a card in another currency, where it is one
     */
    public record RentedIn(String supplier, Money cost, Map<String, Money> taxes, Optional<Foreign> foreign) {
        public RentedIn {
            taxes = new LinkedHashMap<>(taxes);
        }

        /** What the supplier's own invoice is to come to, in the currency of the card. */
        public Money billed() {
            return foreign.map(Foreign::cost).orElse(cost);
        }

        /** The taxes in that, by code. */
        public Map<String, Money> billedTaxes() {
            return foreign.map(Foreign::taxes).orElse(taxes);
        }
    }

    /**
     * A cost before its conversion.
     *
     * @param cost by the prices as the card has them
     * @param taxes those that are in it, by code
     * @param rate the budget rate at which each of them was converted
     */
    public record Foreign(Money cost, Map<String, Money> taxes, BigDecimal rate) {
        public Foreign {
            taxes = new LinkedHashMap<>(taxes);
        }
    }

    /** Its taxes by code. */
    public Map<String, Money> taxes() {
        Map<String, Money> taxes = new LinkedHashMap<>();
        addOns.stream()
                .filter(addOn -> addOn.mark() == Mark.TAX)
                .forEach(addOn -> taxes.merge(addOn.name(), addOn.amount(), Money::plus));
        return taxes;
    }

    /** What the house keeps of what is rented in, before taxes: hire less discount and cost. */
    public Optional<Money> margin() {
        return rentedIn.map(from -> hire.minus(discount).minus(from.cost()));
    }
}
