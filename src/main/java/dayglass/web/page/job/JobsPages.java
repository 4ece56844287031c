package dayglass.web.page.job;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.job.Job;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.wire.Decimals;
import dayglass.wire.Readers;
import dayglass.wire.costing.CostingRequestReader;
import dayglass.wire.costing.NeedsReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The list of jobs, and how a job is made, copied, imported and removed. */
public final class JobsPages {
    private final PageSources sources;
    private final Html html;

    public JobsPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/", ctx -> html.render(ctx, "jobs.jte", model(Form.EMPTY, Form.EMPTY)));
        FormRoutes.take(routes, "/jobs", "/", this::create);
        FormRoutes.take(routes, "/jobs/import", "/", this::importFile);
        FormRoutes.take(routes, "/jobs/{id}/copy", "/jobs/{id}", this::copy);
        routes.get("/jobs/{id}/remove", this::askToRemove);
        routes.post("/jobs/{id}/remove", this::remove);
    }

    private Map<String, Object> model(Form create, Form imported) {
        List<JobCard> cards = new ArrayList<>();
        for (Stored<Job.Id, Job> job : Requests.all(sources.jobs())) {
            cards.add(0, JobCard.of(job, sources.costings().latestOf(job.id())));
        }
        return Map.of("jobs", cards, "create", create, "imported", imported);
    }

    private void create(Context ctx) {
        Form form = Requests.form(ctx);
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = Requests.read(form, "name", Readers.name(), faults);
        Optional<Currency> currency = Requests.read(form, "currency", Decimals.currency(), faults);
        Optional<LocalDate> first = Requests.read(form, "firstDay", Readers.date(), faults);
        Optional<String> slot = Requests.read(form, "slot", Readers.name(), faults);
        if (!faults.isEmpty()) {
            html.renderFaulty(ctx, "jobs.jte", model(form.with(faults), Form.EMPTY));
            return;
        }
        DateRange day = DateRange.inclusive(first.orElseThrow(), first.orElseThrow());
        Job job = new Job(
                name.orElseThrow(),
                currency.orElseThrow(),
                Percent.ZERO,
                Optional.empty(),
                new Schedule(List.of(new Schedule.Span(day, DayUse.SHOOT))),
                List.of(new Question.Need(slot.orElseThrow(), 1, NeedsReader.DEFAULT_ON, List.of())),
                Job.Sources.NONE);
        finish(ctx, sources.jobs().add(job), problem -> model(form.with(problem), Form.EMPTY));
    }

    private void importFile(Context ctx) {
        Form form = Requests.form(ctx);
        byte[] text = Requests.fileOrText(ctx, form, "file", "text");
        Outcome<Stored<Job.Id, Job>> made = CostingRequestReader.read(text)
                .fold(sources.importJob()::importFrom, faults -> Outcome.refused(Problem.faulty(faults)));
        finish(
                ctx,
                made,
                problem -> model(
                        Form.EMPTY,
                        form.with("text", new String(text, StandardCharsets.UTF_8))
                                .with(problem)));
    }

    private void finish(
            Context ctx,
            Outcome<Stored<Job.Id, Job>> made,
            java.util.function.Function<Problem, Map<String, Object>> again) {
        made.fold(
                job -> {
                    ctx.redirect("/jobs/" + job.id().number(), io.javalin.http.HttpStatus.SEE_OTHER);
                    return job;
                },
                problem -> {
                    html.renderFaulty(ctx, "jobs.jte", again.apply(problem));
                    return problem;
                });
    }

    private void copy(Context ctx) {
        Stored<Job.Id, Job> job = Requests.find(ctx, sources.jobs(), Job.Id::new);
        Stored<Job.Id, Job> copy = Refusal.require(
                sources.copyJob().copy(job.id(), copyName(job.facts().name())));
        ctx.redirect("/jobs/" + copy.id().number(), io.javalin.http.HttpStatus.SEE_OTHER);
    }

    private static String copyName(String name) {
        int[] kept = name.codePoints().limit(190).toArray();
        return new String(kept, 0, kept.length) + ", copy";
    }

    private void askToRemove(Context ctx) {
        Stored<Job.Id, Job> job = Requests.find(ctx, sources.jobs(), Job.Id::new);
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what", "the job " + job.facts().name(),
                        "action", "/jobs/" + job.id().number() + "/remove",
                        "back", "/jobs/" + job.id().number(),
                        "version", job.version(),
                        "place", "jobs"));
    }

    private void remove(Context ctx) {
        Job.Id id = new Job.Id(Requests.number(ctx, "id"));
        Refusal.require(sources.jobs().remove(id, Requests.version(Requests.form(ctx))));
        ctx.redirect("/", io.javalin.http.HttpStatus.SEE_OTHER);
    }
}
