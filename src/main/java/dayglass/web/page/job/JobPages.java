package dayglass.web.page.job;

import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.job.Job;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.wire.Decimals;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One job, each part of it a form by itself. */
public final class JobPages {
    private static final int MOST_PERCENT = 1_000;

    private final JobPage page;
    private final RunPages runs;
    private final JobDemandPages demand;
    private final JobOptionPages options;

    public JobPages(PageSources sources, Html html, RunPages runs) {
        this.page = new JobPage(sources, html, runs);
        this.runs = runs;
        this.demand = new JobDemandPages(page);
        this.options = new JobOptionPages(sources, page);
    }

    public void route(RoutesConfig routes) {
        routes.get("/jobs/{id}", ctx -> page.show(ctx, page.find(ctx), JobPage.Sent.NOTHING));
        FormRoutes.take(routes, "/jobs/{id}/terms", "/jobs/{id}", this::changeTerms);
        FormRoutes.take(
                routes,
                "/jobs/{id}/cost",
                "/jobs/{id}",
                ctx -> runs.start(ctx, page.find(ctx).id()));
        demand.route(routes);
        options.route(routes);
    }

    private void changeTerms(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = page.find(ctx).facts();
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = Requests.read(form, "name", Readers.name(), faults);
        Optional<Percent> rate = Requests.read(form, "discountRatePercent", Decimals.percent(0, MOST_PERCENT), faults);
        Optional<Money> limit = form.has("cashLimit")
                ? Requests.read(form, "cashLimit", Decimals.money(Read.good(job.currency())), faults)
                : Optional.empty();
        Outcome<Job> changed = faults.isEmpty()
                ? Outcome.done(new Job(
                        name.orElseThrow(),
                        job.currency(),
                        rate.orElseThrow(),
                        limit,
                        job.schedule(),
                        job.needs(),
                        job.sources()))
                : Outcome.refused(Problem.faulty(faults));
        page.keepAndCost(ctx, new JobPage.Sent(form, "terms"), changed);
    }
}
