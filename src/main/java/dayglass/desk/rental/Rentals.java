package dayglass.desk.rental;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.desk.quote.Quote;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Every rental; none is ever removed, and the database takes no number but the next. */
public interface Rentals extends VersionedCollection<Rental.Id, Rental> {
    /** The number that the next one has, as long as the transaction lasts. */
    long nextNumber();

    /** The number that the next invoice has, as long as the transaction lasts. */
    long nextInvoice();

    Optional<Stored<Rental.Id, Rental>> ofQuote(Quote.Id quote);

    /** Those that have not ended, by id. */
    List<Stored<Rental.Id, Rental>> open();

    /** Those that have not ended, and those that ended at a moment or after it, by id. */
    List<Stored<Rental.Id, Rental>> standingSince(Instant since);

    /** Those on which a unit is or was booked, by id. */
    List<Stored<Rental.Id, Rental>> ofUnit(Unit.Id unit);
}
