package dayglass.storage.house;

import static dayglass.storage.schema.Tables.CHANGE;

import dayglass.base.Stored;
import dayglass.house.Change;
import dayglass.house.Changes;
import dayglass.house.Person;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.ChangeRecord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.impl.DSL;

/** The rows of who changed what; written by {@link dayglass.storage.Recording}. */
public final class JooqChanges implements Changes {
    private static final long ONLY_VERSION = 1;

    private final Database database;

    public JooqChanges(Database database) {
        this.database = database;
    }

    @Override
    public List<Stored<Change.Id, Change>> list(Of of, Optional<Change.Id> after, int most) {
        return database.reading(sql -> sql.selectFrom(CHANGE)
                .where(among(of), CHANGE.ID.gt(after.map(Change.Id::number).orElse(0L)))
                .orderBy(CHANGE.ID)
                .limit(most)
                .fetch(JooqChanges::stored));
    }

    @Override
    public List<Stored<Change.Id, Change>> newest(Of of, int most) {
        return database.reading(sql -> sql.selectFrom(CHANGE)
                .where(among(of))
                .orderBy(CHANGE.ID.desc())
                .limit(most)
                .fetch(JooqChanges::stored));
    }

    private static Condition among(Of of) {
        Condition noun = of.noun().map(CHANGE.NOUN::eq).orElse(DSL.noCondition());
        return of.thing().isPresent() ? noun.and(CHANGE.THING_ID.eq(of.thing().getAsLong())) : noun;
    }

    private static Stored<Change.Id, Change> stored(ChangeRecord row) {
        return new Stored<>(
                new Change.Id(row.getId()),
                ONLY_VERSION,
                new Change(
                        Instant.ofEpochSecond(row.getMadeAt()),
                        new Person.Id(row.getPersonId()),
                        row.getNoun(),
                        row.getThingId(),
                        Change.Deed.of(row.getDeed()).orElseThrow(),
                        Optional.of(row.getFactsJson()).filter(facts -> !facts.isEmpty())));
    }
}
