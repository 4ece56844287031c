package dayglass.books;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.job.Job;
import dayglass.support.Served;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A database with a job whose books are tested: euros, shooting Monday to Friday of two weeks in April 2027. */
public final class BookHouse implements AutoCloseable {
    public static final Currency EUR = Currency.of("EUR");
    public static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);

    public final Path file;
    public final Rooms rooms;
    public final Job.Id job;

    public BookHouse(Path folder) {
        this.file = folder.resolve("dayglass.db");
        this.rooms = Served.roomsAt(folder, "2027-05-01");
        this.job = done(rooms.jobs().add(job("Lantern Weir"))).id();
    }

    public static Job job(String name) {
        return new Job(
                name,
                EUR,
                Percent.ZERO,
                Optional.empty(),
                new Schedule(List.of(
                        new Schedule.Span(DateRange.inclusive(MONDAY, MONDAY.plusDays(4)), DayUse.SHOOT),
                        new Schedule.Span(DateRange.inclusive(MONDAY.plusDays(7), MONDAY.plusDays(11)), DayUse.SHOOT))),
                List.of(new Question.Need("40 mm", 1, Set.of(DayUse.SHOOT), List.of())),
                Job.Sources.NONE);
    }

    public static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem.detail() + problem.faults());
        });
    }

    public static String refused(Outcome<?> outcome) {
        return outcome.fold(
                value -> {
                    throw new AssertionError("it was done: " + value);
                },
                problem -> problem.detail()
                        + problem.faults().stream().map(Object::toString).toList());
    }

    /** An entry in euros over the two weeks. */
    public Entry entry(Kind kind, String code, String net) {
        return entry(kind, code, "Quay House", Amounts.at(Exchange.none(MONDAY), EUR, eur(net), eur("0")));
    }

    public Entry entry(Kind kind, String code, String supplier, Amounts amounts) {
        return new Entry(
                kind,
                job,
                MONDAY,
                DateRange.inclusive(MONDAY, MONDAY.plusDays(11)),
                new Entry.Coding(code, "", supplier),
                new Entry.Item("40 mm for two weeks", "", "", BigDecimal.ONE, amounts.net()),
                new Entry.Sum(amounts, "", Exchange.none(MONDAY)),
                Entry.Papers.NONE,
                Entry.Links.NONE);
    }

    public Posted post(Entry entry) {
        return done(rooms.books().post().post(List.of(entry))).get(0);
    }

    public static Money eur(String amount) {
        return Money.of("EUR", amount);
    }

    @Override
    public void close() {
        rooms.close();
    }
}
