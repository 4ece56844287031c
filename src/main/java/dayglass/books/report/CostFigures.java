package dayglass.books.report;

import dayglass.base.Money;
import dayglass.books.entry.Kind;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Sums of a job's entries, as the books hold them, and what was typed beside them. */
public interface CostFigures {
    /**
     * The sums of a job.
     *
     * @param until entries with this date or an earlier one
     */
    Sums of(Job.Id job, Optional<LocalDate> until);

    /**
     * What a report is made of, read at one moment.
     *
     * @param typed what is typed as to complete and counts
     */
    record Sums(List<Cell> cells, List<ToComplete.Kept> typed) {
        public Sums {
            cells = List.copyOf(cells);
            typed = List.copyOf(typed);
        }
    }

    /** The sum of the entries that share all of these, in the base currency. */
    record Cell(String costCode, String episode, String supplier, Kind kind, Money net, Money tax) {}
}
