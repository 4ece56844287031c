package dayglass.inventory.booking;

import dayglass.house.House;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Why a unit cannot be promised for a stay, and what to mind where it can. Rules apart from what occupies it. */
final class Promise {
    private Promise() {}

    /** What forbids it, in sentences; empty where nothing does. */
    static List<String> obstacles(UnitState unit, Stay stay, House house, Instant now) {
        List<String> obstacles = new ArrayList<>();
        unit.heldTo()
                .filter(last -> stay.back().isAfter(endOf(last, house)))
                .ifPresent(last -> obstacles.add(unit.tag() + " is held to " + MomentWords.day(last)
                        + " only; ask for it back by then, or prolong what it is held by."));
        if (unit.quarantined()) {
            obstacles.add(unit.ailment() + " until a note resolves it.");
        } else if (!unit.healthy()) {
            obstacles.add(unit.ailment() + "; a note must resolve it before it is promised.");
        }
        unit.dueBack()
                .filter(due -> !due.isAfter(now) && stay.out().isBefore(now.plus(house.turnaround())))
                .ifPresent(due -> obstacles.add(
                        unit.tag() + " is still out and was due back " + MomentWords.of(due, house.zone()) + "."));
        return obstacles;
    }

    /** What to mind, in sentences. */
    static List<String> warnings(UnitState unit, House house, Instant now) {
        List<String> warnings = new ArrayList<>();
        if (unit.healthy() && unit.worstFinding() > 0) {
            warnings.add("It has an unresolved finding of severity " + unit.worstFinding() + ".");
        }
        unit.dueBack()
                .ifPresent(due -> warnings.add(
                        due.isAfter(now)
                                ? "It is out and due back " + MomentWords.of(due, house.zone()) + "."
                                : "It is late: it was due back " + MomentWords.of(due, house.zone()) + "."));
        return warnings;
    }

    /** A unit held to a day serves on it and is back at the usual time on the morning after. */
    private static Instant endOf(LocalDate day, House house) {
        return FreeDays.use(day, day, house).back();
    }
}
