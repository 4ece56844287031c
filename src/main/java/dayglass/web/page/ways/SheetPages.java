package dayglass.web.page.ways;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.optics.check.Fit;
import dayglass.planning.ways.OptionsSheet;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.request.PaperAsked;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The ways of a job and its options sheet. */
public final class SheetPages {
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final int MOST_BESIDE = 3;

    private final WaySources sources;
    private final Html html;
    private final Clock clock;

    public SheetPages(WaySources sources, Html html, Clock clock) {
        this.sources = sources;
        this.html = html;
        this.clock = clock;
    }

    public void route(RoutesConfig routes) {
        new BriefPages(sources, html).route(routes);
        new WayPages(sources, html).route(routes);
        routes.get("/jobs/{id}/ways", this::show);
        routes.get("/jobs/{id}/ways/state", this::state);
        routes.get("/jobs/{id}/ways/sheet.csv", this::csv);
        routes.get("/jobs/{id}/ways/sheet.xlsx", this::xlsx);
        routes.get("/jobs/{id}/ways/sheet.pdf", this::pdf);
        FormRoutes.take(routes, "/jobs/{id}/ways/sheet", "/jobs/{id}/ways", this::start);
        FormRoutes.take(routes, "/jobs/{id}/ways/stop", "/jobs/{id}/ways", this::stop);
    }

    private void start(Context ctx) {
        Job.Id job = sources.job(ctx).id();
        OptionsSheet sheet = Refusal.require(sources.sheets().start(job));
        sheet.endsWithin(PATIENCE);
        Requests.see(ctx, WaySources.page(job));
    }

    private void stop(Context ctx) {
        Job.Id job = sources.job(ctx).id();
        sources.sheets().latestOf(job).ifPresent(sheet -> {
            sheet.stop();
            sheet.endsWithin(PATIENCE);
        });
        Requests.see(ctx, WaySources.page(job));
    }

    private OptionsSheet latest(Context ctx) {
        return sources.sheets()
                .latestOf(sources.job(ctx).id())
                .orElseThrow(() -> Refusal.of(new Problem(
                        Problem.Code.NOT_FOUND, "No options sheet was worked out lately: work it out first.")));
    }

    private void state(Context ctx) {
        OptionsSheet sheet = latest(ctx);
        ctx.contentType("application/json")
                .header("Cache-Control", "no-store")
                .result(JsonPrint.bytes(Json.object()
                        .put("over", sheet.over())
                        .put("elapsedSeconds", seconds(sheet))
                        .build()));
    }

    private long seconds(OptionsSheet sheet) {
        return Duration.between(sheet.startedAt(), clock.instant()).toSeconds();
    }

    private static SheetOrder order(Context ctx) {
        return SheetOrder.of(Optional.ofNullable(ctx.queryParam("sort")).orElse(""));
    }

    private void csv(Context ctx) {
        send(ctx, "csv", "text/csv; charset=utf-8", SheetFiles.csv(order(ctx).sorted(SheetLine.of(latest(ctx)))));
    }

    private void xlsx(Context ctx) {
        OptionsSheet sheet = latest(ctx);
        send(
                ctx,
                "xlsx",
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                SheetFiles.xlsx(
                        sources.job(ctx).facts().name(),
                        sheet.startedAt(),
                        order(ctx).sorted(SheetLine.of(sheet))));
    }

    private void pdf(Context ctx) {
        send(ctx, "pdf", "application/pdf", new SheetPaper(sources).bytes(latest(ctx), order(ctx), PaperAsked.of(ctx)));
    }

    private static void send(Context ctx, String ending, String type, byte[] bytes) {
        String name = "options-sheet-" + ctx.pathParam("id") + "." + ending;
        ctx.contentType(type)
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(bytes);
    }

    private void show(Context ctx) {
        Stored<Job.Id, Job> job = sources.job(ctx);
        Optional<OptionsSheet> sheet = sources.sheets().latestOf(job.id());
        // Asked before the rows, so that a sheet that is over shows all of them.
        boolean running = sheet.filter(each -> !each.over()).isPresent();
        List<SheetLine> lines = sheet.map(SheetLine::of).orElse(List.of());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("job", job.id().number());
        model.put("name", job.facts().name());
        model.put("currency", job.facts().currency().code());
        model.put(
                "brief",
                sources.briefs()
                        .of(job.id())
                        .map(brief -> BriefWords.of(brief.facts()))
                        .orElse(List.of()));
        model.put(
                "ways",
                sources.ways().of(job.id()).stream()
                        .map(way -> new WayLink(
                                way.id().number(),
                                way.facts().name(),
                                way.facts().note()))
                        .toList());
        model.put("running", running);
        model.put("failed", sheet.filter(OptionsSheet::failed).isPresent());
        model.put("elapsed", sheet.map(this::seconds).orElse(0L));
        model.put("asked", sheet.map(OptionsSheet::ways).orElse(0));
        model.put("sort", order(ctx).word());
        model.put("lines", order(ctx).sorted(lines));
        model.put("beside", beside(ctx, lines));
        model.put("scatter", ScatterPicture.of(lines));
        model.put("cautions", Fit.CAUTIONS);
        html.render(ctx, "ways.jte", model);
    }

    /** A way in the list. */
    public record WayLink(long id, String name, String note) {}

    private static List<SheetLine> beside(Context ctx, List<SheetLine> lines) {
        List<String> chosen = ctx.queryParams("beside");
        return lines.stream()
                .filter(line -> chosen.contains(String.valueOf(line.way())))
                .limit(MOST_BESIDE)
                .toList();
    }
}
