package dayglass.storage.inventory.condition;

import static dayglass.storage.schema.Tables.CONDITION_NOTE;
import static dayglass.storage.schema.Tables.CONDITION_PICTURE;
import static dayglass.storage.schema.Tables.CONDITION_RESOLVED;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.ConditionNotes;
import dayglass.inventory.condition.Observation;
import dayglass.inventory.condition.Part;
import dayglass.inventory.condition.Severity;
import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.PictureType;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.ConditionNoteRecord;
import dayglass.storage.schema.tables.records.ConditionPictureRecord;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** Notes as rows, which the database itself never lets anybody change or remove. */
public final class JooqConditionNotes implements ConditionNotes {
    private static final long ONLY_VERSION = 1;

    private final Database database;

    public JooqConditionNotes(Database database) {
        this.database = database;
    }

    @Override
    public Outcome<Stored<ConditionNote.Id, ConditionNote>> add(ConditionNote note) {
        return database.writing(sql -> {
            if (!sql.fetchExists(UNIT, UNIT.ID.eq(note.unit().number()))) {
                return Outcome.refused(
                        Problem.Code.NOT_FOUND,
                        "There is no unit with the id " + note.unit().number() + ".");
            }
            List<Fault> faults = faults(sql, note);
            if (!faults.isEmpty()) {
                return Outcome.refused(Problem.faulty(faults));
            }
            return Outcome.done(new Stored<>(insert(sql, note), ONLY_VERSION, note));
        });
    }

    private static List<Fault> faults(DSLContext sql, ConditionNote note) {
        List<Fault> faults = new ArrayList<>();
        for (int at = 0; at < note.resolves().size(); at++) {
            ConditionNote.Id id = note.resolves().get(at);
            String pointer = "/resolves/" + at;
            if (!sql.fetchExists(
                    CONDITION_NOTE,
                    CONDITION_NOTE.ID.eq(id.number()),
                    CONDITION_NOTE.UNIT_ID.eq(note.unit().number()))) {
                faults.add(new Fault(pointer, "this unit has no note with the id " + id.number()));
            } else if (note.resolves().indexOf(id) < at) {
                faults.add(new Fault(pointer, "stands in this list already"));
            } else {
                sql.selectFrom(CONDITION_RESOLVED)
                        .where(CONDITION_RESOLVED.CONDITION_NOTE_ID.eq(id.number()))
                        .fetchOptional()
                        .ifPresent(resolved -> faults.add(
                                new Fault(pointer, "was resolved already, by note " + resolved.getByNoteId())));
            }
        }
        return faults;
    }

    private static ConditionNote.Id insert(DSLContext sql, ConditionNote note) {
        ConditionNoteRecord row = sql.newRecord(CONDITION_NOTE);
        row.setUnitId(note.unit().number());
        row.setNotedAt(note.notedAt().getEpochSecond());
        row.setPersonId(note.by().number());
        row.setPart(note.seen().part().word());
        row.setFinding(note.seen().finding());
        row.setSeverity(note.seen().severity().grade());
        row.setIsQuarantine(note.seen().quarantine() ? 1 : 0);
        row.setWords(note.seen().words());
        row.store();
        for (ConditionNote.Id resolved : note.resolves()) {
            sql.insertInto(CONDITION_RESOLVED)
                    .set(CONDITION_RESOLVED.CONDITION_NOTE_ID, resolved.number())
                    .set(CONDITION_RESOLVED.BY_NOTE_ID, row.getId())
                    .execute();
        }
        for (int place = 0; place < note.pictures().size(); place++) {
            Picture picture = note.pictures().get(place);
            sql.insertInto(CONDITION_PICTURE)
                    .set(CONDITION_PICTURE.CONDITION_NOTE_ID, row.getId())
                    .set(CONDITION_PICTURE.PLACE, place)
                    .set(CONDITION_PICTURE.SHA256, picture.sha256())
                    .set(CONDITION_PICTURE.MEDIA_TYPE, picture.type().mediaType())
                    .set(CONDITION_PICTURE.WIDTH, picture.width())
                    .set(CONDITION_PICTURE.HEIGHT, picture.height())
                    .execute();
        }
        return new ConditionNote.Id(row.getId());
    }

    @Override
    public List<Stored<ConditionNote.Id, ConditionNote>> of(Unit.Id unit) {
        return database.reading(sql -> {
            var ids =
                    sql.select(CONDITION_NOTE.ID).from(CONDITION_NOTE).where(CONDITION_NOTE.UNIT_ID.eq(unit.number()));
            Map<Long, List<ConditionNote.Id>> resolves = sql.selectFrom(CONDITION_RESOLVED)
                    .where(CONDITION_RESOLVED.BY_NOTE_ID.in(ids))
                    .orderBy(CONDITION_RESOLVED.CONDITION_NOTE_ID)
                    .fetchGroups(CONDITION_RESOLVED.BY_NOTE_ID, row -> new ConditionNote.Id(row.getConditionNoteId()));
            Map<Long, List<Picture>> pictures = sql.selectFrom(CONDITION_PICTURE)
                    .where(CONDITION_PICTURE.CONDITION_NOTE_ID.in(ids))
                    .orderBy(CONDITION_PICTURE.CONDITION_NOTE_ID, CONDITION_PICTURE.PLACE)
                    .fetchGroups(CONDITION_PICTURE.CONDITION_NOTE_ID, JooqConditionNotes::picture);
            return sql.selectFrom(CONDITION_NOTE)
                    .where(CONDITION_NOTE.UNIT_ID.eq(unit.number()))
                    .orderBy(CONDITION_NOTE.ID)
                    .fetch(row -> stored(
                            row,
                            resolves.getOrDefault(row.getId(), List.of()),
                            pictures.getOrDefault(row.getId(), List.of())));
        });
    }

    private static Stored<ConditionNote.Id, ConditionNote> stored(
            ConditionNoteRecord row, List<ConditionNote.Id> resolves, List<Picture> pictures) {
        Observation seen = new Observation(
                Part.of(row.getPart()).orElseThrow(),
                row.getFinding(),
                Severity.of(row.getSeverity()),
                row.getIsQuarantine() == 1,
                row.getWords());
        return new Stored<>(
                new ConditionNote.Id(row.getId()),
                ONLY_VERSION,
                new ConditionNote(
                        new Unit.Id(row.getUnitId()),
                        Instant.ofEpochSecond(row.getNotedAt()),
                        new Person.Id(row.getPersonId()),
                        seen,
                        resolves,
                        pictures));
    }

    private static Picture picture(ConditionPictureRecord row) {
        return new Picture(
                row.getSha256(), PictureType.of(row.getMediaType()).orElseThrow(), row.getWidth(), row.getHeight());
    }

    @Override
    public Optional<Picture> picture(String sha256) {
        return database.reading(sql -> sql.selectFrom(CONDITION_PICTURE)
                .where(CONDITION_PICTURE.SHA256.eq(sha256))
                .limit(1)
                .fetchOptional(JooqConditionNotes::picture));
    }
}
