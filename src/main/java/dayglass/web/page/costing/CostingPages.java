package dayglass.web.page.costing;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.JobCodes;
import dayglass.cost.plan.Answer;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.web.error.Refusal;
import dayglass.web.page.ErrorPages;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A kept costing as pictures and lines, and two of them side by side. */
public final class CostingPages {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);

    private final PageSources sources;
    private final Html html;

    public CostingPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/costings/{id}", this::show);
        routes.get("/costings/{id}/request.json", ctx -> download(ctx, find(ctx, "id"), "request"));
        routes.get("/costings/{id}/answer.json", ctx -> download(ctx, find(ctx, "id"), "answer"));
        for (LinePages.LineFile file : LinePages.LineFile.values()) {
            routes.get("/costings/{id}/" + file.path, ctx -> lines(ctx, file));
        }
        FormRoutes.take(routes, "/costings/{id}/codes", "/costings/{id}#books", this::keepCodes);
        routes.get("/costings/{id}/beside/{other}", this::beside);
    }

    private Stored<KeptCosting.Id, KeptCosting> find(Context ctx, String name) {
        return sources.costings()
                .find(new KeptCosting.Id(Requests.number(ctx, name)))
                .orElseThrow(() -> Requests.missing(ctx));
    }

    private void show(Context ctx) {
        Stored<KeptCosting.Id, KeptCosting> costing = find(ctx, "id");
        html.render(ctx, "costing.jte", Map.of("page", view(costing), "codes", keptCodes(costing)));
    }

    /** The codes of the costing's job; a costing of a bare request has none but those in an address. */
    private Form keptCodes(Stored<KeptCosting.Id, KeptCosting> costing) {
        return costing.facts()
                .summary()
                .job()
                .map(job -> CodeForm.of(sources.costCodes().of(job)))
                .orElse(Form.EMPTY);
    }

    /** Keeps the codes of this costing's options; the job's others stay as they are. */
    private void keepCodes(Context ctx) {
        Stored<KeptCosting.Id, KeptCosting> costing = find(ctx, "id");
        Form form = Requests.form(ctx);
        Job.Id job = costing.facts().summary().job().orElseThrow(() -> Requests.missing(ctx));
        List<Fault> faults = CodeForm.faults(form, costing.facts());
        CostCodes others = sources.costCodes()
                .of(job)
                .facts()
                .codes()
                .without(view(costing).options());
        JobCodes typed = new JobCodes(job, others.with(CodeForm.codes(form)));
        Outcome<Stored<Job.Id, JobCodes>> kept = faults.isEmpty()
                ? sources.costCodes().keep(new Stored<>(job, Requests.version(form), typed))
                : Outcome.refused(Problem.faulty(faults));
        kept.fold(
                stored -> {
                    Requests.see(ctx, "/costings/" + costing.id().number() + "#books");
                    return stored;
                },
                problem -> {
                    html.renderFaulty(ctx, "costing.jte", Map.of("page", view(costing), "codes", form.with(problem)));
                    return problem;
                });
    }

    private void lines(Context ctx, LinePages.LineFile file) {
        Stored<KeptCosting.Id, KeptCosting> costing = find(ctx, "id");
        Form form = Form.sent(ctx.queryParamMap());
        List<Fault> faults = CodeForm.faults(form, costing.facts());
        if (faults.isEmpty()) {
            CostCodes kept = CodeForm.codes(keptCodes(costing));
            LinePages.send(ctx, costing, file, kept.with(CodeForm.codes(form)));
        } else if (!ErrorPages.isForPeople(ctx)) {
            throw Refusal.faulty(faults);
        } else {
            html.renderFaulty(ctx, "costing.jte", Map.of("page", view(costing), "codes", form.with(faults)));
        }
    }

    private CostingView view(Stored<KeptCosting.Id, KeptCosting> kept) {
        KeptCosting.Summary summary = kept.facts().summary();
        return CostingView.of(
                kept.id().number(),
                summary.job().map(job -> "/jobs/" + job.number()).orElse(""),
                "Made " + moment(summary.createdAt()) + " by engine " + summary.engineVersion() + ".",
                kept.facts().question(),
                answer(kept.facts()));
    }

    private String moment(Instant instant) {
        ZoneId zone = sources.clock().getZone();
        return MOMENT.format(instant.atZone(zone)) + " (" + zone + ")";
    }

    static Answer answer(KeptCosting costing) {
        return costing.answered();
    }

    private static void download(Context ctx, Stored<KeptCosting.Id, KeptCosting> costing, String which) {
        String text = which.equals("request")
                ? costing.facts().request().json()
                : costing.facts().answer().json();
        ctx.contentType("application/json")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"costing-" + costing.id().number() + "-" + which + ".json\"")
                .result(text);
    }

    private void beside(Context ctx) {
        Stored<KeptCosting.Id, KeptCosting> before = find(ctx, "id");
        Stored<KeptCosting.Id, KeptCosting> after = find(ctx, "other");
        Answer old = answer(before.facts());
        Answer now = answer(after.facts());
        boolean comparable = old.total().currency().equals(now.total().currency());
        html.render(
                ctx,
                "beside.jte",
                Map.of(
                        "before", view(before),
                        "after", view(after),
                        "difference", comparable ? Words.difference(old.total(), now.total()) : "in another currency",
                        "changes", ChangeRow.of(before.facts(), after.facts())));
    }
}
