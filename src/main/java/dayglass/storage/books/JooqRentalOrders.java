package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.BOOK_RENTAL_ORDER;

import dayglass.base.Outcome;
import dayglass.books.entry.Posted;
import dayglass.books.post.RentalOrders;
import dayglass.desk.rental.Rental;
import dayglass.job.Job;
import dayglass.storage.Database;
import java.util.LinkedHashMap;
import java.util.Map;

/** What rentals ordered, as rows beside their entries. */
public record JooqRentalOrders(Database database) implements RentalOrders {
    @Override
    public Map<Integer, InBooks> of(Rental.Id rental) {
        Map<Integer, InBooks> standing = new LinkedHashMap<>();
        database.reading(sql -> sql.select(BOOK_RENTAL_ORDER.LINE, BOOK_ENTRY.JOB_ID, BOOK_ENTRY.ID)
                        .from(BOOK_RENTAL_ORDER)
                        .join(BOOK_ENTRY)
                        .on(BOOK_ENTRY.ID.eq(BOOK_RENTAL_ORDER.ENTRY_ID))
                        .where(BOOK_RENTAL_ORDER.RENTAL_ID.eq(rental.number()), EntryRows.isNotReversed())
                        .orderBy(BOOK_RENTAL_ORDER.LINE)
                        .fetch())
                .forEach(row -> standing.put(row.value1(), new InBooks(new Job.Id(row.value2()), row.value3())));
        return standing;
    }

    @Override
    public void isFor(Posted commitment, Rental.Id rental, int line) {
        Outcome<Integer> kept = database.writing(sql -> Outcome.done(sql.insertInto(BOOK_RENTAL_ORDER)
                .set(BOOK_RENTAL_ORDER.ENTRY_ID, commitment.id().number())
                .set(BOOK_RENTAL_ORDER.RENTAL_ID, rental.number())
                .set(BOOK_RENTAL_ORDER.LINE, line)
                .execute()));
        if (kept instanceof Outcome.Refused<Integer> refused) {
            throw new IllegalStateException(refused.problem().detail());
        }
    }
}
