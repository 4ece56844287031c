package dayglass.books.period;

import dayglass.house.Person;
import dayglass.job.Job;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * That a period was closed, or opened again.
 *
 * @param closedThrough the last closed day after it
 * @param head of the chain then
 * @param reason of opening again; may be empty for a close
 */
public record PeriodAct(
        Job.Id job, Deed deed, Period period, Optional<LocalDate> closedThrough, Head head, String reason) {
    /** The number of an act. */
    public record Id(long number) implements dayglass.base.Id {}

    /** What was done. */
    public enum Deed {
        CLOSED,
        REOPENED;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** An act that is kept, with who did it and when. */
    public record Kept(Id id, PeriodAct act, Person.Id by, Instant at) {}
}
