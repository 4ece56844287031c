package dayglass.books;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.job.Job;

/** The cost codes of every job; one of which none were kept yet has none, at version 0. */
public interface JobCostCodes {
    Stored<Job.Id, JobCodes> of(Job.Id job);

    /** Keeps the codes in place of those of that version. */
    Outcome<Stored<Job.Id, JobCodes>> keep(Stored<Job.Id, JobCodes> codes);
}
