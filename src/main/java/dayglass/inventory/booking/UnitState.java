package dayglass.inventory.booking;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What decides whether a unit can be promised for a stay.
 *
 * @param heldTo the last day on which it may serve: paid up to, consigned until, or the day before it left
 * @param busyUntil when what occupies it during the stay is over
 * @param outSince it is out of the house and due back then; late where that is past
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
        Optional<Instant> outSince,
        int worstFinding,
        boolean quarantined) {
    private static final int NOT_HEALTHY = 3;

    /** Not to be promised and not to be handed over. */
    public boolean healthy() {
        return worstFinding < NOT_HEALTHY && !quarantined;
    }

    /** Facts of many units at once. */
    public interface Source {
        /** Every unit that has not left for good, by tag; those of one model where one is named. */
        List<UnitState> during(Stay stay, Optional<LensModel.Id> model);

        /** One unit. */
        Optional<UnitState> of(Unit.Id unit, Stay stay);
    }
}
