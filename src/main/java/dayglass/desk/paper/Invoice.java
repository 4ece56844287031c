package dayglass.desk.paper;

import dayglass.base.Money;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The invoice of a rental that ended: its lines add up to what is owed.
 *
 * @param number from 1 on without gaps
 * @param hired what was let, as promised; empty where the rental was cancelled
 * @param charged beside that, in the order of the rental's charges
 */
public record Invoice(long number, Rental rental, List<Item> hired, List<Item> charged) {
    public Invoice {
        hired = List.copyOf(hired);
        charged = List.copyOf(charged);
        Money total = Stream.concat(hired.stream(), charged.stream())
                .map(Item::total)
                .reduce(Money.zero(rental.owed().currency()), Money::plus);
        if (!total.equals(rental.owed())) {
            throw new IllegalArgumentException(
                    "the lines of invoice " + number + " come to " + total + ", not to " + rental.owed());
        }
    }

    /** Empty while the rental goes on, and where it was cancelled at no cost. */
    public static Optional<Invoice> of(Rental rental) {
        return rental.ending()
                .flatMap(ending -> ending.invoice().map(number -> {
                    List<Item> hired = ending.cancelled()
                            ? List.of()
                            : rental.promise().price().lines().stream()
                                    .map(Item::of)
                                    .toList();
                    return new Invoice(
                            number,
                            rental,
                            hired,
                            rental.charges().stream().map(Item::of).toList());
                }));
    }

    /** Why a rental has none, and when it will. */
    public static String whyNone(Rental rental) {
        return rental.ending().isPresent()
                ? "Rental " + rental.number() + " was cancelled at no cost, so it has no invoice."
                : "Rental " + rental.number()
                        + " has no invoice yet: take back what is out and settle the rental, then it has one.";
    }

    private Stream<Item> items() {
        return Stream.concat(hired.stream(), charged.stream());
    }

    /** What is owed in all. */
    public Money total() {
        return rental.owed();
    }

    /** All but the taxes that stand apart. */
    public Money net() {
        return items().map(Item::net).reduce(Money.zero(total().currency()), Money::plus);
    }

    /** The taxes that stand apart, by code. */
    public Map<String, Money> taxes() {
        Map<String, Money> taxes = new LinkedHashMap<>();
        items().flatMap(item -> item.parts().stream())
                .filter(part -> part.sort() == Item.Sort.TAX)
                .forEach(part -> taxes.merge(part.name(), part.amount(), Money::plus));
        return taxes;
    }

    /** The amount of an extension that was charged before their taxes stood apart holds them. */
    public boolean hidesTaxes() {
        return rental.charges().stream()
                .filter(charge ->
                        charge.kind() == Charge.Kind.EXTENSION && charge.taxes().isEmpty())
                .flatMap(charge -> charge.line().stream())
                .anyMatch(line ->
                        !rental.promise().price().lines().get(line).taxes().isEmpty());
    }

    /** What is left to pay; below nothing where it has to be paid back. */
    public Money toPay() {
        return rental.toPay();
    }
}
