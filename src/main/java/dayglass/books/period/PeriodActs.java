package dayglass.books.period;

import dayglass.base.Outcome;
import dayglass.job.Job;
import java.util.List;

/** Every close and reopening; never changed or removed. */
public interface PeriodActs {
    /** Who and when is kept with it. */
    Outcome<PeriodAct.Kept> add(PeriodAct act);

    /** In order. */
    List<PeriodAct.Kept> of(Job.Id job);
}
