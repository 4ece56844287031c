package dayglass.inventory.life;

import dayglass.base.Stored;
import dayglass.house.Change;
import dayglass.inventory.LensSets;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.condition.ConditionNote;
import java.util.List;
import java.util.Optional;

/**
 * Everything that is kept of one unit.
 *
 * @param entered by whom and when it was put on the shelf; empty where that was before changes were kept
 */
public record UnitRecords(
        Unit unit,
        Optional<Change> entered,
        List<Stored<ConditionNote.Id, ConditionNote>> notes,
        List<Stored<Occupation.Id, Occupation>> occupations,
        List<OccupationVersions.Version> versions,
        List<HandOver.KeptOverride> overrides,
        List<LensSets.Joined> sets) {
    public UnitRecords {
        notes = List.copyOf(notes);
        occupations = List.copyOf(occupations);
        versions = List.copyOf(versions);
        overrides = List.copyOf(overrides);
        sets = List.copyOf(sets);
    }
}
