package dayglass.web.page.job;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.cost.plan.Costing;
import dayglass.job.Job;
import dayglass.planning.Priced;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.costing.CostingProblems;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A costing that takes a while: how long it has run, a way to stop it, and where it leads. */
public final class RunPages {
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final Duration STOPPING = Duration.ofSeconds(2);

    private final PageSources sources;
    private final Html html;
    private final Runs runs;

    public RunPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.runs = new Runs(sources.jobCosting(), sources.clock());
    }

    public void route(RoutesConfig routes) {
        routes.get("/runs/{number}", this::show);
        routes.get("/runs/{number}/state", this::state);
        FormRoutes.take(routes, "/runs/{number}/stop", "/runs/{number}", this::stop);
    }

    /** Costs the job: straight to the answer where it comes within a second, else to the page that waits for it. */
    void start(Context ctx, Job.Id job) {
        Runs.Run run = runs.start(job)
                .orElseThrow(() -> Refusal.of(new Problem(
                        Problem.Code.BUSY,
                        "Several costings are being worked out already: wait for one to end, then cost the job"
                                + " again. What you changed is kept.")));
        boolean over = run.endsWithin(PATIENCE);
        Requests.see(ctx, over && planned(run) ? "/jobs/" + job.number() : "/runs/" + run.number());
    }

    private static boolean planned(Runs.Run run) {
        return run.outcome()
                .map(outcome -> outcome.fold(
                        priced -> priced.fold(kept -> true, noPlan -> false, outOfTime -> false), problem -> false))
                .orElse(false);
    }

    private Runs.Run find(Context ctx) {
        return runs.find(Requests.number(ctx, "number")).orElseThrow(() -> Requests.missing(ctx));
    }

    private void show(Context ctx) {
        Runs.Run run = find(ctx);
        String job = "/jobs/" + run.job().number();
        if (run.over() && planned(run)) {
            Requests.see(ctx, job);
            return;
        }
        html.render(
                ctx,
                "run.jte",
                Map.of(
                        "number", run.number(),
                        "job", job,
                        "over", run.over(),
                        "elapsed", run.elapsedSeconds(sources.clock().instant()),
                        "refusal", run.outcome().map(RunPages::refusal).orElse(""),
                        "shortages", run.outcome().map(RunPages::shortages).orElse(List.of())));
    }

    private static String refusal(Outcome<Priced> outcome) {
        return outcome.fold(
                priced -> priced.fold(
                        kept -> "",
                        noPlan -> CostingProblems.why(noPlan.why()),
                        outOfTime -> "It was stopped before any plan was found; one may exist."),
                Problem::detail);
    }

    /** A line for each slot that stays short, with the days. */
    private static List<String> shortages(Outcome<Priced> outcome) {
        List<Costing.Shortage> all = outcome.fold(
                priced -> priced.fold(kept -> List.of(), noPlan -> noPlan.why().shortages(), outOfTime -> List.of()),
                problem -> List.of());
        Map<String, List<String>> bySlot = new LinkedHashMap<>();
        for (Costing.Shortage each : all) {
            bySlot.computeIfAbsent(each.slot(), slot -> new ArrayList<>())
                    .add(Words.date(each.date()) + " (" + each.missing() + " short)");
        }
        List<String> lines = new ArrayList<>();
        bySlot.forEach((slot, days) -> lines.add(slot + ": " + String.join(", ", days)));
        return lines;
    }

    private void state(Context ctx) {
        Runs.Run run = find(ctx);
        ctx.contentType("application/json")
                .header("Cache-Control", "no-store")
                .result(JsonPrint.bytes(Json.object()
                        .put("over", run.over())
                        .put(
                                "elapsedSeconds",
                                run.elapsedSeconds(sources.clock().instant()))
                        .build()));
    }

    private void stop(Context ctx) {
        Runs.Run run = find(ctx);
        run.stop();
        run.endsWithin(STOPPING);
        Requests.see(ctx, "/runs/" + run.number());
    }
}
