package dayglass.books.entry;

import dayglass.base.Outcome;
import dayglass.books.period.Head;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Every entry, in the order of posting; they can be added and nothing else. */
public interface Entries {
    /** Posts entries together, all or none; refused where a period is closed. Who and when is kept with each. */
    Outcome<List<Posted>> append(List<Entry> entries);

    Optional<Posted> find(Entry.Id id);

    /** Those that were posted together. */
    List<Posted> posting(Entry.Id first);

    /** Of these, the ones that were reversed. */
    List<Entry.Id> reversed(List<Entry.Id> entries);

    /** By id, in order. */
    List<Posted> list(Which which, Optional<Entry.Id> after, int most);

    /** Reads entries in order of id, one state of the books for as long as the work lasts, however many there are. */
    <T> T reading(Which which, Function<Run, T> work);

    /** Orders of a job with what is left of them, as the books stood at the end of a day. */
    List<Order> orders(Job.Id job, Optional<LocalDate> asOf);

    /** Of these entries of a job, the orders, with what is left of them now. */
    List<Order> ordersAmong(Job.Id job, List<Entry.Id> entries);

    /** The entries of an accepted costing that were not taken back. */
    boolean hasCosting(long costing);

    /** The date of the first entry of a job by date, but for those that were taken back on their own day. */
    Optional<LocalDate> earliest(Job.Id job);

    Head head();

    /** Entries that can be gone through, more than once. */
    @FunctionalInterface
    interface Run {
        void each(Consumer<Posted> one);
    }

    /**
     * Which entries.
     *
     * @param from with this date or a later one
     * @param until with this date or an earlier one
     */
    record Which(
            Job.Id job,
            Optional<Kind> kind,
            Optional<String> costCode,
            Optional<String> episode,
            Optional<String> supplier,
            Optional<LocalDate> from,
            Optional<LocalDate> until) {
        public static Which of(Job.Id job) {
            return between(job, Optional.empty(), Optional.empty());
        }

        public static Which between(Job.Id job, Optional<LocalDate> from, Optional<LocalDate> until) {
            return new Which(job, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), from, until);
        }
    }

    /**
     * An order.
     *
     * @param open what is neither invoiced nor accrued nor taken back
     * @param accrued what is accrued and not reversed
     */
    record Order(Posted commitment, Amounts open, Amounts accrued) {}
}
