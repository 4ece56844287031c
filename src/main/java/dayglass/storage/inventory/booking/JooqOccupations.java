package dayglass.storage.inventory.booking;

import static dayglass.storage.schema.Tables.CONDITION_NOTE;
import static dayglass.storage.schema.Tables.OCCUPATION;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Stay;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.OccupationRecord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/** Occupations as rows; triggers of the table refuse an overlap, whoever writes. */
public final class JooqOccupations extends VersionedTable<Occupation.Id, Occupation, OccupationRecord>
        implements Occupations {
    /** The words of the triggers. */
    private static final String OVERLAP = "the unit is in another place then";

    /** Written out and not bound, or the index of what stands would not be used. */
    private static final Condition STANDS = OCCUPATION.IS_CANCELLED.eq(DSL.inline(0));

    private static final String BOOKING = Occupation.Kind.BOOKING.word();

    public JooqOccupations(Database database) {
        super(database, new Shape<>("occupation", OCCUPATION.ID, OCCUPATION.VERSION, Occupation.Id::new));
    }

    @Override
    public Outcome<Stored<Occupation.Id, Occupation>> add(Occupation facts) {
        return refusingOverlap(() -> super.add(facts));
    }

    @Override
    public Outcome<Stored<Occupation.Id, Occupation>> change(Stored<Occupation.Id, Occupation> change) {
        return refusingOverlap(() -> super.change(change));
    }

    private static <T> Outcome<T> refusingOverlap(Supplier<Outcome<T>> write) {
        try {
            return write.get();
        } catch (DataAccessException failed) {
            if (String.valueOf(failed.getMessage()).contains(OVERLAP)) {
                return Outcome.refused(Problem.Code.TAKEN, "The unit is in another place at a part of that time.");
            }
            throw failed;
        }
    }

    @Override
    public Outcome<Occupation.Id> remove(Occupation.Id id, long version) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "It is cancelled, never removed.");
    }

    @Override
    public List<Stored<Occupation.Id, Occupation>> list(Which which, Optional<Occupation.Id> after, int most) {
        Condition asked = DSL.and(
                OCCUPATION.ID.gt(after.map(Id::number).orElse(0L)),
                which.kind().map(kind -> OCCUPATION.KIND.eq(kind.word())).orElse(DSL.noCondition()),
                which.unit().map(unit -> OCCUPATION.UNIT_ID.eq(unit.number())).orElse(DSL.noCondition()),
                which.from()
                        .map(from -> OCCUPATION.ENDS_AT.gt(from.getEpochSecond()))
                        .orElse(DSL.noCondition()),
                which.until()
                        .map(until -> OCCUPATION.STARTS_AT.lt(until.getEpochSecond()))
                        .orElse(DSL.noCondition()));
        return database.reading(sql -> sql.selectFrom(OCCUPATION)
                .where(asked)
                .orderBy(OCCUPATION.ID)
                .limit(most)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public Optional<Stored<Occupation.Id, Occupation>> inTheWay(
            Unit.Id unit, Stay stay, Optional<Occupation.Id> except) {
        return database.reading(sql -> sql.selectFrom(OCCUPATION)
                .where(
                        OCCUPATION.UNIT_ID.eq(unit.number()),
                        STANDS,
                        OCCUPATION.STARTS_AT.lt(stay.freeAt().getEpochSecond()),
                        OCCUPATION.ID.ne(except.map(Id::number).orElse(0L)))
                .orderBy(OCCUPATION.STARTS_AT.desc())
                .limit(1)
                .fetchOptional(row -> stored(sql, row))
                .filter(last -> last.facts().stay().overlaps(stay)));
    }

    @Override
    public List<Stored<Occupation.Id, Occupation>> ahead(List<Unit.Id> units, Instant from) {
        if (units.isEmpty()) {
            return List.of();
        }
        return database.reading(sql -> sql.selectFrom(OCCUPATION)
                .where(
                        OCCUPATION.UNIT_ID.in(
                                units.stream().map(Unit.Id::number).toList()),
                        STANDS,
                        OCCUPATION.FREE_AT.gt(from.getEpochSecond()))
                .orderBy(OCCUPATION.UNIT_ID, OCCUPATION.STARTS_AT)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<Occupation.Id, Occupation>> between(Instant from, Instant until) {
        Condition notBack = OCCUPATION.WENT_OUT_AT.isNotNull().and(OCCUPATION.CAME_BACK_AT.isNull());
        return database.reading(sql -> sql.selectFrom(OCCUPATION)
                .where(
                        STANDS,
                        OCCUPATION.STARTS_AT.lt(until.getEpochSecond()),
                        OCCUPATION.FREE_AT.gt(from.getEpochSecond()).or(notBack))
                .orderBy(OCCUPATION.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<Occupation.Id, Occupation>> notSeenSince() {
        dayglass.storage.schema.tables.Occupation other = OCCUPATION.as("other");
        Table<?> last = DSL.select(other.UNIT_ID, DSL.max(other.CAME_BACK_AT).as("came"))
                .from(other)
                .where(other.KIND.eq(BOOKING), other.CAME_BACK_AT.isNotNull())
                .groupBy(other.UNIT_ID)
                .asTable("last");
        return database.reading(sql -> sql.select(OCCUPATION.fields())
                .from(last.join(OCCUPATION)
                        .on(
                                OCCUPATION.UNIT_ID.eq(last.field(other.UNIT_ID)),
                                OCCUPATION.CAME_BACK_AT.eq(last.field("came", Long.class)),
                                OCCUPATION.KIND.eq(BOOKING)))
                .where(noteSince().not(), benchSince(other).not(), isOut(other).not())
                .orderBy(OCCUPATION.UNIT_ID, OCCUPATION.ID)
                .fetchInto(OCCUPATION)
                .map(row -> stored(sql, row)));
    }

    private static Condition noteSince() {
        return DSL.exists(DSL.selectOne()
                .from(CONDITION_NOTE)
                .where(
                        CONDITION_NOTE.UNIT_ID.eq(OCCUPATION.UNIT_ID),
                        CONDITION_NOTE.NOTED_AT.ge(OCCUPATION.CAME_BACK_AT)));
    }

    private static Condition benchSince(dayglass.storage.schema.tables.Occupation other) {
        return DSL.exists(DSL.selectOne()
                .from(other)
                .where(
                        other.UNIT_ID.eq(OCCUPATION.UNIT_ID),
                        other.IS_CANCELLED.eq(DSL.inline(0)),
                        other.KIND.eq(Occupation.Kind.BENCH.word()),
                        other.STARTS_AT.ge(OCCUPATION.CAME_BACK_AT),
                        DSL.condition("json_extract({0}, '$.done') = 1", other.FACTS_JSON)));
    }

    private static Condition isOut(dayglass.storage.schema.tables.Occupation other) {
        return DSL.exists(DSL.selectOne()
                .from(other)
                .where(
                        other.UNIT_ID.eq(OCCUPATION.UNIT_ID),
                        other.IS_CANCELLED.eq(DSL.inline(0)),
                        other.WENT_OUT_AT.isNotNull(),
                        other.CAME_BACK_AT.isNull()));
    }

    @Override
    protected void fill(OccupationRecord row, Occupation facts) {
        row.setUnitId(facts.unit().number());
        row.setKind(facts.kind().word());
        row.setStartsAt(facts.stay().out().getEpochSecond());
        row.setEndsAt(facts.stay().back().getEpochSecond());
        row.setFreeAt(facts.stay().freeAt().getEpochSecond());
        row.setIsCancelled(facts.cancelled() ? 1 : 0);
        row.setSubject(facts.subject());
        row.setPersonId(facts.record().by().number());
        row.setRecordedAt(facts.record().at().getEpochSecond());
        row.setWentOutAt(facts.handling().wentOut().map(Instant::getEpochSecond).orElse(null));
        row.setCameBackAt(
                facts.handling().cameBack().map(Instant::getEpochSecond).orElse(null));
        row.setFactsJson(BenchJson.write(facts.bench()));
    }

    @Override
    protected Occupation facts(DSLContext sql, OccupationRecord row) {
        return new Occupation(
                new Unit.Id(row.getUnitId()),
                Occupation.Kind.of(row.getKind()).orElseThrow(),
                new Stay(moment(row.getStartsAt()), moment(row.getEndsAt()), moment(row.getFreeAt())),
                row.getSubject(),
                row.getIsCancelled() == 1,
                new Occupation.Handling(
                        Optional.ofNullable(row.getWentOutAt()).map(Instant::ofEpochSecond),
                        Optional.ofNullable(row.getCameBackAt()).map(Instant::ofEpochSecond)),
                new Occupation.Entered(new Person.Id(row.getPersonId()), moment(row.getRecordedAt())),
                BenchJson.read(row.getFactsJson()));
    }

    private static Instant moment(long seconds) {
        return Instant.ofEpochSecond(seconds);
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Occupation.Id> self, Occupation facts) {
        return Optional.empty();
    }

    @Override
    protected List<String> uses(DSLContext sql, Occupation.Id id) {
        return List.of();
    }
}
