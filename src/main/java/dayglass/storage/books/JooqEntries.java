package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static org.jooq.impl.DSL.notExists;
import static org.jooq.impl.DSL.selectFrom;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.entry.Chain;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Posted;
import dayglass.books.period.Head;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.BookEntry;
import dayglass.storage.schema.tables.records.BookEntryRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.Condition;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/** Entries as rows; triggers of the table refuse every change, and a date in a closed period. */
public final class JooqEntries implements Entries {
    private static final String CLOSED = "the period is closed";

    private final Database database;

    public JooqEntries(Database database) {
        this.database = database;
    }

    @Override
    public Outcome<List<Posted>> append(List<Entry> entries) {
        try {
            return database.writing(sql -> Outcome.done(append(sql, entries)));
        } catch (DataAccessException failed) {
            if (String.valueOf(failed.getMessage()).contains(CLOSED)) {
                return Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "The period of that date is closed and takes no entry: give it a later date.");
            }
            throw failed;
        }
    }

    private List<Posted> append(DSLContext sql, List<Entry> entries) {
        Head head = head(sql);
        List<Posted> posted = new ArrayList<>();
        long posting = head.entry() + 1;
        for (Entry entry : entries) {
            BookEntryRecord row = sql.newRecord(BOOK_ENTRY);
            row.setId(head.entry() + 1);
            row.setPostingId(posting);
            EntryRows.fill(row, entry);
            row.setPersonId(database.recording().who().number());
            row.setRecordedAt(database.recording().when().getEpochSecond());
            row.setHash(EntryRows.hash(head.hash(), row));
            sql.insertInto(BOOK_ENTRY).set(row).execute();
            head = new Head(row.getId(), row.getHash());
            posted.add(EntryRows.posted(row));
        }
        return List.copyOf(posted);
    }

    @Override
    public Head head() {
        return database.reading(JooqEntries::head);
    }

    private static Head head(DSLContext sql) {
        return sql.select(BOOK_ENTRY.ID, BOOK_ENTRY.HASH)
                .from(BOOK_ENTRY)
                .orderBy(BOOK_ENTRY.ID.desc())
                .limit(1)
                .fetchOptional(last -> new Head(last.value1(), last.value2()))
                .orElse(new Head(0, Chain.BEGINNING));
    }

    @Override
    public Optional<Posted> find(Entry.Id id) {
        return database.reading(sql ->
                sql.selectFrom(BOOK_ENTRY).where(BOOK_ENTRY.ID.eq(id.number())).fetchOptional(EntryRows::posted));
    }

    @Override
    public List<Posted> posting(Entry.Id first) {
        return database.reading(sql -> sql.selectFrom(BOOK_ENTRY)
                .where(BOOK_ENTRY.POSTING_ID.eq(first.number()))
                .orderBy(BOOK_ENTRY.ID)
                .fetch(EntryRows::posted));
    }

    @Override
    public List<Entry.Id> reversed(List<Entry.Id> entries) {
        return database.reading(sql -> sql.select(BOOK_ENTRY.REVERSES_ID)
                .from(BOOK_ENTRY)
                .where(BOOK_ENTRY.REVERSES_ID.in(
                        entries.stream().map(Id::number).toList()))
                .fetch(row -> new Entry.Id(row.value1())));
    }

    @Override
    public List<Posted> list(Which which, Optional<Entry.Id> after, int most) {
        return database.reading(sql -> sql.selectFrom(BOOK_ENTRY)
                .where(asked(which), BOOK_ENTRY.ID.gt(after.map(Id::number).orElse(0L)))
                .orderBy(BOOK_ENTRY.ID)
                .limit(most)
                .fetch(EntryRows::posted));
    }

    @Override
    public <T> T reading(Which which, Function<Run, T> work) {
        return database.reading(sql -> work.apply(one -> {
            try (Cursor<BookEntryRecord> rows = sql.selectFrom(BOOK_ENTRY)
                    .where(asked(which))
                    .orderBy(BOOK_ENTRY.ID)
                    .fetchLazy()) {
                rows.forEach(row -> one.accept(EntryRows.posted(row)));
            }
        }));
    }

    private static Condition asked(Which which) {
        return DSL.and(
                BOOK_ENTRY.JOB_ID.eq(which.job().number()),
                which.kind().map(kind -> BOOK_ENTRY.KIND.eq(kind.word())).orElse(DSL.noCondition()),
                which.costCode().map(BOOK_ENTRY.COST_CODE::eq).orElse(DSL.noCondition()),
                which.episode().map(BOOK_ENTRY.EPISODE::eq).orElse(DSL.noCondition()),
                which.supplier().map(BOOK_ENTRY.SUPPLIER::eq).orElse(DSL.noCondition()),
                which.from()
                        .map(day -> BOOK_ENTRY.ENTRY_DATE.ge(day.toString()))
                        .orElse(DSL.noCondition()),
                which.until()
                        .map(day -> BOOK_ENTRY.ENTRY_DATE.le(day.toString()))
                        .orElse(DSL.noCondition()));
    }

    @Override
    public List<Order> orders(Job.Id job, Optional<LocalDate> asOf) {
        return database.reading(sql -> OpenOrders.of(sql, job, asOf));
    }

    @Override
    public List<Order> ordersAmong(Job.Id job, List<Entry.Id> entries) {
        return database.reading(sql -> OpenOrders.among(sql, job, entries));
    }

    @Override
    public boolean hasCosting(long costing) {
        return database.reading(sql ->
                sql.fetchExists(BOOK_ENTRY, BOOK_ENTRY.COSTING_ID.eq(costing).and(EntryRows.stands())));
    }

    @Override
    public Optional<LocalDate> earliest(Job.Id job) {
        BookEntry other = BOOK_ENTRY.as("other");
        return database.reading(sql -> sql.select(BOOK_ENTRY.ENTRY_DATE)
                .from(BOOK_ENTRY)
                .where(
                        BOOK_ENTRY.JOB_ID.eq(job.number()),
                        notExists(selectFrom(other)
                                .where(
                                        other.REVERSES_ID.eq(BOOK_ENTRY.ID),
                                        other.ENTRY_DATE.eq(BOOK_ENTRY.ENTRY_DATE))),
                        notExists(selectFrom(other)
                                .where(
                                        other.ID.eq(BOOK_ENTRY.REVERSES_ID),
                                        other.ENTRY_DATE.eq(BOOK_ENTRY.ENTRY_DATE))))
                .orderBy(BOOK_ENTRY.ENTRY_DATE)
                .limit(1)
                .fetchOptional(0, String.class)
                .map(LocalDate::parse));
    }
}
