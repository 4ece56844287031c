package dayglass.inventory.life;

import dayglass.base.Stored;
import dayglass.house.Change;
import dayglass.house.Changes;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Whereabouts;
import dayglass.inventory.condition.ConditionNotes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Where everything lies that is kept of a unit. */
public record UnitArchive(
        Shelf shelf, ConditionNotes notes, Whereabouts whereabouts, OccupationVersions versions, Changes changes) {
    private static final int ALL = Integer.MAX_VALUE;

    /** Gathers what is kept of one unit. */
    public UnitRecords of(Stored<Unit.Id, Unit> unit) {
        List<Stored<Occupation.Id, Occupation>> occupations = whereabouts
                .occupations()
                .list(
                        new Occupations.Which(
                                Optional.empty(), Optional.of(unit.id()), Optional.empty(), Optional.empty()),
                        Optional.empty(),
                        ALL);
        return new UnitRecords(
                unit.facts(),
                entered(unit.id()),
                notes.of(unit.id()),
                occupations,
                versions.of(unit.id()),
                occupations.stream()
                        .filter(each -> each.facts().handling().wentOut().isPresent())
                        .flatMap(each -> whereabouts.door().overrides().of(each.id()).stream())
                        .toList(),
                shelf.sets().historyOf(unit.id()));
    }

    /**
     * Of many units at once what tells how much they were out and what the bench took, without what only a timeline
     * tells; of one that does not say when it came, all.
     */
    public Map<Unit.Id, UnitRecords> ofUse(List<Stored<Unit.Id, Unit>> units) {
        Map<Unit.Id, List<Stored<Occupation.Id, Occupation>>> occupations = new HashMap<>();
        whereabouts
                .occupations()
                .list(
                        new Occupations.Which(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                        Optional.empty(),
                        ALL)
                .forEach(each -> occupations
                        .computeIfAbsent(each.facts().unit(), unit -> new ArrayList<>())
                        .add(each));
        Map<Unit.Id, UnitRecords> records = new HashMap<>();
        for (Stored<Unit.Id, Unit> unit : units) {
            boolean known = unit.facts().heldFrom().isPresent();
            records.put(
                    unit.id(),
                    known
                            ? new UnitRecords(
                                    unit.facts(),
                                    Optional.empty(),
                                    List.of(),
                                    occupations.getOrDefault(unit.id(), List.of()),
                                    List.of(),
                                    List.of(),
                                    List.of())
                            : of(unit));
        }
        return records;
    }

    private Optional<Change> entered(Unit.Id unit) {
        return changes
                .list(new Changes.Of(Optional.of("unit"), OptionalLong.of(unit.number())), Optional.empty(), 1)
                .stream()
                .map(Stored::facts)
                .filter(first -> first.deed() == Change.Deed.ADDED)
                .findFirst();
    }
}
