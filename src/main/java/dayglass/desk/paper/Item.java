package dayglass.desk.paper;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Charge;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A line of a quote or an invoice, which is the sum of its parts.
 *
 * @param parts at least one; a discount is below nothing
 */
public record Item(String what, Optional<DateRange> dates, List<Part> parts) {
    public Item {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a line is for something");
        }
    }

    /** What a part is, in the order in which a line is read. */
    public enum Sort {
        HIRE,
        DISCOUNT,
        TRIP,
        CHARGE,
        WAIVER,
        TAX;

        /** As it is written: {@code hire}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * An amount with its name.
     *
     * @param name of an add-on or a tax its own, else the word of its sort or of the charge
     */
    public record Part(Sort sort, String name, Money amount) {}

    /** What is let, by the promise. */
    public static Item of(PricedLine line) {
        List<Part> parts = new ArrayList<>();
        parts.add(part(Sort.HIRE, line.hire()));
        if (line.discount().signum() != 0) {
            parts.add(part(Sort.DISCOUNT, line.discount().times(-1)));
        }
        if (line.trip().signum() != 0) {
            parts.add(part(Sort.TRIP, line.trip()));
        }
        for (PricedLine.AddOn addOn : line.addOns()) {
            Sort sort = switch (addOn.mark()) {
                case CHARGE -> Sort.CHARGE;
                case WAIVER -> Sort.WAIVER;
                case TAX -> Sort.TAX;
            };
            parts.add(new Part(sort, addOn.name(), addOn.amount()));
        }
        return new Item(line.what(), Optional.of(line.dates()), parts);
    }

    /** What is charged beside the promise. */
    public static Item of(Charge charge) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(Sort.CHARGE, charge.kind().word(), charge.net()));
        charge.taxes().forEach(tax -> parts.add(new Part(Sort.TAX, tax.code(), tax.amount())));
        return new Item(charge.words(), Optional.empty(), parts);
    }

    private static Part part(Sort sort, Money amount) {
        return new Part(sort, sort.word(), amount);
    }

    /** The parts of a sort together. */
    public Money sum(Sort sort) {
        return parts.stream()
                .filter(part -> part.sort() == sort)
                .map(Part::amount)
                .reduce(zero(), Money::plus);
    }

    public Money total() {
        return parts.stream().map(Part::amount).reduce(zero(), Money::plus);
    }

    /** All but its taxes. */
    public Money net() {
        return total().minus(sum(Sort.TAX));
    }

    private Money zero() {
        return Money.zero(parts.get(0).amount().currency());
    }
}
