package dayglass.books.post;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.chart.Chart;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.EntryFaults;
import dayglass.books.entry.Posted;
import dayglass.books.entry.Split;
import dayglass.books.period.PeriodCalendar;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Posts entries and takes them back. Whatever is posted goes through here. */
public final class PostEntries {
    /** Entries that one entry is split into, at most. */
    private static final int MOST_AT_ONCE = 2_000;

    private final Books books;

    PostEntries(Books books) {
        this.books = books;
    }

    /** Posts entries of one job together; refused where the chart lacks a code or a period is closed. */
    public Outcome<List<Posted>> post(List<Entry> entries) {
        return books.house()
                .transactions()
                .atomically(() -> refusal(entries)
                        .<Outcome<List<Posted>>>map(Outcome::refused)
                        .orElseGet(() -> books.entries().append(entries)));
    }

    /** What posting these would give, by doing it and taking it back. */
    public Outcome<List<Posted>> preview(List<Entry> entries) {
        return books.house().transactions().tried(() -> post(entries));
    }

    private Optional<Problem> refusal(List<Entry> entries) {
        Job.Id job = entries.get(0).job();
        Chart chart = books.charts().of(job).facts();
        return entries.stream()
                .flatMap(entry -> EntryFaults.of(entry, chart).stream())
                .findFirst()
                .map(fault -> Problem.faulty(List.of(fault)))
                .or(() -> foreignBase(job, entries));
    }

    /** The figures of a job are one currency's; the first entry settles which. */
    private Optional<Problem> foreignBase(Job.Id job, List<Entry> entries) {
        Currency base = entries.get(0).amounts().baseNet().currency();
        return books.entries().list(Entries.Which.of(job), Optional.empty(), 1).stream()
                .map(first -> first.entry().amounts().baseNet().currency())
                .filter(settled -> !settled.equals(base))
                .map(settled -> new Problem(
                        Problem.Code.CANNOT_BE_DONE,
                        "The books of this job are kept in " + settled + ", and the job says " + base
                                + " now: set its currency back."))
                .findFirst();
    }

    /** Posts an entry in parts that add up to it, over codes and episodes, or over the periods in which it serves. */
    public Outcome<List<Posted>> postSplit(Entry entry, List<Split.Part> parts, boolean overPeriods) {
        Chart chart = books.charts().of(entry.job()).facts();
        List<Fault> faults = IntStream.range(0, parts.size())
                .filter(at -> !chart.allows(parts.get(at).costCode()))
                .mapToObj(at -> new Fault(
                        "/parts/" + at + "/costCode",
                        EntryFaults.codeMissing(parts.get(at).costCode())))
                .toList();
        if (!faults.isEmpty()) {
            return Outcome.refused(Problem.faulty(faults));
        }
        List<Entry> split = parts.isEmpty() ? List.of(entry) : Split.over(entry, parts);
        return overPeriods ? postOverPeriods(entry, split) : postFew(split);
    }

    private Outcome<List<Posted>> postOverPeriods(Entry entry, List<Entry> split) {
        PeriodCalendar calendar =
                books.periods().calendars().of(entry.job()).facts().calendar();
        Optional<LocalDate> outside = entry.service().stream()
                .filter(day -> calendar.of(day).isEmpty())
                .findFirst();
        if (outside.isPresent()) {
            return Outcome.faulty(
                    "/serviceTo", "the job's calendar has no period for " + outside.get() + ": add one first");
        }
        // Each part makes at least an entry; so many are not even counted by their periods.
        return split.size() > MOST_AT_ONCE
                ? postFew(split)
                : postFew(split.stream()
                        .flatMap(each ->
                                Split.overPeriods(each, day -> calendar.of(day).orElseThrow()).stream())
                        .limit(MOST_AT_ONCE + 1L)
                        .toList());
    }

    private Outcome<List<Posted>> postFew(List<Entry> split) {
        return split.size() > MOST_AT_ONCE
                ? Outcome.faulty(
                        "/parts",
                        "make more than " + MOST_AT_ONCE
                                + " entries with the periods: take fewer parts or a shorter service")
                : post(split);
    }

    /**
     * Takes an entry back by one of the other sign, with whatever was posted with it for the same order, so that an
     * invoice's line and what it drew go together. An invoice goes back whole, with the differences of its payments.
     *
     * @param whole everything that was posted with it
     */
    public Outcome<List<Posted>> reverse(Entry.Id id, LocalDate on, String reason, boolean whole) {
        return books.house()
                .transactions()
                .atomically(() -> books.entries()
                        .find(id)
                        .map(found -> reverse(found, on, reason, whole))
                        .orElseGet(() -> Outcome.refused(
                                Problem.Code.NOT_FOUND, "There is no entry with the id " + id.number() + ".")));
    }

    private Outcome<List<Posted>> reverse(Posted entry, LocalDate on, String reason, boolean whole) {
        List<Posted> posting = books.entries().posting(entry.posting());
        List<Posted> wanted = new ArrayList<>(posting.stream()
                .filter(each -> whole || each.equals(entry) || goesWith(entry, each))
                .toList());
        Optional<Invoices.Kept> invoice = books.invoices().ofPosting(entry.posting());
        if (invoice.isPresent() && wanted.size() < posting.size()) {
            return Outcome.refused(
                    Problem.Code.CANNOT_BE_DONE,
                    "The invoice " + invoice.get().number() + " of "
                            + invoice.get().supplier()
                            + " is taken back whole: take it back with everything that was posted with it"
                            + " (wholePosting), then enter it anew.");
        }
        invoice.ifPresent(each -> wanted.addAll(differences(each)));
        List<Entry.Id> done =
                books.entries().reversed(wanted.stream().map(Posted::id).toList());
        List<Posted> left =
                wanted.stream().filter(each -> !done.contains(each.id())).toList();
        Optional<Problem> refusal = refusal(entry, left);
        return refusal.isPresent()
                ? Outcome.refused(refusal.get())
                : post(left.stream().map(each -> each.reversal(on, reason)).toList());
    }

    private List<Posted> differences(Invoices.Kept invoice) {
        return books.invoices().payments(invoice.id()).stream()
                .flatMap(payment -> payment.difference().stream())
                .flatMap(id -> books.entries().find(id).stream())
                .toList();
    }

    private static boolean goesWith(Posted entry, Posted other) {
        return entry.entry().links().commitment().isPresent()
                && entry.entry()
                        .links()
                        .commitment()
                        .equals(other.entry().links().commitment());
    }

    private Optional<Problem> refusal(Posted entry, List<Posted> left) {
        if (left.stream().noneMatch(each -> each.id().equals(entry.id()))) {
            return cannot("Entry " + entry.id().number() + " was reversed already.");
        }
        if (left.stream().anyMatch(each -> each.entry().links().reverses().isPresent())) {
            return cannot("A reversal is not reversed again: post the entry anew.");
        }
        return books
                .entries()
                .ordersAmong(entry.entry().job(), left.stream().map(Posted::id).toList())
                .stream()
                .filter(order -> !order.open().equals(order.commitment().entry().amounts()))
                .findFirst()
                .flatMap(
                        order -> cannot(
                                "A part of the order " + order.commitment().id().number()
                                        + " is invoiced or accrued: reverse that first, or match its last invoice and explain the rest."));
    }

    private static Optional<Problem> cannot(String why) {
        return Optional.of(new Problem(Problem.Code.CANNOT_BE_DONE, why));
    }
}
