package dayglass.books.period;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.job.Job;

/** The calendar of every job; one of which none was kept has weeks, at version 0. */
public interface JobCalendars {
    Stored<Job.Id, OfJob> of(Job.Id job);

    /** Keeps a calendar in place of that of the version. */
    Outcome<Stored<Job.Id, OfJob>> keep(Stored<Job.Id, OfJob> calendar);

    record OfJob(Job.Id job, PeriodCalendar calendar) {}
}
