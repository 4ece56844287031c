package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.entry.Kind;
import dayglass.books.report.CostFigures;
import dayglass.books.report.ToComplete;
import dayglass.job.Job;
import dayglass.storage.Database;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Sums of entries, worked out by the database. */
public final class JooqCostFigures implements CostFigures {
    private final Database database;

    public JooqCostFigures(Database database) {
        this.database = database;
    }

    @Override
    public Sums of(Job.Id job, Optional<LocalDate> until) {
        return database.reading(
                sql -> new Sums(cells(sql, job, until), ToComplete.inForce(JooqTypedFigures.of(sql, job), until)));
    }

    private static List<Cell> cells(DSLContext sql, Job.Id job, Optional<LocalDate> until) {
        return sql.select(
                        BOOK_ENTRY.COST_CODE,
                        BOOK_ENTRY.EPISODE,
                        BOOK_ENTRY.SUPPLIER,
                        BOOK_ENTRY.KIND,
                        BOOK_ENTRY.BASE_CURRENCY,
                        DSL.sum(BOOK_ENTRY.BASE_NET_MINOR),
                        DSL.sum(BOOK_ENTRY.BASE_TAX_MINOR))
                .from(BOOK_ENTRY)
                .where(
                        BOOK_ENTRY.JOB_ID.eq(job.number()),
                        until.map(day -> BOOK_ENTRY.ENTRY_DATE.le(day.toString()))
                                .orElse(DSL.noCondition()))
                .groupBy(
                        BOOK_ENTRY.COST_CODE,
                        BOOK_ENTRY.EPISODE,
                        BOOK_ENTRY.SUPPLIER,
                        BOOK_ENTRY.KIND,
                        BOOK_ENTRY.BASE_CURRENCY)
                .fetch(row -> new Cell(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        Kind.of(row.value4()).orElseThrow(),
                        money(row.value5(), row.value6()),
                        money(row.value5(), row.value7())));
    }

    private static Money money(String currency, BigDecimal minor) {
        return new Money(Currency.of(currency), minor.toBigIntegerExact());
    }
}
