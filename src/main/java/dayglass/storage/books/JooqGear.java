package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.BOOK_GEAR;
import static dayglass.storage.schema.Tables.BOOK_GEAR_ENTRY;
import static dayglass.storage.schema.Tables.BOOK_GEAR_SOURCE;
import static dayglass.storage.schema.Tables.JOB;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.entry.EntryFaults;
import dayglass.books.entry.Posted;
import dayglass.books.gear.Gear;
import dayglass.books.gear.GearEntries;
import dayglass.books.gear.GearList;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.job.Job;
import dayglass.shelf.GearJson;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.BookGearRecord;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jooq.DSLContext;

/** Gear as rows, its facts as JSON; which entries are for it in a table beside. */
public final class JooqGear extends VersionedTable<Gear.Id, Gear, BookGearRecord> implements GearList {
    private final Units units;

    public JooqGear(Database database, Units units) {
        super(database, new Shape<>("gear in the books", BOOK_GEAR.ID, BOOK_GEAR.VERSION, Gear.Id::new));
        this.units = units;
    }

    @Override
    public List<Stored<Gear.Id, Gear>> of(Job.Id job) {
        return database.reading(sql -> sql.selectFrom(BOOK_GEAR)
                .where(BOOK_GEAR.JOB_ID.eq(job.number()))
                .orderBy(BOOK_GEAR.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public GearEntries entries(Stored<Gear.Id, Gear> gear) {
        return database.reading(sql -> new GearEntries(
                gear.facts().price(),
                sql.select(BOOK_GEAR_ENTRY.DEED, BOOK_ENTRY, BOOK_GEAR_SOURCE.ORIGIN, BOOK_GEAR_SOURCE.ORIGIN_ID)
                        .from(BOOK_GEAR_ENTRY)
                        .join(BOOK_ENTRY)
                        .on(BOOK_ENTRY.ID.eq(BOOK_GEAR_ENTRY.ENTRY_ID))
                        .leftJoin(BOOK_GEAR_SOURCE)
                        .on(BOOK_GEAR_SOURCE.ENTRY_ID.eq(BOOK_ENTRY.ID))
                        .where(BOOK_GEAR_ENTRY.GEAR_ID.eq(gear.id().number()), EntryRows.isNotReversed())
                        .orderBy(BOOK_ENTRY.ID)
                        .fetch(row -> new GearEntries.Line(
                                GearEntries.Deed.of(row.value1()),
                                Optional.ofNullable(row.value3())
                                        .map(origin ->
                                                new GearEntries.Source(GearEntries.Origin.of(origin), row.value4())),
                                EntryRows.posted(row.value2())))));
    }

    @Override
    public void link(Gear.Id gear, GearEntries.Deed deed, List<Posted> posted) {
        write(sql -> posted.forEach(each -> sql.insertInto(BOOK_GEAR_ENTRY)
                .set(BOOK_GEAR_ENTRY.ENTRY_ID, each.id().number())
                .set(BOOK_GEAR_ENTRY.GEAR_ID, gear.number())
                .set(BOOK_GEAR_ENTRY.DEED, deed.word())
                .execute()));
    }

    @Override
    public void cameFrom(GearEntries.Source source, Posted posted) {
        write(sql -> sql.insertInto(BOOK_GEAR_SOURCE)
                .set(BOOK_GEAR_SOURCE.ENTRY_ID, posted.id().number())
                .set(BOOK_GEAR_SOURCE.ORIGIN, source.origin().word())
                .set(BOOK_GEAR_SOURCE.ORIGIN_ID, source.number())
                .execute());
    }

    private void write(Consumer<DSLContext> work) {
        Outcome<Boolean> linked = database.writing(sql -> {
            work.accept(sql);
            return Outcome.done(true);
        });
        if (linked instanceof Outcome.Refused<Boolean> refused) {
            throw new IllegalStateException(refused.problem().detail());
        }
    }

    @Override
    protected void fill(BookGearRecord row, Gear facts) {
        Json.Members members = Json.object();
        GearJson.write(members, facts);
        row.setJobId(facts.job().number());
        row.setUnitId(facts.unit().number());
        row.setCurrency(facts.price().currency().code());
        row.setGearJson(JsonPrint.pretty(members.build()));
    }

    @Override
    protected Gear facts(DSLContext sql, BookGearRecord row) {
        return GearJson.reader(new Job.Id(row.getJobId()), Currency.of(row.getCurrency()), units)
                .read(row.getGearJson().getBytes(StandardCharsets.UTF_8))
                .fold(gear -> gear, faults -> {
                    throw new IllegalStateException("gear was kept in another form: " + faults);
                });
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Gear.Id> self, Gear facts) {
        return missing(sql, "/jobId", "job", JOB.ID, facts.job())
                .or(() -> missing(sql, "/unitId", "unit", UNIT.ID, facts.unit()))
                .or(() -> taken(sql, self, facts.unit()))
                .or(() -> tooDear(facts.price()));
    }

    /** What is written off in one sum could not be posted, and would keep the job's other gear from it. */
    private static Optional<Problem> tooDear(Money price) {
        return Optional.of(price)
                .filter(EntryFaults::isTooMuch)
                .map(much -> Problem.faulty("/price", EntryFaults.MAKE_IT_SMALLER));
    }

    private static Optional<Problem> taken(DSLContext sql, Optional<Gear.Id> self, Unit.Id unit) {
        return sql.selectFrom(BOOK_GEAR)
                .where(
                        BOOK_GEAR.UNIT_ID.eq(unit.number()),
                        BOOK_GEAR.ID.ne(self.map(Gear.Id::number).orElse(0L)))
                .fetchOptional(row -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "This unit is in the books of job " + row.getJobId() + " already."));
    }

    @Override
    protected List<String> uses(DSLContext sql, Gear.Id id) {
        return named(
                "book entry",
                sql.select(BOOK_GEAR_ENTRY.ENTRY_ID)
                        .from(BOOK_GEAR_ENTRY)
                        .where(BOOK_GEAR_ENTRY.GEAR_ID.eq(id.number())));
    }
}
