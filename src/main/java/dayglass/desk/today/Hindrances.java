package dayglass.desk.today;

import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Obstacle;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.UnitState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Why booked units cannot go out when they are to, as far as it is known now. */
final class Hindrances {
    private final Gathered day;
    private final List<HandOver.Rule> rules;

    /** @param units that may be asked for */
    Hindrances(Gathered day, HandOver.Door door, Set<Unit.Id> units) {
        this.day = day;
        this.rules = door.rules().stream().map(rule -> rule.ofAll(units)).toList();
    }

    /** Whole sentences; none where nothing stands in the way. */
    List<String> of(Occupation booking) {
        UnitState state = day.states.get(booking.unit());
        if (state == null) {
            return List.of("It has left for good.");
        }
        Instant out = booking.stay().out();
        Instant at = out.isBefore(day.now) ? day.now : out;
        List<String> why = new ArrayList<>();
        if (state.quarantined()) {
            why.add("It is in quarantine.");
        } else if (!state.healthy()) {
            why.add("It has an unresolved finding of severity " + state.worstFinding() + ".");
        }
        // What is due in time is expected to come.
        state.dueBack()
                .filter(due -> due.isBefore(day.now) || due.isAfter(at))
                .ifPresent(due -> why.add("It is still out on another booking."));
        state.heldTo()
                .filter(last -> at.atZone(day.house.zone()).toLocalDate().isAfter(last))
                .ifPresent(last -> why.add("The house holds it to " + last + " only."));
        rules.stream()
                .flatMap(rule -> rule.against(state, at).stream())
                .map(Obstacle::why)
                .forEach(why::add);
        return why;
    }
}
