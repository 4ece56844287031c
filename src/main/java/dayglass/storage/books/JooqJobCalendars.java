package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_CALENDAR;
import static dayglass.storage.schema.Tables.JOB;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.period.JobCalendars;
import dayglass.books.period.PeriodCalendar;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.BookCalendarRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** A row a job, the ends of its periods as JSON; weeks are an empty list. */
public final class JooqJobCalendars extends VersionedTable<Job.Id, JobCalendars.OfJob, BookCalendarRecord>
        implements JobCalendars {
    public JooqJobCalendars(Database database) {
        super(database, new Shape<>("calendar of periods", BOOK_CALENDAR.JOB_ID, BOOK_CALENDAR.VERSION, Job.Id::new));
    }

    @Override
    public Stored<Job.Id, OfJob> of(Job.Id job) {
        return find(job).orElseGet(() -> new Stored<>(job, 0, new OfJob(job, PeriodCalendar.WEEKS)));
    }

    @Override
    public Outcome<Stored<Job.Id, OfJob>> keep(Stored<Job.Id, OfJob> calendar) {
        return addOrChange(calendar);
    }

    @Override
    protected void fill(BookCalendarRecord row, OfJob facts) {
        row.setJobId(facts.job().number());
        row.setFirstDay(facts.calendar().firstDay().map(LocalDate::toString).orElse(""));
        row.setEndsJson(FactsJson.texts(
                facts.calendar().ends().stream().map(LocalDate::toString).toList()));
    }

    @Override
    protected OfJob facts(DSLContext sql, BookCalendarRecord row) {
        return new OfJob(
                new Job.Id(row.getJobId()),
                new PeriodCalendar(
                        Optional.of(row.getFirstDay())
                                .filter(day -> !day.isEmpty())
                                .map(LocalDate::parse),
                        FactsJson.texts(row.getEndsJson()).stream()
                                .map(LocalDate::parse)
                                .toList()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Job.Id> self, OfJob facts) {
        return missing(sql, "", "job", JOB.ID, facts.job());
    }

    /** It goes with its job. */
    @Override
    protected List<String> uses(DSLContext sql, Job.Id id) {
        return List.of();
    }
}
