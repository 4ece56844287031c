package dayglass.desk.rental;

import dayglass.house.Person;
import java.time.Instant;
import java.util.Optional;

/**
 * A line of a rental that is rented in, ordered from its supplier.
 *
 * @param line the priced line, from 0
 * @param number of the order, as the supplier is told it
 * @param words what else was agreed; may be empty
 * @param got when it was in the house
 */
public record SupplierOrder(int line, String number, String words, Noted ordered, Optional<Noted> got) {
    /** Who said so, and when. */
    public record Noted(Person.Id by, Instant at) {}

    SupplierOrder got(Noted noted) {
        return new SupplierOrder(line, number, words, ordered, Optional.of(noted));
    }

    SupplierOrder notGot() {
        return new SupplierOrder(line, number, words, ordered, Optional.empty());
    }
}
