package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static org.jooq.impl.DSL.notExists;
import static org.jooq.impl.DSL.selectOne;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Chain;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.house.Person;
import dayglass.job.Job;
import dayglass.storage.schema.tables.BookEntry;
import dayglass.storage.schema.tables.records.BookEntryRecord;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.Field;

/** Entries as rows of their table. */
final class EntryRows {
    /** The columns that the hash of an entry is of, in their order, which never changes. */
    static final List<Field<?>> HASHED = List.of(
            BOOK_ENTRY.ID,
            BOOK_ENTRY.POSTING_ID,
            BOOK_ENTRY.JOB_ID,
            BOOK_ENTRY.KIND,
            BOOK_ENTRY.ENTRY_DATE,
            BOOK_ENTRY.SERVICE_FROM,
            BOOK_ENTRY.SERVICE_TO,
            BOOK_ENTRY.COST_CODE,
            BOOK_ENTRY.EPISODE,
            BOOK_ENTRY.SUPPLIER,
            BOOK_ENTRY.DESCRIPTION,
            BOOK_ENTRY.TAG,
            BOOK_ENTRY.SERIAL,
            BOOK_ENTRY.QUANTITY,
            BOOK_ENTRY.RATE_MINOR,
            BOOK_ENTRY.NET_MINOR,
            BOOK_ENTRY.TAX_CODE,
            BOOK_ENTRY.TAX_MINOR,
            BOOK_ENTRY.CURRENCY,
            BOOK_ENTRY.EXCHANGE_RATE,
            BOOK_ENTRY.EXCHANGE_SOURCE,
            BOOK_ENTRY.EXCHANGE_DATE,
            BOOK_ENTRY.BASE_CURRENCY,
            BOOK_ENTRY.BASE_NET_MINOR,
            BOOK_ENTRY.BASE_TAX_MINOR,
            BOOK_ENTRY.PURCHASE_ORDER,
            BOOK_ENTRY.INVOICE,
            BOOK_ENTRY.NOTE,
            BOOK_ENTRY.REVERSES_ID,
            BOOK_ENTRY.COMMITMENT_ID,
            BOOK_ENTRY.COSTING_ID,
            BOOK_ENTRY.PERSON_ID,
            BOOK_ENTRY.RECORDED_AT);

    private EntryRows() {}

    /** That an entry was not taken back. */
    static Condition isNotReversed() {
        BookEntry reversal = BOOK_ENTRY.as("reversal");
        return notExists(selectOne().from(reversal).where(reversal.REVERSES_ID.eq(BOOK_ENTRY.ID)));
    }

    /** That an entry neither was taken back nor takes another back. */
    static Condition stands() {
        return BOOK_ENTRY.REVERSES_ID.isNull().and(isNotReversed());
    }

    /** The hash that a row should bear. */
    static String hash(String before, BookEntryRecord row) {
        Map<String, Optional<String>> columns = new LinkedHashMap<>();
        HASHED.forEach(column -> columns.put(
                column.getName(), Optional.ofNullable(row.get(column)).map(Object::toString)));
        return Chain.link(before, columns);
    }

    static void fill(BookEntryRecord row, Entry entry) {
        row.setJobId(entry.job().number());
        row.setKind(entry.kind().word());
        row.setEntryDate(entry.date().toString());
        row.setServiceFrom(entry.service().from().toString());
        row.setServiceTo(entry.service().lastDay().toString());
        row.setCostCode(entry.coding().costCode());
        row.setEpisode(entry.coding().episode());
        row.setSupplier(entry.coding().supplier());
        fill(row, entry.item());
        fill(row, entry.sum());
        row.setPurchaseOrder(entry.papers().purchaseOrder());
        row.setInvoice(entry.papers().invoice());
        row.setNote(entry.papers().note());
        row.setReversesId(entry.links().reverses().map(Entry.Id::number).orElse(null));
        row.setCommitmentId(entry.links().commitment().map(Entry.Id::number).orElse(null));
        row.setCostingId(entry.links().costing().orElse(null));
    }

    private static void fill(BookEntryRecord row, Entry.Item item) {
        row.setDescription(item.description());
        row.setTag(item.tag());
        row.setSerial(item.serial());
        row.setQuantity(item.quantity().toPlainString());
        row.setRateMinor(minor(item.rate()));
    }

    private static void fill(BookEntryRecord row, Entry.Sum sum) {
        Amounts amounts = sum.amounts();
        row.setNetMinor(minor(amounts.net()));
        row.setTaxCode(sum.taxCode());
        row.setTaxMinor(minor(amounts.tax()));
        row.setCurrency(amounts.net().currency().code());
        row.setExchangeRate(sum.exchange().rate().toPlainString());
        row.setExchangeSource(sum.exchange().source());
        row.setExchangeDate(sum.exchange().on().toString());
        row.setBaseCurrency(amounts.baseNet().currency().code());
        row.setBaseNetMinor(minor(amounts.baseNet()));
        row.setBaseTaxMinor(minor(amounts.baseTax()));
    }

    private static long minor(Money money) {
        return money.minor().longValueExact();
    }

    static Posted posted(BookEntryRecord row) {
        Currency currency = Currency.of(row.getCurrency());
        return new Posted(
                new Entry.Id(row.getId()),
                new Entry.Id(row.getPostingId()),
                new Entry(
                        Kind.of(row.getKind()).orElseThrow(),
                        new Job.Id(row.getJobId()),
                        day(row.getEntryDate()),
                        DateRange.inclusive(day(row.getServiceFrom()), day(row.getServiceTo())),
                        new Entry.Coding(row.getCostCode(), row.getEpisode(), row.getSupplier()),
                        new Entry.Item(
                                row.getDescription(),
                                row.getTag(),
                                row.getSerial(),
                                new BigDecimal(row.getQuantity()),
                                Money.ofMinor(currency, row.getRateMinor())),
                        sum(row, currency),
                        new Entry.Papers(row.getPurchaseOrder(), row.getInvoice(), row.getNote()),
                        new Entry.Links(
                                Optional.ofNullable(row.getReversesId()).map(Entry.Id::new),
                                Optional.ofNullable(row.getCommitmentId()).map(Entry.Id::new),
                                Optional.ofNullable(row.getCostingId()))),
                new Person.Id(row.getPersonId()),
                Instant.ofEpochSecond(row.getRecordedAt()),
                row.getHash());
    }

    private static Entry.Sum sum(BookEntryRecord row, Currency currency) {
        Currency base = Currency.of(row.getBaseCurrency());
        return new Entry.Sum(
                new Amounts(
                        Money.ofMinor(currency, row.getNetMinor()),
                        Money.ofMinor(currency, row.getTaxMinor()),
                        Money.ofMinor(base, row.getBaseNetMinor()),
                        Money.ofMinor(base, row.getBaseTaxMinor())),
                row.getTaxCode(),
                new Exchange(
                        new BigDecimal(row.getExchangeRate()), row.getExchangeSource(), day(row.getExchangeDate())));
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }
}
