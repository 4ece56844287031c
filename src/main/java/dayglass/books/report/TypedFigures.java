package dayglass.books.report;

import dayglass.base.Outcome;
import dayglass.job.Job;
import java.util.List;

/** Every figure to complete that somebody typed; never changed or removed. */
public interface TypedFigures {
    /** Who and when is kept with it. */
    Outcome<ToComplete.Kept> add(ToComplete figure);

    /** In the order in which they were typed. */
    List<ToComplete.Kept> of(Job.Id job);
}
