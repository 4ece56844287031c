package dayglass.web.page.ways;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel.Look;
import dayglass.cost.plan.Question;
import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.shelf.BriefJson;
import dayglass.shelf.LensModelJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The form of a job's brief. */
final class BriefPages {
    private static final String BUDGET = "/budget/amount";

    private final WaySources sources;
    private final Html html;

    BriefPages(WaySources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/jobs/{id}/brief", this::show);
        routes.post("/jobs/{id}/brief", this::keep);
    }

    private void show(Context ctx) {
        Stored<Job.Id, Job> job = sources.job(ctx);
        Form form = sources.briefs()
                .of(job.id())
                .map(brief ->
                        FormJson.form(BriefJson.write(brief.facts())).with("version", String.valueOf(brief.version())))
                .orElseGet(() -> Form.EMPTY.with("version", "0"));
        html.render(ctx, "brief.jte", model(job, form));
    }

    private void keep(Context ctx) {
        Stored<Job.Id, Job> job = sources.job(ctx);
        Form form = Requests.form(ctx);
        Form asked = form.has(BUDGET)
                ? form.with("/budget/currency", job.facts().currency().code())
                : form;
        Outcome<Brief> read = FormJson.read(asked, BriefJson.reader(job.id())).outcome();
        read.then(brief -> sources.briefs().keep(new Stored<>(job.id(), Requests.version(form), brief)))
                .fold(
                        kept -> {
                            Requests.see(ctx, WaySources.page(job.id()));
                            return kept;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "brief.jte", model(job, form.with(problem)));
                            return problem;
                        });
    }

    private Map<String, Object> model(Stored<Job.Id, Job> job, Form form) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("job", job.id().number());
        model.put("name", job.facts().name());
        model.put("currency", job.facts().currency().code());
        model.put("form", form);
        model.put(
                "mounts",
                sources.mounts().all().byName().keySet().stream()
                        .map(name -> new Choice(name, name))
                        .toList());
        model.put(
                "looks",
                Arrays.stream(Look.values())
                        .map(look -> new Choice(LensModelJson.memberOf(look), look.word()))
                        .toList());
        model.put("slots", slots(job.facts()));
        return model;
    }

    /** A slot with a stroke in its name cannot be a field's; REST takes it. */
    private static List<String> slots(Job job) {
        return job.needs().stream()
                .map(Question.Need::slot)
                .distinct()
                .filter(slot -> !slot.contains("/"))
                .toList();
    }
}
