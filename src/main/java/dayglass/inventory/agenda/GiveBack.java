package dayglass.inventory.agenda;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A rented-in unit that must be given back.
 *
 * @param daysLate whole days after the day on which it was due; 0 up to that day
 * @param beyond the first booking that keeps it past that day
 */
public record GiveBack(
        Unit.Id unit,
        String tag,
        Holding.RentedIn rented,
        int daysLate,
        Optional<Stored<Occupation.Id, Occupation>> beyond) {

    /** What the days late cost by the agreement, where it says so. */
    public Optional<Money> lateCost() {
        return rented.lateDay().map(day -> day.times(daysLate));
    }

    /** The first due first, then by tag. */
    static final Comparator<GiveBack> FIRST_DUE =
            Comparator.comparing((GiveBack each) -> each.rented().dueBackOn()).thenComparing(GiveBack::tag);

    /**
     * Of a unit that is rented in and still here.
     *
     * @param ahead what occupies it from today on, by time
     */
    static Optional<GiveBack> of(
            Stored<Unit.Id, Unit> unit, List<Stored<Occupation.Id, Occupation>> ahead, House house, LocalDate today) {
        return unit.facts()
                .holding()
                .<Optional<Holding.RentedIn>>fold(
                        owned -> Optional.empty(), Optional::of, (Holding.Consigned lent) -> Optional.empty())
                .filter(rented -> unit.facts().departure().isEmpty())
                .map(rented -> new GiveBack(
                        unit.id(),
                        unit.facts().tag(),
                        rented,
                        Math.max(0, Math.toIntExact(ChronoUnit.DAYS.between(rented.dueBackOn(), today))),
                        ahead.stream()
                                .filter(each -> each.facts().kind() == Kind.BOOKING)
                                .filter(each -> each.facts()
                                        .stay()
                                        .back()
                                        .atZone(house.zone())
                                        .toLocalDate()
                                        .isAfter(rented.dueBackOn()))
                                .findFirst()));
    }
}
