package dayglass.web.page;

import dayglass.base.Outcome;
import dayglass.base.Transactions;
import dayglass.books.JobCostCodes;
import dayglass.cost.plan.StopSignal;
import dayglass.house.Household;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.planning.CopyJob;
import dayglass.planning.Costings;
import dayglass.planning.ImportJob;
import dayglass.planning.OptionSources;
import dayglass.planning.Priced;
import dayglass.planning.ResolveJob;
import java.time.Clock;

/** What the pages show and do, from the features. */
public record PageSources(
        Jobs jobs,
        OptionSources options,
        Costings costings,
        JobCostCodes costCodes,
        ResolveJob resolveJob,
        CopyJob copyJob,
        ImportJob importJob,
        JobCosting jobCosting,
        Transactions transactions,
        Clock clock,
        Household household) {

    /** Costs a job as it stands and keeps the costing, until told to stop with the best found so far. */
    @FunctionalInterface
    public interface JobCosting {
        Outcome<Priced> cost(Job.Id job, StopSignal stop);
    }
}
