package dayglass.storage;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.house.Change;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import org.jooq.DSLContext;
import org.jooq.TableField;
import org.jooq.UpdatableRecord;

/**
 * A table whose rows carry an id and a version. The version is checked in the statement that changes the row, so that
 * of two changes based on one version exactly one happens.
 *
 * @param <I> the id
 * @param <T> what a row says
 * @param <R> the row
 */
public abstract class VersionedTable<I extends Id, T, R extends UpdatableRecord<R>>
        implements VersionedCollection<I, T> {

    /**
     * The table and how it is spoken of.
     *
     * @param noun with its article-less singular, for refusals: {@code rate card}
     */
    public record Shape<I extends Id, R extends UpdatableRecord<R>>(
            String noun, TableField<R, Long> id, TableField<R, Long> version, LongFunction<I> idOf) {}

    private static final int MOST_USES_NAMED = 5;

    protected final Database database;
    private final Shape<I, R> shape;

    protected VersionedTable(Database database, Shape<I, R> shape) {
        this.database = database;
        this.shape = shape;
    }

    /** Puts the facts into the row, id and version apart. */
    protected abstract void fill(R row, T facts);

    protected abstract T facts(DSLContext sql, R row);

    /** What forbids the facts: a name taken, something pointed to that is not there. */
    protected abstract Optional<Problem> refusal(DSLContext sql, Optional<I> self, T facts);

    /** Where it is still pointed to: one phrase each. */
    protected abstract List<String> uses(DSLContext sql, I id);

    /** Writes what lies in further tables; the row itself is there. */
    protected void linked(DSLContext sql, I id, T facts) {}

    /** Adds to the record of a change what lies in further tables. */
    protected void tell(Json.Members record, T facts) {}

    private String told(R row, T facts) {
        Json.Members record = RowJson.of(row, shape.id());
        tell(record, facts);
        return JsonPrint.pretty(record.build());
    }

    private void record(DSLContext sql, Change.Deed deed, I id, String facts) {
        database.recording().keep(sql, deed, new Recording.Thing(shape.noun(), id.number()), facts);
    }

    @Override
    public Outcome<Stored<I, T>> add(T facts) {
        return database.writing(sql -> {
            Optional<Problem> refusal = refusal(sql, Optional.empty(), facts);
            if (refusal.isPresent()) {
                return Outcome.refused(refusal.get());
            }
            R row = sql.newRecord(shape.id().getTable());
            fill(row, facts);
            row.set(shape.version(), 1L);
            row.store();
            I id = shape.idOf().apply(row.get(shape.id()));
            linked(sql, id, facts);
            record(sql, Change.Deed.ADDED, id, told(row, facts));
            return Outcome.done(new Stored<>(id, 1, facts));
        });
    }

    @Override
    public Optional<Stored<I, T>> find(I id) {
        return database.reading(sql ->
                sql.selectFrom(table()).where(shape.id().eq(id.number())).fetchOptional(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<I, T>> list(Optional<I> after, int most) {
        return database.reading(sql -> sql.selectFrom(table())
                .where(shape.id().gt(after.map(Id::number).orElse(0L)))
                .orderBy(shape.id())
                .limit(most)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public Outcome<Stored<I, T>> change(Stored<I, T> change) {
        return database.writing(sql -> {
            Optional<Problem> missed = missed(sql, change.id(), change.version());
            Optional<Problem> refusal =
                    missed.isPresent() ? missed : refusal(sql, Optional.of(change.id()), change.facts());
            if (refusal.isPresent()) {
                return Outcome.refused(refusal.get());
            }
            R row = sql.newRecord(table());
            fill(row, change.facts());
            row.set(shape.version(), change.version() + 1);
            int changed = sql.update(table())
                    .set(row)
                    .where(shape.id().eq(change.id().number()), shape.version().eq(change.version()))
                    .execute();
            if (changed == 0) {
                return Outcome.refused(stale());
            }
            linked(sql, change.id(), change.facts());
            record(sql, Change.Deed.CHANGED, change.id(), told(row, change.facts()));
            return Outcome.done(new Stored<>(change.id(), change.version() + 1, change.facts()));
        });
    }

    /** Keeps facts whose id is known before they are: version 0 stands for those that are not there yet. */
    protected final Outcome<Stored<I, T>> addOrChange(Stored<I, T> facts) {
        return database.writing(
                sql -> facts.version() == 0 && find(facts.id()).isEmpty() ? add(facts.facts()) : change(facts));
    }

    @Override
    public Outcome<I> remove(I id, long version) {
        return database.writing(sql -> {
            Optional<Problem> missed = missed(sql, id, version);
            if (missed.isPresent()) {
                return Outcome.refused(missed.get());
            }
            List<String> uses = uses(sql, id);
            if (!uses.isEmpty()) {
                return Outcome.refused(
                        Problem.Code.STILL_USED,
                        "This " + shape.noun() + " is still used by " + String.join(", ", uses)
                                + "; remove that first.");
            }
            sql.deleteFrom(table())
                    .where(shape.id().eq(id.number()), shape.version().eq(version))
                    .execute();
            record(sql, Change.Deed.REMOVED, id, "");
            return Outcome.done(id);
        });
    }

    protected final Stored<I, T> stored(DSLContext sql, R row) {
        return new Stored<>(shape.idOf().apply(row.get(shape.id())), row.get(shape.version()), facts(sql, row));
    }

    /** Phrases for the first few rows that a query of ids finds: {@code job 3}. */
    protected static List<String> named(String noun, org.jooq.Select<org.jooq.Record1<Long>> ids) {
        return ids.fetch(org.jooq.Record1::value1).stream()
                .limit(MOST_USES_NAMED)
                .map(id -> noun + " " + id)
                .toList();
    }

    /** A fault at the currency of facts that these jobs use and that would no longer be in theirs. */
    protected static Optional<Problem> countedOn(org.jooq.Select<org.jooq.Record1<Long>> jobs) {
        List<String> uses = named("job", jobs);
        return uses.isEmpty()
                ? Optional.empty()
                : Optional.of(Problem.faulty(
                        "/currency",
                        "is counted on by " + String.join(", ", uses) + ": keep it, or take this out of there first"));
    }

    /** A fault at the first id that no row has. */
    protected static Optional<Problem> missing(
            DSLContext sql, String pointer, String noun, TableField<?, Long> idField, List<? extends Id> ids) {
        for (int at = 0; at < ids.size(); at++) {
            Optional<Problem> missing = missing(sql, pointer + "/" + at, noun, idField, ids.get(at));
            if (missing.isPresent()) {
                return missing;
            }
        }
        return Optional.empty();
    }

    /** A fault where no row has the id. */
    protected static Optional<Problem> missing(
            DSLContext sql, String pointer, String noun, TableField<?, Long> idField, Id id) {
        return sql.fetchExists(idField.getTable(), idField.eq(id.number()))
                ? Optional.empty()
                : Optional.of(Problem.faulty(pointer, "there is no " + noun + " with the id " + id.number()));
    }

    private Optional<Problem> missed(DSLContext sql, I id, long version) {
        Long found = sql.select(shape.version())
                .from(table())
                .where(shape.id().eq(id.number()))
                .fetchOne(shape.version());
        if (found == null) {
            return Optional.of(new Problem(
                    Problem.Code.NOT_FOUND, "There is no " + shape.noun() + " with the id " + id.number() + "."));
        }
        return found == version ? Optional.empty() : Optional.of(stale());
    }

    private Problem stale() {
        return new Problem(
                Problem.Code.STALE,
                "This " + shape.noun() + " was changed since; look at the newer version and change that.");
    }

    private org.jooq.Table<R> table() {
        return java.util.Objects.requireNonNull(shape.id().getTable());
    }
}
