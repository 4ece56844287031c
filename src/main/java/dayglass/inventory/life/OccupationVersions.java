package dayglass.inventory.life;

import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.util.List;

/** How a unit's bookings, bench visits and absences stood after each change; none is ever altered. */
public interface OccupationVersions {
    /** By the order in which they were entered. */
    List<Version> of(Unit.Id unit);

    /**
     * One of them after a change.
     *
     * @param at when the change was entered, and by whom: {@code by}
     * @param back when the unit was to be back
     */
    record Version(
            Occupation.Id occupation,
            Instant at,
            Person.Id by,
            Instant back,
            Occupation.Handling handling,
            boolean cancelled) {}
}
