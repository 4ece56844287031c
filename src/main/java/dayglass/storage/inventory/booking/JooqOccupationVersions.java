package dayglass.storage.inventory.booking;

import static dayglass.storage.schema.Tables.CHANGE;
import static dayglass.storage.schema.Tables.OCCUPATION;

import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.life.OccupationVersions;
import dayglass.storage.Database;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** How occupations stood after each change, read from the record of changes. */
public final class JooqOccupationVersions implements OccupationVersions {
    private static final Field<Long> ENDS_AT = told("ends_at");
    private static final Field<Long> WENT_OUT_AT = told("went_out_at");
    private static final Field<Long> CAME_BACK_AT = told("came_back_at");
    private static final Field<Long> CANCELLED = told("is_cancelled");

    private final Database database;

    public JooqOccupationVersions(Database database) {
        this.database = database;
    }

    private static Field<Long> told(String column) {
        return DSL.field("json_extract({0}, {1})", Long.class, CHANGE.FACTS_JSON, DSL.inline("$." + column))
                .as("told_" + column);
    }

    @Override
    public List<Version> of(Unit.Id unit) {
        return database.reading(sql -> sql.select(CHANGE.THING_ID, CHANGE.MADE_AT, CHANGE.PERSON_ID)
                .select(ENDS_AT, WENT_OUT_AT, CAME_BACK_AT, CANCELLED)
                .from(CHANGE.join(OCCUPATION).on(CHANGE.NOUN.eq("occupation"), CHANGE.THING_ID.eq(OCCUPATION.ID)))
                .where(OCCUPATION.UNIT_ID.eq(unit.number()))
                .orderBy(CHANGE.ID)
                .fetch(JooqOccupationVersions::version));
    }

    private static Version version(Record row) {
        return new Version(
                new Occupation.Id(row.get(CHANGE.THING_ID)),
                Instant.ofEpochSecond(row.get(CHANGE.MADE_AT)),
                new Person.Id(row.get(CHANGE.PERSON_ID)),
                Instant.ofEpochSecond(row.get(ENDS_AT)),
                new Occupation.Handling(moment(row.get(WENT_OUT_AT)), moment(row.get(CAME_BACK_AT))),
                row.get(CANCELLED) == 1);
    }

    private static Optional<Instant> moment(@org.jspecify.annotations.Nullable Long second) {
        return Optional.ofNullable(second).map(Instant::ofEpochSecond);
    }
}
