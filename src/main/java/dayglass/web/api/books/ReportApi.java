package dayglass.web.api.books;

import dayglass.base.Stored;
import dayglass.books.chart.Chart;
import dayglass.books.report.CostFigures;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.books.report.CostReport.Figures;
import dayglass.job.Job;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code /api/jobs/{id}/cost-report}. */
public final class ReportApi {
    private final BooksContext in;
    private final CostFigures figures;

    public ReportApi(BooksContext in, CostFigures figures) {
        this.in = in;
        this.figures = figures;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/cost-report", this::show);
    }

    private void show(Context ctx) {
        Requests.onlyParameters(ctx, "by", "basis", "until", "since");
        Stored<Job.Id, Job> job = in.job(ctx);
        By by = EntryApi.once(ctx, "by")
                .map(word -> By.of(word)
                        .orElseThrow(() -> Requests.badParameter("by", "it must be code, episode or supplier")))
                .orElse(By.CODE);
        Basis basis = EntryApi.once(ctx, "basis")
                .map(word ->
                        Basis.of(word).orElseThrow(() -> Requests.badParameter("basis", "it must be net or gross")))
                .orElse(Basis.NET);
        Optional<LocalDate> until = Requests.day(ctx, "until");
        Optional<LocalDate> since = Requests.day(ctx, "since");
        CostReport report = report(job, by, basis, until);
        Chart chart = in.books().charts().of(job.id()).facts();
        String entries = "/api/jobs/" + job.id().number() + "/book-entries?"
                + until.map(day -> "until=" + day + "&").orElse("");
        Json.Members members = Json.object()
                .put("jobId", job.id().number())
                .put("by", by.word())
                .put("basis", basis.word())
                .put("currency", job.facts().currency().code());
        until.ifPresent(day -> members.put("until", day.toString()));
        members.put(
                "rows",
                Json.list(report.rows().stream()
                        .map(row -> row(row, by, chart, entries))
                        .toList()));
        members.put("total", json(report.total()).build());
        since.ifPresent(day -> changes(members, day, report.since(report(job, by, basis, since))));
        Replies.json(ctx, members.build());
    }

    private CostReport report(Stored<Job.Id, Job> job, By by, Basis basis, Optional<LocalDate> until) {
        return CostReport.of(by, basis, job.facts().currency(), figures.of(job.id(), until));
    }

    private static Json row(CostReport.Row row, By by, Chart chart, String entries) {
        String parameter = Map.of(By.CODE, "costCode", By.EPISODE, "episode", By.SUPPLIER, "supplier")
                .get(by);
        Json.Members members = Json.object().put("name", row.name());
        if (by == By.CODE && !chart.nameOf(row.name()).isEmpty()) {
            members.put("title", chart.nameOf(row.name()));
        }
        members.put("figures", json(row.figures()).build());
        return members.put("entries", entries + parameter + "=" + URLEncoder.encode(row.name(), StandardCharsets.UTF_8))
                .build();
    }

    private static Json.Members json(Figures figures) {
        return Json.object()
                .put("estimate", figures.estimate().amount())
                .put("committed", figures.committed().amount())
                .put("actual", figures.actual().amount())
                .put("accrued", figures.accrued().amount())
                .put("toComplete", figures.toComplete().amount())
                .put("finalCost", figures.finalCost().amount())
                .put("variance", figures.variance().amount());
    }

    private static void changes(Json.Members members, LocalDate since, List<CostReport.Change> changes) {
        members.put("since", since.toString())
                .put(
                        "changes",
                        Json.list(changes.stream()
                                .map(change -> Json.object()
                                        .put("name", change.name())
                                        .put("before", json(change.before()).build())
                                        .put("now", json(change.now()).build())
                                        .build())
                                .toList()));
    }
}
