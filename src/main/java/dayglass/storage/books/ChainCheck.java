package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.PERIOD_ACT;

import dayglass.books.entry.Chain;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.BookEntryRecord;
import dayglass.storage.schema.tables.records.PeriodActRecord;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/**
 * Goes through the chain of entries and finds what was altered or cut: each entry's hash is worked out again from the row
 * as it stands; each close must find the head that it kept; and the last entry must be the last that was ever numbered.
 */
public final class ChainCheck {
    private static final int MOST_FINDINGS = 20;

    private final List<String> findings = new ArrayList<>();
    private final Deque<PeriodActRecord> closes;
    private String before = Chain.BEGINNING;
    private long last;

    private ChainCheck(List<PeriodActRecord> closes) {
        this.closes = new ArrayDeque<>(closes);
    }

    /**
     * What came of it.
     *
     * @param closes how many kept heads were compared
     * @param findings one sentence each; empty where all is well
     */
    public record Report(long entries, int closes, String head, List<String> findings) {
        public Report {
            findings = List.copyOf(findings);
        }
    }

    public static Report of(Database database) {
        return database.reading(ChainCheck::of);
    }

    private static Report of(DSLContext sql) {
        List<PeriodActRecord> closes = sql.selectFrom(PERIOD_ACT)
                .orderBy(PERIOD_ACT.HEAD_ENTRY_ID, PERIOD_ACT.ID)
                .fetch();
        ChainCheck check = new ChainCheck(closes);
        check.compareHeads();
        try (Cursor<BookEntryRecord> rows =
                sql.selectFrom(BOOK_ENTRY).orderBy(BOOK_ENTRY.ID).fetchLazy()) {
            rows.forEach(check::take);
        }
        check.end(everNumbered(sql));
        return new Report(check.last, closes.size(), check.before, check.findings);
    }

    /** The highest number that the table ever gave, which the database keeps by itself. */
    private static long everNumbered(DSLContext sql) {
        return Optional.ofNullable(sql.select(DSL.field("seq", Long.class))
                        .from(DSL.table("sqlite_sequence"))
                        .where(DSL.field("name", String.class).eq(BOOK_ENTRY.getName()))
                        .fetchOne(0, Long.class))
                .orElse(0L);
    }

    private void take(BookEntryRecord row) {
        if (row.getId() != last + 1) {
            find("Entries " + (last + 1) + " to " + (row.getId() - 1) + " are gone.");
        } else if (!EntryRows.hash(before, row).equals(row.getHash())) {
            find("Entry " + row.getId() + " is not as it was posted: its hash is not that of what it says now.");
        }
        last = row.getId();
        before = row.getHash();
        compareHeads();
    }

    private void compareHeads() {
        while (!closes.isEmpty() && closes.getFirst().getHeadEntryId() == last) {
            PeriodActRecord close = closes.removeFirst();
            if (!close.getHeadHash().equals(before)) {
                find("The head kept at the close of " + close.getLastDay() + " is not the hash of entry " + last + ".");
            }
        }
    }

    private void end(long everNumbered) {
        closes.forEach(close -> find("The close of " + close.getLastDay() + " kept entry " + close.getHeadEntryId()
                + " as the head, and the entries end with " + last + ": the tail was cut."));
        if (everNumbered > last) {
            find("The last entry ever posted was " + everNumbered + ", and the entries end with " + last
                    + ": the tail was cut.");
        }
    }

    private void find(String what) {
        if (findings.size() < MOST_FINDINGS) {
            findings.add(what);
        }
    }
}
