package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;

import dayglass.base.Money;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** What is left of a job's orders: the order itself, and the sums of what draws on it. */
final class OpenOrders {
    /** What draws on an order, of one kind. */
    private record Key(long order, String kind) {}

    private OpenOrders() {}

    static List<Entries.Order> of(DSLContext sql, Job.Id job, Optional<LocalDate> asOf) {
        Condition known = DSL.and(
                BOOK_ENTRY.JOB_ID.eq(job.number()),
                asOf.map(day -> BOOK_ENTRY.ENTRY_DATE.le(day.toString())).orElse(DSL.noCondition()));
        return of(sql, known, known);
    }

    static List<Entries.Order> among(DSLContext sql, Job.Id job, List<Entry.Id> entries) {
        List<Long> ids = entries.stream().map(Entry.Id::number).toList();
        Condition ofJob = BOOK_ENTRY.JOB_ID.eq(job.number());
        // What draws on an order is of its job; asked by the order alone, the index of those is used.
        return of(sql, ofJob.and(BOOK_ENTRY.ID.in(ids)), BOOK_ENTRY.COMMITMENT_ID.in(ids));
    }

    private static List<Entries.Order> of(DSLContext sql, Condition orders, Condition drawing) {
        Map<Key, Record> drawn = new HashMap<>();
        sql.select(
                        BOOK_ENTRY.COMMITMENT_ID,
                        BOOK_ENTRY.KIND,
                        DSL.sum(BOOK_ENTRY.NET_MINOR),
                        DSL.sum(BOOK_ENTRY.TAX_MINOR),
                        DSL.sum(BOOK_ENTRY.BASE_NET_MINOR),
                        DSL.sum(BOOK_ENTRY.BASE_TAX_MINOR))
                .from(BOOK_ENTRY)
                .where(
                        drawing,
                        BOOK_ENTRY.COMMITMENT_ID.isNotNull(),
                        BOOK_ENTRY.KIND.in(Kind.COMMITMENT.word(), Kind.ACCRUAL.word()))
                .groupBy(BOOK_ENTRY.COMMITMENT_ID, BOOK_ENTRY.KIND)
                .forEach(row -> drawn.put(new Key(row.value1(), row.value2()), row));
        return sql
                .selectFrom(BOOK_ENTRY)
                .where(orders, BOOK_ENTRY.KIND.eq(Kind.COMMITMENT.word()), BOOK_ENTRY.COMMITMENT_ID.isNull())
                .orderBy(BOOK_ENTRY.ID)
                .fetch(EntryRows::posted)
                .stream()
                .filter(Posted::isOrder)
                .map(order -> order(order, drawn))
                .toList();
    }

    private static Entries.Order order(Posted order, Map<Key, Record> drawn) {
        Amounts whole = order.entry().amounts();
        return new Entries.Order(
                order, whole.plus(drawn(order, drawn, Kind.COMMITMENT)), drawn(order, drawn, Kind.ACCRUAL));
    }

    private static Amounts drawn(Posted order, Map<Key, Record> drawn, Kind kind) {
        Amounts whole = order.entry().amounts();
        Record row = drawn.get(new Key(order.id().number(), kind.word()));
        if (row == null) {
            return Amounts.zero(whole.net().currency(), whole.baseNet().currency());
        }
        return new Amounts(
                sum(row, 2, whole.net()),
                sum(row, 3, whole.tax()),
                sum(row, 4, whole.baseNet()),
                sum(row, 5, whole.baseTax()));
    }

    private static Money sum(Record row, int column, Money like) {
        return new Money(like.currency(), row.get(column, BigDecimal.class).toBigIntegerExact());
    }
}
