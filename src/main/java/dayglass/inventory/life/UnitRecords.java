package dayglass.inventory.life;

import dayglass.base.Stored;
import dayglass.inventory.LensSets;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Whereabouts;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.ConditionNotes;
import java.util.List;
import java.util.Optional;

/** Everything that is kept of one unit. */
public record UnitRecords(
        Unit unit,
        List<Stored<ConditionNote.Id, ConditionNote>> notes,
        List<Stored<Occupation.Id, Occupation>> occupations,
        List<HandOver.KeptOverride> overrides,
        List<LensSets.Joined> sets) {
    private static final int ALL = Integer.MAX_VALUE;

    public UnitRecords {
        notes = List.copyOf(notes);
        occupations = List.copyOf(occupations);
        overrides = List.copyOf(overrides);
        sets = List.copyOf(sets);
    }

    /** Gathers them. */
    public static UnitRecords of(
            Stored<Unit.Id, Unit> unit, Shelf shelf, ConditionNotes notes, Whereabouts whereabouts) {
        List<Stored<Occupation.Id, Occupation>> occupations = whereabouts
                .occupations()
                .list(
                        new Occupations.Which(
                                Optional.empty(), Optional.of(unit.id()), Optional.empty(), Optional.empty()),
                        Optional.empty(),
                        ALL);
        return new UnitRecords(
                unit.facts(),
                notes.of(unit.id()),
                occupations,
                occupations.stream()
                        .filter(each -> each.facts().handling().wentOut().isPresent())
                        .flatMap(each -> whereabouts.door().overrides().of(each.id()).stream())
                        .toList(),
                shelf.sets().historyOf(unit.id()));
    }
}
