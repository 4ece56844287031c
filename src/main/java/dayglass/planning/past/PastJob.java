package dayglass.planning.past;

import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A job that is over.
 *
 * @param days on which it used its glass, prep included
 * @param prepDays of them
 */
public record PastJob(Job.Id id, String name, DateRange dates, int days, int prepDays) {
    /** Empty where the job is not over on a day, or has neither prep nor shoot days. */
    static Optional<PastJob> of(Stored<Job.Id, Job> job, LocalDate today) {
        Schedule schedule = job.facts().schedule();
        int prep = count(schedule, DayUse.PREP);
        int days = prep + count(schedule, DayUse.SHOOT);
        return schedule.horizon().lastDay().isBefore(today) && days > 0
                ? Optional.of(new PastJob(job.id(), job.facts().name(), schedule.horizon(), days, prep))
                : Optional.empty();
    }

    private static int count(Schedule schedule, DayUse use) {
        int count = 0;
        for (int day = 0; day < schedule.days(); day++) {
            count += schedule.useOn(day) == use ? 1 : 0;
        }
        return count;
    }
}
