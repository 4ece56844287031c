package dayglass.planning;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.job.Job;
import java.util.List;
import java.util.Optional;

/** Every costing made; they can be added and removed, never changed. */
public interface Costings {
    KeptCosting.Id add(KeptCosting costing);

    Optional<Stored<KeptCosting.Id, KeptCosting>> find(KeptCosting.Id id);

    /**
     * By id, in order.
     *
     * @param job only those of this job
     * @param after only those after this one
     * @param most at most so many
     */
    List<Stored<KeptCosting.Id, KeptCosting.Summary>> list(
            Optional<Job.Id> job, Optional<KeptCosting.Id> after, int most);

    /** The latest costing of a job. */
    Optional<Stored<KeptCosting.Id, KeptCosting>> latestOf(Job.Id job);

    Outcome<KeptCosting.Id> remove(KeptCosting.Id id);
}
