package dayglass.storage.inventory.booking;

import static dayglass.storage.schema.Tables.CONDITION_NOTE;
import static dayglass.storage.schema.Tables.CONDITION_RESOLVED;
import static dayglass.storage.schema.Tables.OCCUPATION;
import static dayglass.storage.schema.Tables.SET_MEMBERSHIP;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.UnitState;
import dayglass.storage.Database;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Select;
import org.jooq.impl.DSL;

/**
 * What decides whether units can be promised, in one statement. As nothing overlaps, the occupation that begins last
 * before the wanted end alone decides whether a unit is occupied: one look into the index a unit.
 */
public final class JooqUnitStates implements UnitState.Source {
    /** Written out and not bound, or the index of what stands would not be used. */
    private static final Condition STANDS = OCCUPATION.IS_CANCELLED.eq(DSL.inline(0));

    private static final Condition OPEN = DSL.notExists(
            DSL.selectOne().from(CONDITION_RESOLVED).where(CONDITION_RESOLVED.CONDITION_NOTE_ID.eq(CONDITION_NOTE.ID)));

    private static final Field<Integer> WORST = DSL.field(ofNotes(DSL.max(CONDITION_NOTE.SEVERITY)));
    private static final Field<Integer> QUARANTINED = DSL.field(ofNotes(DSL.max(CONDITION_NOTE.IS_QUARANTINE)));
    private static final Field<Long> SET = DSL.field(DSL.select(SET_MEMBERSHIP.LENS_SET_ID)
            .from(SET_MEMBERSHIP)
            .where(SET_MEMBERSHIP.UNIT_ID.eq(UNIT.ID), SET_MEMBERSHIP.LEFT_AT.isNull()));
    private static final Field<Long> OUT_UNTIL = DSL.field(DSL.select(DSL.min(OCCUPATION.ENDS_AT))
            .from(OCCUPATION)
            .where(
                    OCCUPATION.UNIT_ID.eq(UNIT.ID),
                    STANDS,
                    OCCUPATION.WENT_OUT_AT.isNotNull(),
                    OCCUPATION.CAME_BACK_AT.isNull()));

    private final Database database;

    public JooqUnitStates(Database database) {
        this.database = database;
    }

    private static Select<? extends org.jooq.Record1<Integer>> ofNotes(Field<Integer> field) {
        return DSL.select(field).from(CONDITION_NOTE).where(CONDITION_NOTE.UNIT_ID.eq(UNIT.ID), OPEN);
    }

    @Override
    public List<UnitState> during(Stay stay, Optional<LensModel.Id> model) {
        Condition asked = model.map(id -> UNIT.LENS_MODEL_ID.eq(id.number())).orElse(DSL.noCondition());
        return database.reading(sql -> states(sql, stay, asked));
    }

    @Override
    public List<UnitState> during(Stay stay, Set<LensModel.Id> models, Set<Unit.Id> units) {
        Condition asked = UNIT.LENS_MODEL_ID
                .in(models.stream().map(LensModel.Id::number).toList())
                .or(UNIT.ID.in(units.stream().map(Unit.Id::number).toList()));
        return database.reading(sql -> states(sql, stay, asked));
    }

    @Override
    public Optional<UnitState> of(Unit.Id unit, Stay stay) {
        return database.reading(
                sql -> states(sql, stay, UNIT.ID.eq(unit.number())).stream().findFirst());
    }

    private static List<UnitState> states(DSLContext sql, Stay stay, Condition asked) {
        Field<Long> lastFree = DSL.field(DSL.select(OCCUPATION.FREE_AT)
                .from(OCCUPATION)
                .where(
                        OCCUPATION.UNIT_ID.eq(UNIT.ID),
                        STANDS,
                        OCCUPATION.STARTS_AT.lt(stay.freeAt().getEpochSecond()))
                .orderBy(OCCUPATION.STARTS_AT.desc())
                .limit(1));
        return sql.select(
                        UNIT.ID,
                        UNIT.TAG,
                        UNIT.LENS_MODEL_ID,
                        UNIT.HELD_TO,
                        SET.as("set"),
                        lastFree.as("free"),
                        OUT_UNTIL.as("due"),
                        WORST.as("worst"),
                        QUARANTINED.as("quarantined"))
                .from(UNIT)
                .where(asked, UNIT.LEFT_ON.isNull())
                .orderBy(UNIT.TAG)
                .fetch(row -> state(row, stay));
    }

    private static UnitState state(Record row, Stay stay) {
        return new UnitState(
                new Unit.Id(row.get(UNIT.ID)),
                row.get(UNIT.TAG),
                Optional.ofNullable(row.get(UNIT.LENS_MODEL_ID)).map(LensModel.Id::new),
                Optional.ofNullable(row.get("set", Long.class)).map(LensSet.Id::new),
                Optional.ofNullable(row.get(UNIT.HELD_TO)).map(LocalDate::parse),
                Optional.ofNullable(row.get("free", Long.class))
                        .map(Instant::ofEpochSecond)
                        .filter(free -> free.isAfter(stay.out())),
                Optional.ofNullable(row.get("due", Long.class)).map(Instant::ofEpochSecond),
                Optional.ofNullable(row.get("worst", Integer.class)).orElse(0),
                Optional.ofNullable(row.get("quarantined", Integer.class)).orElse(0) == 1);
    }
}
