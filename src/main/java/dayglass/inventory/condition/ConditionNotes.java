package dayglass.inventory.condition;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.picture.Picture;
import java.util.List;
import java.util.Optional;

/** Every note of every unit; kept for ever. */
public interface ConditionNotes {
    /** Refused where the unit is not there, or what it resolves is none of the unit's or resolved already. */
    Outcome<Stored<ConditionNote.Id, ConditionNote>> add(ConditionNote note);

    /** All notes of a unit, the oldest first. */
    List<Stored<ConditionNote.Id, ConditionNote>> of(Unit.Id unit);

    /** The picture with this SHA-256, where a note has it. */
    Optional<Picture> picture(String sha256);
}
