package dayglass.inventory.condition;

import dayglass.base.Stored;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A unit's condition: the worst finding that no later note resolved.
 *
 * @param because the notes that say so, the worst first; empty where it is healthy
 * @param quarantined one of them keeps the unit in whatever its severity
 */
public record Condition(Health health, List<Stored<ConditionNote.Id, ConditionNote>> because, boolean quarantined) {
    private static final Comparator<Stored<ConditionNote.Id, ConditionNote>> WORST_FIRST = Comparator.comparing(
                    (Stored<ConditionNote.Id, ConditionNote> note) ->
                            note.facts().seen().severity())
            .thenComparing(note -> note.facts().seen().quarantine())
            .thenComparing(note -> note.id().number())
            .reversed();

    public Condition {
        because = List.copyOf(because);
    }

    /** The condition that all notes of one unit make, in whatever order they come. */
    public static Condition now(List<Stored<ConditionNote.Id, ConditionNote>> notes) {
        List<Stored<ConditionNote.Id, ConditionNote>> standing = standing(notes);
        Health worst = standing.stream()
                .map(note -> says(note.facts().seen()))
                .max(Comparator.naturalOrder())
                .orElse(Health.HEALTHY);
        return new Condition(
                worst,
                worst == Health.HEALTHY
                        ? List.of()
                        : standing.stream()
                                .filter(note -> says(note.facts().seen()) == worst)
                                .toList(),
                standing.stream().anyMatch(note -> note.facts().seen().quarantine()));
    }

    /** The notes that no later one resolved and that say anything but healthy, the worst first. */
    public static List<Stored<ConditionNote.Id, ConditionNote>> standing(
            List<Stored<ConditionNote.Id, ConditionNote>> notes) {
        Set<ConditionNote.Id> resolved = new HashSet<>();
        notes.forEach(note -> resolved.addAll(note.facts().resolves()));
        return notes.stream()
                .filter(note -> !resolved.contains(note.id()))
                .filter(note -> says(note.facts().seen()) != Health.HEALTHY)
                .sorted(WORST_FIRST)
                .toList();
    }

    static Health says(Observation seen) {
        return Health.of(seen.severity(), seen.quarantine());
    }
}
