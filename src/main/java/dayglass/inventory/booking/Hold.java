package dayglass.inventory.booking;

import dayglass.house.Person;
import dayglass.inventory.Unit;
import java.time.Instant;

/**
 * A wish in line for a unit; it occupies nothing and lapses by itself.
 *
 * @param rank 1 for a first hold, 2 for a second
 * @param expires when it lapses
 * @param subject for whom, one line
 * @param enteredBy who took it down, and when: {@code enteredAt}
 */
public record Hold(
        Unit.Id unit,
        Instant out,
        Instant back,
        int rank,
        Instant expires,
        String subject,
        Person.Id enteredBy,
        Instant enteredAt) {
    /** The lowest place in line. */
    public static final int MOST_RANK = 9;

    /** The number of a hold. */
    public record Id(long number) implements dayglass.base.Id {}
}
