package dayglass.web.api.inventory.condition;

import dayglass.base.Stored;
import dayglass.inventory.condition.Condition;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.Observation;
import dayglass.inventory.condition.Part;
import dayglass.inventory.condition.Severity;
import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.Pictures;
import dayglass.web.api.house.Moments;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Notes on the wire. */
public final class NoteJson {
    private static final int MOST_FINDING_CHARACTERS = 100;
    private static final int MOST_WORDS_CHARACTERS = 4000;

    private NoteJson() {}

    /** What a request says: what was seen, and what that resolves. */
    public record Sent(Observation seen, List<ConditionNote.Id> resolves) {
        public Sent {
            resolves = List.copyOf(resolves);
        }
    }

    public static Reader<Sent> reader() {
        return Fields.object(NoteJson::read);
    }

    private static Read<Sent> read(Fields fields) {
        Map<String, Part> parts = new LinkedHashMap<>();
        Arrays.stream(Part.values()).forEach(part -> parts.put(part.word(), part));
        Read<Part> part = fields.required("part", Readers.word(parts));
        Read<String> finding = fields.required("finding", Readers.text(MOST_FINDING_CHARACTERS));
        Read<Severity> severity =
                fields.required("severity", Readers.whole(0, Severity.MOST).map(Severity::of));
        Read<Boolean> quarantine = fields.optional("quarantine", Readers.yesOrNo(), false);
        Read<String> words = fields.optional("words", Readers.prose(MOST_WORDS_CHARACTERS), "");
        Read<List<ConditionNote.Id>> resolves =
                fields.optional("resolves", Readers.distinct(Ids.id(ConditionNote.Id::new)), List.of());
        return fields.build(() -> new Sent(
                new Observation(part.get(), finding.get().strip(), severity.get(), quarantine.get(), words.get()),
                resolves.get()));
    }

    static Json.Obj show(
            Stored<ConditionNote.Id, ConditionNote> stored,
            List<Stored<ConditionNote.Id, ConditionNote>> all,
            ZoneId zone) {
        ConditionNote note = stored.facts();
        Observation seen = note.seen();
        Json.Members members = Json.object()
                .put("id", stored.id().number())
                .put("unitId", note.unit().number())
                .put("notedAt", Moments.text(note.notedAt(), zone))
                .put("personId", note.by().number())
                .put("part", seen.part().word())
                .put("finding", seen.finding())
                .put("severity", seen.severity().grade())
                .put("quarantine", seen.quarantine())
                .put("words", seen.words())
                .put("resolves", Ids.list(note.resolves()));
        resolvedBy(stored.id(), all).ifPresent(by -> members.put("resolvedBy", by.number()));
        return members.put(
                        "pictures",
                        Json.list(
                                note.pictures().stream().map(NoteJson::picture).toList()))
                .build();
    }

    /** The later note that says a finding no longer stands. */
    public static Optional<ConditionNote.Id> resolvedBy(
            ConditionNote.Id id, List<Stored<ConditionNote.Id, ConditionNote>> all) {
        return all.stream()
                .filter(note -> note.facts().resolves().contains(id))
                .map(Stored::id)
                .findFirst();
    }

    private static Json picture(Picture picture) {
        List<Json> previews = Pictures.PREVIEW_WIDTHS.stream()
                .map(width -> Json.text(PictureApi.address(picture) + "?width=" + width))
                .toList();
        return Json.object()
                .put("address", PictureApi.address(picture))
                .put("mediaType", picture.type().mediaType())
                .put("width", picture.width())
                .put("height", picture.height())
                .put("previews", Json.list(previews))
                .build();
    }

    static Json condition(Condition condition) {
        return Json.object()
                .put("health", condition.health().word())
                .put("quarantined", condition.quarantined())
                .put(
                        "because",
                        Ids.list(condition.because().stream().map(Stored::id).toList()))
                .build();
    }
}
