package dayglass.storage.desk;

import static dayglass.storage.schema.Tables.RENTAL;
import static dayglass.storage.schema.Tables.RENTAL_BOOKING;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.Rentals;
import dayglass.inventory.Unit;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.RentalRecord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.TableField;
import org.jooq.impl.DSL;

/** Rentals as rows; whether their units are out stands with the bookings. */
public final class JooqRentals extends VersionedTable<Rental.Id, Rental, RentalRecord> implements Rentals {
    public JooqRentals(Database database) {
        super(database, new Shape<>("rental", RENTAL.ID, RENTAL.VERSION, Rental.Id::new));
    }

    @Override
    public long nextNumber() {
        return next(RENTAL.NUMBER);
    }

    @Override
    public long nextInvoice() {
        return next(RENTAL.INVOICE);
    }

    private long next(TableField<RentalRecord, Integer> number) {
        return database.reading(sql -> sql.select(DSL.coalesce(DSL.max(number), 0))
                        .from(RENTAL)
                        .fetchSingle()
                        .value1())
                + 1L;
    }

    @Override
    public Optional<Stored<Rental.Id, Rental>> ofQuote(Quote.Id quote) {
        return database.reading(sql -> sql.selectFrom(RENTAL)
                .where(RENTAL.QUOTE_ID.eq(quote.number()))
                .fetchOptional(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<Rental.Id, Rental>> open() {
        return database.reading(sql -> sql.selectFrom(RENTAL)
                .where(RENTAL.ENDED_AT.isNull())
                .orderBy(RENTAL.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<Rental.Id, Rental>> standingSince(Instant since) {
        return database.reading(sql -> sql.selectFrom(RENTAL)
                .where(RENTAL.ENDED_AT.isNull().or(RENTAL.ENDED_AT.ge(since.getEpochSecond())))
                .orderBy(RENTAL.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<Rental.Id, Rental>> ofUnit(Unit.Id unit) {
        return database.reading(sql -> sql.selectFrom(RENTAL)
                .where(RENTAL.ID.in(sql.select(RENTAL_BOOKING.RENTAL_ID)
                        .from(RENTAL_BOOKING)
                        .where(RENTAL_BOOKING.UNIT_ID.eq(unit.number()))))
                .orderBy(RENTAL.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    protected void fill(RentalRecord row, Rental facts) {
        row.setNumber(Math.toIntExact(facts.number()));
        row.setQuoteId(facts.quote().number());
        row.setCustomer(facts.customer().name());
        facts.ending().ifPresent(ending -> {
            row.setEndedAt(ending.at().getEpochSecond());
            ending.invoice().ifPresent(number -> row.setInvoice(Math.toIntExact(number)));
        });
        row.setRentalJson(FactsJson.rental(facts));
    }

    @Override
    protected Rental facts(DSLContext sql, RentalRecord row) {
        return FactsJson.rental(row.getRentalJson());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Rental.Id> self, Rental facts) {
        return Optional.empty();
    }

    /** The row itself is never removed. */
    @Override
    protected List<String> uses(DSLContext sql, Rental.Id id) {
        return List.of("the house, which keeps every rental");
    }
}
