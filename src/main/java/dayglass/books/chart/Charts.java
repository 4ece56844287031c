package dayglass.books.chart;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.job.Job;

/** The chart of every job; one of which none was kept has an empty one, at version 0. */
public interface Charts {
    Stored<Job.Id, Chart> of(Job.Id job);

    /** Keeps a chart in place of that of the version; refused where a code that entries bear would be gone. */
    Outcome<Stored<Job.Id, Chart>> keep(Stored<Job.Id, Chart> chart);
}
