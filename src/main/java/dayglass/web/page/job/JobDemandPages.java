package dayglass.web.page.job;

import dayglass.base.DateRange;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.job.Job;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Read;
import dayglass.wire.costing.NeedsReader;
import dayglass.wire.costing.ScheduleReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What a job needs and when: the forms of its schedule and its needs. */
final class JobDemandPages {
    private final JobPage page;

    JobDemandPages(JobPage page) {
        this.page = page;
    }

    void route(RoutesConfig routes) {
        FormRoutes.take(routes, "/jobs/{id}/schedule", "/jobs/{id}", this::changeSchedule);
        FormRoutes.take(routes, "/jobs/{id}/needs", "/jobs/{id}", this::addNeed);
        FormRoutes.take(routes, "/jobs/{id}/needs/{number}/remove", "/jobs/{id}", this::removeNeed);
    }

    /** Days that are refused stay painted, since painting them may have taken a while. */
    private void changeSchedule(Context ctx) {
        Form form = Requests.form(ctx);
        Stored<Job.Id, Job> job = page.find(ctx);
        ScheduleReader.schedule()
                .read(form.value("schedule").getBytes(StandardCharsets.UTF_8))
                .fold(
                        schedule -> {
                            Job painted = onDays(job.facts(), schedule);
                            Stored<Job.Id, Job> shown = new Stored<>(job.id(), job.version(), painted);
                            page.keepAndCost(
                                    ctx,
                                    new JobPage.Sent(form, "schedule"),
                                    shown,
                                    withSchedule(job.facts(), schedule));
                            return schedule;
                        },
                        faults -> {
                            page.keepAndCost(
                                    ctx,
                                    new JobPage.Sent(form, "schedule"),
                                    Outcome.refused(
                                            Problem.Code.FAULTY, faults.get(0).message()));
                            return faults;
                        });
    }

    private static Job onDays(Job job, Schedule schedule) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), schedule, job.needs(), job.sources());
    }

    private static Outcome<Job> withSchedule(Job job, Schedule schedule) {
        DateRange horizon = schedule.horizon();
        for (Question.Need need : job.needs()) {
            for (DateRange dates : need.dates()) {
                if (dates.from().isBefore(horizon.from()) || dates.until().isAfter(horizon.until())) {
                    return Outcome.refused(
                            Problem.Code.CANNOT_BE_DONE,
                            "The need of " + need.slot() + " names dates that would lie outside the schedule: change"
                                    + " that need first.");
                }
            }
        }
        return Outcome.done(onDays(job, schedule));
    }

    private void addNeed(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = page.find(ctx).facts();
        Outcome<Job> changed = NeedsReader.needs(Read.good(job.schedule().horizon()))
                .readAt("", Json.list(List.of(NeedForm.json(ctx, form))), Listener.PERSON)
                .fold(
                        needs -> {
                            List<Question.Need> all = new ArrayList<>(job.needs());
                            all.addAll(needs);
                            return Outcome.done(withNeeds(job, all));
                        },
                        faults -> Outcome.refused(Problem.faulty(NeedForm.atFields(faults))));
        page.keepAndCost(ctx, new JobPage.Sent(form, "needs"), changed);
    }

    private void removeNeed(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = page.find(ctx).facts();
        List<Question.Need> left = new ArrayList<>(job.needs());
        int number = Math.toIntExact(Math.min(Requests.number(ctx, "number"), left.size() + 1L)) - 1;
        if (number >= left.size()) {
            throw Requests.missing(ctx);
        }
        left.remove(number);
        Outcome<Job> changed = left.isEmpty()
                ? Outcome.refused(Problem.Code.CANNOT_BE_DONE, "A job needs at least one slot: add another first.")
                : Outcome.done(withNeeds(job, left));
        page.keepAndCost(ctx, new JobPage.Sent(form, "needs"), changed);
    }

    private static Job withNeeds(Job job, List<Question.Need> needs) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), job.schedule(), needs, job.sources());
    }
}
