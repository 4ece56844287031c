package dayglass.desk.today;

import dayglass.base.Stored;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.Rentals;
import dayglass.inventory.agenda.BookingGroups;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/** Bookings by the rental that they belong to. */
public final class RentalGroups implements BookingGroups {
    private final Rentals rentals;

    public RentalGroups(Rentals rentals) {
        this.rentals = rentals;
    }

    @Override
    public Map<Occupation.Id, Group> since(Instant moment) {
        Map<Occupation.Id, Group> groups = new HashMap<>();
        for (Stored<Rental.Id, Rental> each : rentals.standingSince(moment)) {
            Rental rental = each.facts();
            Group group = new Group(
                    "rental " + rental.number(),
                    "rental " + rental.number() + ", " + rental.customer().name(),
                    rental.customer().production());
            rental.placed().forEach(placed -> groups.put(placed.booking(), group));
        }
        return groups;
    }
}
