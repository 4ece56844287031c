package dayglass.web.page.bench;

import dayglass.inventory.service.DueList;
import dayglass.inventory.service.ServiceDue;
import dayglass.inventory.service.ServicePlan;
import dayglass.web.page.picture.Words;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A unit with a plan, as the bench shows it.
 *
 * @param when the day, and how far off it is
 * @param why what makes it due
 * @param every the plan in words
 * @param visit the number of the visit that is entered for it; 0 where none is
 * @param visitWords when that visit is
 */
public record DueRow(
        long unit,
        String tag,
        long plan,
        Optional<LocalDate> dueOn,
        String when,
        String why,
        String every,
        String lastDone,
        long visit,
        String visitWords) {

    static DueRow of(DueList.Row row, LocalDate today, ZoneId zone) {
        ServicePlan plan = row.plan().facts();
        ServiceDue due = row.due();
        return new DueRow(
                plan.unit().number(),
                row.unit().tag(),
                row.plan().id().number(),
                due.dueOn(),
                due.dueOn()
                        .map(day -> Words.date(day) + ", " + distance(today, day))
                        .orElse(""),
                why(plan, due),
                every(plan),
                Words.date(due.lastDoneOn()),
                row.visit().map(visit -> visit.id().number()).orElse(0L),
                row.visit()
                        .map(visit -> Words.date(
                                visit.facts().stay().out().atZone(zone).toLocalDate()))
                        .orElse(""));
    }

    boolean isDueBefore(LocalDate day) {
        return dueOn.filter(day::isAfter).isPresent();
    }

    private static String distance(LocalDate today, LocalDate day) {
        int days = Math.toIntExact(ChronoUnit.DAYS.between(today, day));
        if (days == 0) {
            return "today";
        }
        return days > 0 ? "in " + Words.days(days) : Words.days(-days) + " ago";
    }

    private static String why(ServicePlan plan, ServiceDue due) {
        String out = plan.everyDaysOut()
                .map(every -> due.daysOut() + " of " + Words.days(every) + " out")
                .orElse("");
        String months = plan.everyMonths().map(DueRow::months).orElse("");
        String first = due.reason().equals("months") ? months : out;
        return due.reason().isEmpty() || plan.everyDaysOut().isEmpty() || first.equals(out)
                ? first
                : first + "; " + out;
    }

    private static String months(int count) {
        return count == 1 ? "1 month" : count + " months";
    }

    private static String every(ServicePlan plan) {
        String months = plan.everyMonths().map(DueRow::months).orElse("");
        String out = plan.everyDaysOut().map(days -> Words.days(days) + " out").orElse("");
        return "every " + months + (months.isEmpty() || out.isEmpty() ? "" : " or ") + out;
    }
}
