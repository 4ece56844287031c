package dayglass.inventory.agenda;

import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.util.Map;

/** Which bookings belong together, so that they are told as one. */
@FunctionalInterface
public interface BookingGroups {
    /** Of bookings that were not over at a moment; one that belongs with no other may be missing. */
    Map<Occupation.Id, Group> since(Instant moment);

    /**
     * What bookings belong to.
     *
     * @param key its own, and the same whenever it is asked for
     * @param title one line
     * @param about further lines; may be empty
     */
    record Group(String key, String title, String about) {}
}
