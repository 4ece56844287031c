package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.BOOK_INVOICE;
import static dayglass.storage.schema.Tables.BOOK_PAYMENT;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.post.Invoice;
import dayglass.books.post.Invoices;
import dayglass.house.Person;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.BookInvoiceRecord;
import dayglass.storage.schema.tables.records.BookPaymentRecord;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.DSLContext;

/** Invoices and payments as rows, which triggers keep as they are. */
public final class JooqInvoices implements Invoices {
    private final Database database;

    public JooqInvoices(Database database) {
        this.database = database;
    }

    @Override
    public Kept add(Invoice invoice, Entry.Id posting, Money gross, Money baseGross) {
        return written(sql -> {
            BookInvoiceRecord row = sql.newRecord(BOOK_INVOICE);
            row.setJobId(invoice.job().number());
            row.setSupplier(invoice.supplier());
            row.setNumber(invoice.number());
            row.setInvoiceDate(invoice.date().toString());
            row.setPostingId(posting.number());
            row.setCurrency(gross.currency().code());
            row.setGrossMinor(gross.minor().longValueExact());
            row.setBaseCurrency(baseGross.currency().code());
            row.setBaseGrossMinor(baseGross.minor().longValueExact());
            row.store();
            return kept(sql, row);
        });
    }

    private <T> T written(Function<DSLContext, T> work) {
        return database.<T>writing(sql -> Outcome.done(work.apply(sql))).fold(done -> done, problem -> {
            throw new IllegalStateException(problem.detail());
        });
    }

    @Override
    public Optional<Kept> find(Invoice.Id id) {
        return database.reading(sql -> sql.selectFrom(BOOK_INVOICE)
                .where(BOOK_INVOICE.ID.eq(id.number()))
                .fetchOptional(row -> kept(sql, row)));
    }

    @Override
    public Optional<Kept> ofPosting(Entry.Id posting) {
        return database.reading(sql -> sql.selectFrom(BOOK_INVOICE)
                .where(BOOK_INVOICE.POSTING_ID.eq(posting.number()))
                .fetchOptional(row -> kept(sql, row)));
    }

    @Override
    public boolean isPosted(Job.Id job, String supplier, String number) {
        return database.reading(sql -> sql
                .selectFrom(BOOK_INVOICE)
                .where(
                        BOOK_INVOICE.JOB_ID.eq(job.number()),
                        BOOK_INVOICE.SUPPLIER.eq(supplier),
                        BOOK_INVOICE.NUMBER.eq(number))
                .fetch(row -> kept(sql, row))
                .stream()
                .anyMatch(kept -> !kept.reversed()));
    }

    @Override
    public List<Kept> of(Job.Id job) {
        return database.reading(sql -> sql.selectFrom(BOOK_INVOICE)
                .where(BOOK_INVOICE.JOB_ID.eq(job.number()))
                .orderBy(BOOK_INVOICE.ID)
                .fetch(row -> kept(sql, row)));
    }

    private static Kept kept(DSLContext sql, BookInvoiceRecord row) {
        return new Kept(
                new Invoice.Id(row.getId()),
                new Job.Id(row.getJobId()),
                row.getSupplier(),
                row.getNumber(),
                LocalDate.parse(row.getInvoiceDate()),
                new Entry.Id(row.getPostingId()),
                Money.ofMinor(Currency.of(row.getCurrency()), row.getGrossMinor()),
                Money.ofMinor(Currency.of(row.getBaseCurrency()), row.getBaseGrossMinor()),
                sql.fetchExists(BOOK_ENTRY, BOOK_ENTRY.REVERSES_ID.eq(row.getPostingId())));
    }

    @Override
    public Payment pay(Invoice.Id invoice, Paid paid, Optional<Entry.Id> difference) {
        return written(sql -> {
            BookPaymentRecord row = sql.newRecord(BOOK_PAYMENT);
            row.setInvoiceId(invoice.number());
            row.setPaidOn(paid.on().toString());
            row.setAmountMinor(paid.amount().minor().longValueExact());
            row.setExchangeRate(paid.exchange().rate().toPlainString());
            row.setExchangeSource(paid.exchange().source());
            row.setExchangeDate(paid.exchange().on().toString());
            row.setBaseMinor(paid.base().minor().longValueExact());
            row.setBookedMinor(paid.booked().minor().longValueExact());
            row.setEntryId(difference.map(Entry.Id::number).orElse(null));
            row.setPersonId(database.recording().who().number());
            row.setRecordedAt(database.recording().when().getEpochSecond());
            row.store();
            return payment(row, paid.amount().currency(), paid.base().currency());
        });
    }

    @Override
    public List<Payment> payments(Invoice.Id invoice) {
        return database.reading(sql -> sql.select(BOOK_PAYMENT, BOOK_INVOICE.CURRENCY, BOOK_INVOICE.BASE_CURRENCY)
                .from(BOOK_PAYMENT)
                .join(BOOK_INVOICE)
                .on(BOOK_INVOICE.ID.eq(BOOK_PAYMENT.INVOICE_ID))
                .where(BOOK_PAYMENT.INVOICE_ID.eq(invoice.number()))
                .orderBy(BOOK_PAYMENT.ID)
                .fetch(row -> payment(row.value1(), Currency.of(row.value2()), Currency.of(row.value3()))));
    }

    private static Payment payment(BookPaymentRecord row, Currency currency, Currency base) {
        return new Payment(
                row.getId(),
                new Paid(
                        LocalDate.parse(row.getPaidOn()),
                        Money.ofMinor(currency, row.getAmountMinor()),
                        new Exchange(
                                new BigDecimal(row.getExchangeRate()),
                                row.getExchangeSource(),
                                LocalDate.parse(row.getExchangeDate())),
                        Money.ofMinor(base, row.getBaseMinor()),
                        Money.ofMinor(base, row.getBookedMinor())),
                Optional.ofNullable(row.getEntryId()).map(Entry.Id::new),
                new Person.Id(row.getPersonId()),
                Instant.ofEpochSecond(row.getRecordedAt()));
    }
}
