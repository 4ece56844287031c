package dayglass.inventory.booking;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.condition.Health;
import dayglass.inventory.condition.Severity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What decides whether a unit can be promised for a stay.
 *
 * @param heldTo the last day on which it may serve: paid up to, consigned until, or the day before it left
 * @param busyUntil when what occupies it during the stay is over
 * @param dueBack when it is due, where it is out of the house; late where that is past
 * @param worstFinding the worst unresolved finding, 0 to 4
 * @param quarantined kept apart by a note
 */
public record UnitState(
        Unit.Id unit,
        String tag,
        Optional<LensModel.Id> model,
        Optional<LensSet.Id> set,
        Optional<LocalDate> heldTo,
        Optional<Instant> busyUntil,
        Optional<Instant> dueBack,
        int worstFinding,
        boolean quarantined) {
    /** Not to be promised and not to be handed over. */
    public boolean healthy() {
        return Health.of(Severity.of(worstFinding), quarantined) != Health.NOT_HEALTHY;
    }

    /** Why it is not healthy, without a full stop. */
    String ailment() {
        return quarantined ? tag + " is in quarantine" : tag + " has an unresolved finding of severity " + worstFinding;
    }

    /** Facts of many units at once. */
    public interface Source {
        /** Every unit that has not left for good, by tag; those of one model where one is named. */
        List<UnitState> during(Stay stay, Optional<LensModel.Id> model);

        /** Of every unit that has not left for good: those named and those of some models, by tag. */
        List<UnitState> during(Stay stay, Set<LensModel.Id> models, Set<Unit.Id> units);

        /** One unit. */
        Optional<UnitState> of(Unit.Id unit, Stay stay);
    }
}
