package dayglass.desk.rental;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.desk.price.PricedLine;
import dayglass.inventory.booking.Whereabouts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Records that what a rental rents in was ordered and that it was got. Each is taken back as long as nothing builds on it:
 * the order until it is in the house or in the books, both until the rental ends.
 */
public final class RentIn {
    private final Rentals rentals;
    private final OrdersInBooks books;
    private final Whereabouts whereabouts;

    public RentIn(Rentals rentals, OrdersInBooks books, Whereabouts whereabouts) {
        this.rentals = rentals;
        this.books = books;
        this.whereabouts = whereabouts;
    }

    /**
     * What is said of an order.
     *
     * @param line the priced line, from 0
     */
    public record Said(int line, String number, String words) {}

    public OrdersInBooks books() {
        return books;
    }

    public Outcome<Stored<Rental.Id, Rental>> order(Stored<Rental.Id, Rental> based, Said said) {
        return onLine(based, said.line(), () -> {
            Optional<SupplierOrder> before = based.facts().orderOf(said.line());
            return before.isPresent()
                    ? RunRental.refused(
                            "It was ordered already, as " + before.get().number() + ".")
                    : change(
                            based,
                            said.line(),
                            Optional.of(new SupplierOrder(
                                    said.line(), said.number(), said.words(), noted(), Optional.empty())));
        });
    }

    public Outcome<Stored<Rental.Id, Rental>> undoOrder(Stored<Rental.Id, Rental> based, int line) {
        return ordered(based, line, order -> {
            if (order.got().isPresent()) {
                return RunRental.refused("It is in the house: take that back first.");
            }
            return Optional.ofNullable(books.of(based.id()).get(line))
                    .<Outcome<Stored<Rental.Id, Rental>>>map(entry -> RunRental.refused(entry.why()))
                    .orElseGet(() -> change(based, line, Optional.empty()));
        });
    }

    public Outcome<Stored<Rental.Id, Rental>> got(Stored<Rental.Id, Rental> based, int line) {
        return ordered(
                based,
                line,
                order -> order.got().isPresent()
                        ? RunRental.refused("It is in the house already.")
                        : change(based, line, Optional.of(order.got(noted()))));
    }

    public Outcome<Stored<Rental.Id, Rental>> undoGot(Stored<Rental.Id, Rental> based, int line) {
        return ordered(
                based,
                line,
                order -> order.got().isEmpty()
                        ? RunRental.refused("It is not in the house.")
                        : change(based, line, Optional.of(order.notGot())));
    }

    /** What is done to an order. */
    private interface Deed {
        Outcome<Stored<Rental.Id, Rental>> to(SupplierOrder order);
    }

    private Outcome<Stored<Rental.Id, Rental>> ordered(Stored<Rental.Id, Rental> based, int line, Deed deed) {
        return onLine(
                based,
                line,
                () -> based.facts()
                        .orderOf(line)
                        .map(deed::to)
                        .orElseGet(() ->
                                RunRental.refused("It was not ordered yet: say so first, with the order's number.")));
    }

    private Outcome<Stored<Rental.Id, Rental>> onLine(
            Stored<Rental.Id, Rental> based, int line, Supplier<Outcome<Stored<Rental.Id, Rental>>> work) {
        List<PricedLine> lines = based.facts().promise().price().lines();
        if (line < 0 || line >= lines.size() || lines.get(line).rentedIn().isEmpty()) {
            return Outcome.faulty("/line", "must be a line that is rented in; they are counted from 0");
        }
        return based.facts().ending().isPresent()
                ? RunRental.refused("The rental has ended.")
                : whereabouts.around().transactions().atomically(work);
    }

    private Outcome<Stored<Rental.Id, Rental>> change(
            Stored<Rental.Id, Rental> based, int line, Optional<SupplierOrder> now) {
        List<SupplierOrder> orders = new ArrayList<>(based.facts().orders());
        orders.removeIf(order -> order.line() == line);
        now.ifPresent(orders::add);
        return rentals.change(
                new Stored<>(based.id(), based.version(), based.facts().ordering(orders)));
    }

    private SupplierOrder.Noted noted() {
        return new SupplierOrder.Noted(
                whereabouts.whoActs().now(), whereabouts.clock().instant());
    }
}
