package dayglass.planning;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.job.Job;
import dayglass.job.Jobs;

/** Makes a second job with the same schedule, needs and sources, to be changed without touching the first. */
public final class CopyJob {
    private final Jobs jobs;
    private final Transactions transactions;

    public CopyJob(Jobs jobs, Transactions transactions) {
        this.jobs = jobs;
        this.transactions = transactions;
    }

    /** Copies the job as it is now, under a name of its own. */
    public Outcome<Stored<Job.Id, Job>> copy(Job.Id id, String name) {
        return transactions.atomically(() -> jobs.find(id)
                .map(job -> jobs.add(job.facts().renamed(name)))
                .orElseGet(() ->
                        Outcome.refused(Problem.Code.NOT_FOUND, "There is no job with the id " + id.number() + ".")));
    }
}
