package dayglass.books.list;

import dayglass.base.DateRange;
import dayglass.base.Money;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that a job has in its hands and that has to be insured.
 *
 * @param owner whose it is; empty for the house's own
 * @param held the days that it is needed for
 * @param value what replacing it would cost; empty where nobody said, so that the owner must be asked
 * @param valueSetOn when that was said
 */
public record InsuredLine(
        String what,
        String tag,
        String serial,
        String owner,
        DateRange held,
        Optional<Money> value,
        Optional<LocalDate> valueSetOn) {}
