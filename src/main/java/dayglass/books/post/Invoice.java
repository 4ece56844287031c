package dayglass.books.post;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A supplier's invoice or credit note as it is to be posted.
 *
 * @param number the supplier's own; once for each supplier of a job
 * @param postedOn decides the period
 */
public record Invoice(
        Job.Id job,
        String supplier,
        String number,
        LocalDate date,
        LocalDate postedOn,
        Exchange exchange,
        List<Line> lines) {
    public Invoice {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("an invoice has a line");
        }
    }

    /** The number of an invoice in the books. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * A line.
     *
     * @param order the commitment that it is for; empty where it has none
     * @param text what it says and where it belongs; what is left out is as on the order
     * @param more whether more is to come on the order, so that what is left of it stays committed
     * @param explanation of the difference; empty where there is none to explain
     */
    public record Line(Optional<Entry.Id> order, Text text, Money net, Money tax, boolean more, String explanation) {}

    /** The words of a line; each may be left out where the line has an order. */
    public record Text(
            Optional<String> description,
            Optional<String> costCode,
            Optional<String> episode,
            Optional<DateRange> service,
            String taxCode) {
        public static final Text AS_ORDERED =
                new Text(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");
    }
}
