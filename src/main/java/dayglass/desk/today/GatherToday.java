package dayglass.desk.today;

import dayglass.base.Stored;
import dayglass.desk.rental.Desk;
import dayglass.house.House;
import dayglass.inventory.Shelf;
import dayglass.inventory.agenda.Agenda;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Reads what a day asks of the desk. */
public final class GatherToday {
    /** How far ahead the desk looks for what has still to be got. */
    public static final int DAYS_AHEAD = 7;

    private final Desk desk;
    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Agenda agenda;

    public GatherToday(Desk desk, Shelf shelf, Whereabouts whereabouts, Agenda agenda) {
        this.desk = desk;
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.agenda = agenda;
    }

    /** The day that it is on the house's clock. */
    public LocalDate today() {
        House house = whereabouts.settings().now().facts();
        return whereabouts.clock().instant().atZone(house.zone()).toLocalDate();
    }

    public Today of(LocalDate day) {
        House house = whereabouts.settings().now().facts();
        Instant now = whereabouts.clock().instant();
        Gathered gathered = gathered(day, house, now);
        Instant end = end(day, house);
        Passages passages = new Passages(gathered);
        return new Today(
                day,
                now,
                house.zone(),
                passages.out(),
                passages.back(),
                new LateUnits(gathered, desk.letOut()).all(),
                agenda.toGiveBack().stream()
                        .filter(each -> !each.rented().dueBackOn().isAfter(day))
                        .toList(),
                new Shortages(gathered, whereabouts, end).all(),
                new Untested(gathered, whereabouts.occupations()).all());
    }

    private static Instant end(LocalDate day, House house) {
        return day.plusDays(DAYS_AHEAD).atStartOfDay(house.zone()).toInstant();
    }

    private Gathered gathered(LocalDate day, House house, Instant now) {
        Instant from = day.atStartOfDay(house.zone()).toInstant();
        Gathered gathered = new Gathered(day, house, now, desk.rentals().standingSince(from), shelf);
        // What is over at the very moment at which the day begins comes back on it.
        for (Stored<Occupation.Id, Occupation> each :
                whereabouts.occupations().between(from.minusSeconds(1), end(day, house))) {
            if (each.facts().kind() == Occupation.Kind.BOOKING) {
                gathered.bookings.put(each.id(), each);
            }
        }
        whereabouts
                .units()
                .during(new Stay(gathered.from, gathered.until, gathered.until), Optional.empty())
                .forEach(state -> gathered.states.put(state.unit(), state));
        return gathered;
    }
}
