package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_TO_COMPLETE;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.books.report.ToComplete;
import dayglass.books.report.TypedFigures;
import dayglass.house.Person;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.BookToCompleteRecord;
import java.math.BigInteger;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Typed figures as rows, which triggers keep as they are. */
public final class JooqTypedFigures implements TypedFigures {
    private final Database database;

    public JooqTypedFigures(Database database) {
        this.database = database;
    }

    @Override
    public Outcome<ToComplete.Kept> add(ToComplete figure) {
        return database.writing(sql -> {
            BookToCompleteRecord row = sql.newRecord(BOOK_TO_COMPLETE);
            row.setJobId(figure.job().number());
            row.setDay(figure.date().toString());
            row.setCostCode(figure.place().costCode());
            row.setEpisode(figure.place().episode());
            figure.sum().ifPresent(sum -> {
                row.setCurrency(sum.net().currency().code());
                row.setNetMinor(sum.net().minor().longValueExact());
                row.setTaxMinor(sum.tax().minor().longValueExact());
            });
            row.setNote(figure.note());
            row.setPersonId(database.recording().who().number());
            row.setSaidAt(database.recording().when().getEpochSecond());
            row.store();
            return Outcome.done(kept(row));
        });
    }

    @Override
    public List<ToComplete.Kept> of(Job.Id job) {
        return database.reading(sql -> of(sql, job));
    }

    static List<ToComplete.Kept> of(DSLContext sql, Job.Id job) {
        return sql.selectFrom(BOOK_TO_COMPLETE)
                .where(BOOK_TO_COMPLETE.JOB_ID.eq(job.number()))
                .orderBy(BOOK_TO_COMPLETE.ID)
                .fetch(JooqTypedFigures::kept);
    }

    private static ToComplete.Kept kept(BookToCompleteRecord row) {
        return new ToComplete.Kept(
                new ToComplete.Id(row.getId()),
                new ToComplete(
                        new Job.Id(row.getJobId()),
                        LocalDate.parse(row.getDay()),
                        new ToComplete.Place(row.getCostCode(), row.getEpisode()),
                        Optional.ofNullable(row.getCurrency())
                                .map(Currency::of)
                                .map(currency -> new ToComplete.Sum(
                                        money(currency, row.getNetMinor()), money(currency, row.getTaxMinor()))),
                        row.getNote()),
                new Person.Id(row.getPersonId()),
                Instant.ofEpochSecond(row.getSaidAt()));
    }

    private static Money money(Currency currency, long minor) {
        return new Money(currency, BigInteger.valueOf(minor));
    }
}
