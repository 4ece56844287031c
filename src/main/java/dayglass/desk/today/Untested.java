package dayglass.desk.today;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.UnitState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What has to be looked at: units that came back and of which nobody noted anything since, as they are inspected before the
 * next booking (common practice), and those with a warning that go out on the day.
 */
final class Untested {
    private static final Comparator<Today.ToTest> NEXT_FIRST = Comparator.comparing(
                    (Today.ToTest each) -> each.next().map(Today.Next::out).orElse(Instant.MAX))
            .thenComparing(each -> each.piece().tag());

    private final Gathered day;
    private final Occupations occupations;

    Untested(Gathered day, Occupations occupations) {
        this.day = day;
        this.occupations = occupations;
    }

    List<Today.ToTest> all() {
        Map<Unit.Id, Stored<Occupation.Id, Occupation>> units = new LinkedHashMap<>();
        Map<Unit.Id, Instant> cameBack = new LinkedHashMap<>();
        for (Stored<Occupation.Id, Occupation> last : occupations.notSeenSince()) {
            Unit.Id unit = last.facts().unit();
            if (day.states.containsKey(unit)) {
                units.put(unit, last);
                last.facts().handling().cameBack().ifPresent(at -> cameBack.put(unit, at));
            }
        }
        day.bookings.values().stream()
                .filter(this::goesWithAWarning)
                .forEach(booking -> units.putIfAbsent(booking.facts().unit(), booking));
        Map<Unit.Id, Today.Next> next = next(List.copyOf(units.keySet()));
        List<Today.ToTest> all = new ArrayList<>();
        units.forEach((unit, booking) -> all.add(new Today.ToTest(
                day.piece(booking),
                Optional.ofNullable(cameBack.get(unit)),
                warned(unit),
                Optional.ofNullable(next.get(unit)))));
        all.sort(NEXT_FIRST);
        return all;
    }

    private boolean goesWithAWarning(Stored<Occupation.Id, Occupation> booking) {
        return booking.facts().handling().wentOut().isEmpty()
                && day.during(booking.facts().stay().out())
                && warned(booking.facts().unit());
    }

    /** One that is not healthy does not go, and is told as such. */
    private boolean warned(Unit.Id unit) {
        UnitState state = day.states.get(unit);
        return state != null && state.worstFinding() > 0 && state.healthy();
    }

    private Map<Unit.Id, Today.Next> next(List<Unit.Id> units) {
        Map<Unit.Id, Today.Next> next = new LinkedHashMap<>();
        for (Stored<Occupation.Id, Occupation> booking : occupations.ahead(units, day.now)) {
            boolean waits = booking.facts().kind() == Occupation.Kind.BOOKING
                    && booking.facts().handling().wentOut().isEmpty()
                    && booking.facts().stay().back().isAfter(day.now);
            if (waits) {
                next.putIfAbsent(
                        booking.facts().unit(),
                        new Today.Next(booking.facts().stay().out(), booking.id(), day.whose(booking)));
            }
        }
        return next;
    }
}
