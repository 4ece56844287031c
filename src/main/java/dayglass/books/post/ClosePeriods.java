package dayglass.books.post;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Posted;
import dayglass.books.period.Period;
import dayglass.books.period.PeriodAct;
import dayglass.books.period.PeriodAct.Deed;
import dayglass.books.period.PeriodCalendar;
import dayglass.house.Person;
import dayglass.house.Role;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Closes periods in their order, and opens the last closed one again. */
public final class ClosePeriods {
    private static final Set<Role> MAY_REOPEN = Set.of(Role.OWNER, Role.ACCOUNTANT);

    private final Books books;

    ClosePeriods(Books books) {
        this.books = books;
    }

    /** The last closed day of a job. */
    public Optional<LocalDate> closedThrough(Job.Id job) {
        List<PeriodAct.Kept> acts = books.periods().acts().of(job);
        return acts.isEmpty()
                ? Optional.empty()
                : acts.get(acts.size() - 1).act().closedThrough();
    }

    /** The period that can be closed next: that after the last closed, or that of the first entry. */
    public Optional<Period> next(Job.Id job) {
        PeriodCalendar calendar = books.periods().calendars().of(job).facts().calendar();
        Optional<LocalDate> first = closedThrough(job).map(day -> day.plusDays(1));
        return first.or(() -> books.entries().earliest(job))
                .flatMap(calendar::of)
                // After a change of the calendar a period may reach back over closed days.
                .map(period -> first.filter(day -> day.isAfter(period.firstDay()))
                        .map(day -> Period.of(day, period.lastDay()))
                        .orElse(period));
    }

    /** Why no period can be closed next, and what can be done about it. */
    public String whyNone(Job.Id job) {
        Optional<String> ended =
                closedThrough(job).map(day -> "The job's calendar ends on " + day + ": add the end of another period.");
        return ended.or(() -> books.entries()
                        .earliest(job)
                        .map(day -> "The job's calendar has no period for " + day + ", the day of its first entry:"
                                + " begin it earlier, or take that entry back on its own day."))
                .orElse("There is no period to close: post an entry first.");
    }

    /**
     * Closes a period: accrues what was used and not invoiced, keeps the head of the chain, and reverses the accruals on
     * the first day of the next.
     *
     * @param lastDay of the period that whoever closes has seen to be the next
     */
    public Outcome<PeriodAct.Kept> close(Job.Id job, LocalDate lastDay) {
        return books.house().transactions().atomically(() -> {
            Optional<Stored<Job.Id, Job>> found = books.house().jobs().find(job);
            Optional<Period> next = next(job);
            if (found.isEmpty()) {
                return Outcome.refused(Problem.Code.NOT_FOUND, "There is no job with the id " + job.number() + ".");
            }
            if (next.isEmpty()) {
                return Outcome.refused(Problem.Code.CANNOT_BE_DONE, whyNone(job));
            }
            return next.get().lastDay().equals(lastDay)
                    ? close(found.get().facts(), next.get(), job)
                    : Outcome.refused(
                            Problem.Code.CANNOT_BE_DONE,
                            "Periods close in order; the next is " + next.get().name() + ", which ends on "
                                    + next.get().lastDay() + ".");
        });
    }

    private Outcome<PeriodAct.Kept> close(Job job, Period period, Job.Id id) {
        List<Entry> accruals =
                Accruals.at(period.lastDay(), job, books.entries().orders(id, Optional.of(period.lastDay())));
        Outcome<List<Posted>> accrued =
                accruals.isEmpty() ? Outcome.done(List.of()) : books.post().post(accruals);
        return accrued.then(posted -> books.periods()
                .acts()
                .add(new PeriodAct(
                        id,
                        Deed.CLOSED,
                        period,
                        Optional.of(period.lastDay()),
                        books.entries().head(),
                        ""))
                .then(act -> reversed(posted, period).map(done -> act)));
    }

    private Outcome<List<Posted>> reversed(List<Posted> accruals, Period period) {
        LocalDate opening = period.lastDay().plusDays(1);
        return accruals.isEmpty()
                ? Outcome.done(List.of())
                : books.post()
                        .post(accruals.stream()
                                .map(each -> each.reversal(opening, "accrual of " + period.name() + " reversed"))
                                .toList());
    }

    /** Opens the last closed period again, in the name of an owner or an accountant. */
    public Outcome<PeriodAct.Kept> reopen(Job.Id job, String reason) {
        return books.house().transactions().atomically(() -> {
            List<PeriodAct.Kept> acts = books.periods().acts().of(job);
            Optional<LocalDate> closed = closedThrough(job);
            if (closed.isEmpty()) {
                return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "No period of this job is closed.");
            }
            if (!mayReopen()) {
                return Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "Only an owner or an accountant opens a closed period again, and whoever acts is neither.");
            }
            Period last = acts.stream()
                    .map(PeriodAct.Kept::act)
                    .filter(act ->
                            act.deed() == Deed.CLOSED && act.period().lastDay().equals(closed.get()))
                    .reduce((earlier, later) -> later)
                    .orElseThrow()
                    .period();
            Optional<LocalDate> before = acts.stream()
                    .map(PeriodAct.Kept::act)
                    .filter(act ->
                            act.deed() == Deed.CLOSED && act.period().lastDay().isBefore(last.firstDay()))
                    .map(act -> act.period().lastDay())
                    .max(LocalDate::compareTo);
            return books.periods()
                    .acts()
                    .add(new PeriodAct(
                            job, Deed.REOPENED, last, before, books.entries().head(), reason));
        });
    }

    private boolean mayReopen() {
        return books.house()
                .people()
                .find(books.house().whoActs().now())
                .map(Stored::facts)
                .map(Person::role)
                .filter(MAY_REOPEN::contains)
                .isPresent();
    }
}
