package dayglass.web.page.job;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.web.page.Html;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The page of a job as it is shown, and as it is shown again where one of its forms is refused. */
final class JobPage {
    /**
     * A form of the page as it was sent.
     *
     * @param section which of the page's forms it is; empty where none was sent
     */
    record Sent(Form form, String section) {
        static final Sent NOTHING = new Sent(Form.EMPTY, "");

        Sent with(Problem problem) {
            return new Sent(form.with(problem), section);
        }
    }

    private final PageSources sources;
    private final Html html;
    private final JobViews views;
    private final RunPages runs;

    JobPage(PageSources sources, Html html, RunPages runs) {
        this.sources = sources;
        this.html = html;
        this.views = new JobViews(sources);
        this.runs = runs;
    }

    JobViews views() {
        return views;
    }

    Stored<Job.Id, Job> find(Context ctx) {
        return Requests.find(ctx, sources.jobs(), Job.Id::new);
    }

    void show(Context ctx, Stored<Job.Id, Job> job, Sent sent) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("page", views.of(job));
        model.put("form", sent.form());
        model.put("section", sent.section());
        model.put("terms", sent.section().equals("terms") ? sent.form() : terms(job.facts()));
        if (sent.form().faulty()) {
            html.renderFaulty(ctx, "job.jte", model);
        } else {
            html.render(ctx, "job.jte", model);
        }
    }

    private static Form terms(Job job) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("name", job.name());
        values.put("discountRatePercent", job.discountRate().value().toPlainString());
        values.put("cashLimit", job.cashLimit().map(Money::amount).orElse(""));
        return new Form(values, List.of(), "");
    }

    /** Keeps the changed job and costs it, or shows the form again with what is wrong. */
    void keepAndCost(Context ctx, Sent sent, Outcome<Job> changed) {
        keepAndCost(ctx, sent, find(ctx), changed);
    }

    /** @param shown the job as the page shows it where the change is refused */
    void keepAndCost(Context ctx, Sent sent, Stored<Job.Id, Job> shown, Outcome<Job> changed) {
        costKept(
                ctx,
                sent,
                shown,
                changed.then(facts ->
                        sources.jobs().change(new Stored<>(shown.id(), Requests.version(sent.form()), facts))));
    }

    /** Costs the job that was kept, or shows the form again with what is wrong. */
    void costKept(Context ctx, Sent sent, Stored<Job.Id, Job> shown, Outcome<Stored<Job.Id, Job>> kept) {
        kept.fold(
                stored -> {
                    runs.start(ctx, stored.id());
                    return stored;
                },
                problem -> {
                    show(ctx, shown, sent.with(problem));
                    return problem;
                });
    }
}
