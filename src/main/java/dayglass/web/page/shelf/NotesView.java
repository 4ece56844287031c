package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.condition.Condition;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.Health;
import dayglass.inventory.condition.Observation;
import dayglass.inventory.condition.Part;
import dayglass.inventory.condition.Severity;
import dayglass.inventory.picture.Pictures;
import dayglass.web.api.inventory.condition.NoteJson;
import dayglass.web.api.inventory.condition.PictureApi;
import dayglass.web.page.picture.Words;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * A unit's notes as they are shown, the newest first; a part of any page of the unit.
 *
 * @param unit the unit's number
 * @param health the condition now, in words
 * @param healthy nothing stands
 * @param because what says so, the worst first
 * @param standing findings that a new note may resolve
 */
public record NotesView(
        long unit, String health, boolean healthy, List<String> because, List<Standing> standing, List<Note> notes) {

    public NotesView {
        because = List.copyOf(because);
        standing = List.copyOf(standing);
        notes = List.copyOf(notes);
    }

    /** A finding that stands. */
    public record Standing(long id, String words) {}

    /**
     * One note.
     *
     * @param resolved by which note; empty while it stands
     */
    public record Note(
            long id,
            String who,
            String when,
            String what,
            String severity,
            String words,
            String resolves,
            String resolved,
            List<Image> images) {
        public Note {
            images = List.copyOf(images);
        }
    }

    /** A picture: a small preview that leads to a large one, with the original behind it. */
    public record Image(String small, String large, String original, int width, int height, String words) {}

    static NotesView of(Unit.Id unit, List<Stored<ConditionNote.Id, ConditionNote>> notes, Household household) {
        Condition now = Condition.now(notes);
        ZoneId zone = household.settings().now().facts().zone();
        Map<Person.Id, String> names = household.names();
        return new NotesView(
                unit.number(),
                words(now),
                now.health() == Health.HEALTHY,
                now.because().stream().map(note -> briefly(note.facts().seen())).toList(),
                Condition.standing(notes).stream()
                        .map(note -> new Standing(
                                note.id().number(), briefly(note.facts().seen())))
                        .toList(),
                notes.stream()
                        .sorted(Comparator.comparing((Stored<ConditionNote.Id, ConditionNote> note) ->
                                        note.id().number())
                                .reversed())
                        .map(note -> note(note, notes, names, zone))
                        .toList());
    }

    private static String words(Condition now) {
        return switch (now.health()) {
            case HEALTHY -> "Healthy";
            case WARNING -> "May go out with a warning";
            case NOT_HEALTHY ->
                now.quarantined() ? "Quarantined: not to be promised" : "Not healthy: not to be promised";
        };
    }

    private static String briefly(Observation seen) {
        return seen.finding() + ", " + seen.part().word() + ", severity "
                + seen.severity().grade() + (seen.quarantine() ? ", quarantine" : "");
    }

    private static Note note(
            Stored<ConditionNote.Id, ConditionNote> stored,
            List<Stored<ConditionNote.Id, ConditionNote>> all,
            Map<Person.Id, String> names,
            ZoneId zone) {
        ConditionNote note = stored.facts();
        Observation seen = note.seen();
        return new Note(
                stored.id().number(),
                names.getOrDefault(note.by(), "person " + note.by().number()),
                Words.moment(note.notedAt(), zone),
                seen.finding() + ", " + seen.part().word() + (seen.quarantine() ? ", quarantine" : ""),
                seen.severity().grade() + ": " + seen.severity().words(),
                seen.words(),
                note.resolves().isEmpty() ? "" : "resolves " + numbers(note.resolves()),
                NoteJson.resolvedBy(stored.id(), all)
                        .map(by -> "resolved by note " + by.number())
                        .orElse(""),
                note.pictures().stream()
                        .map(picture -> new Image(
                                PictureApi.address(picture) + "?width=" + Pictures.PREVIEW_WIDTHS.get(0),
                                PictureApi.address(picture) + "?width=" + Pictures.PREVIEW_WIDTHS.get(1),
                                PictureApi.address(picture),
                                picture.width(),
                                picture.height(),
                                seen.finding() + " on the " + seen.part().word()))
                        .toList());
    }

    private static String numbers(List<ConditionNote.Id> ids) {
        return (ids.size() == 1 ? "note " : "notes ")
                + String.join(
                        ", ",
                        ids.stream().map(id -> String.valueOf(id.number())).toList());
    }

    /** For the form: where something may be seen. */
    public static List<String> parts() {
        return Arrays.stream(Part.values()).map(Part::word).toList();
    }

    /** For the form: how bad it may be, from nothing to unusable. */
    public static List<Severity> severities() {
        return List.of(Severity.values());
    }
}
