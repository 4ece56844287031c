package dayglass.books.post;

import dayglass.base.DateRange;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.List;

/**
 * The days over which the cost of a service is spread: those of it that the job's schedule puts to a use; where it puts
 * none of them to one, all of them.
 */
final class ChargeableDays {
    private ChargeableDays() {}

    static List<LocalDate> of(DateRange service, Job job) {
        List<LocalDate> used =
                service.stream().filter(day -> isUsed(day, job.schedule())).toList();
        return used.isEmpty() ? service.stream().toList() : used;
    }

    private static boolean isUsed(LocalDate date, Schedule schedule) {
        int day = schedule.dayOf(date);
        return day >= 0 && day < schedule.days() && schedule.useOn(day) != DayUse.DARK;
    }
}
