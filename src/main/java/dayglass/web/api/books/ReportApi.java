package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.books.chart.Chart;
import dayglass.books.report.CostFigures;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.books.report.CostReport.Figures;
import dayglass.books.report.SayToComplete;
import dayglass.books.report.ToComplete;
import dayglass.books.report.TypedFigures;
import dayglass.job.Job;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.house.Moments;
import dayglass.web.error.Refusal;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code /api/jobs/{id}/cost-report}, and {@code /api/jobs/{id}/to-complete} for what is typed into it. */
public final class ReportApi {
    private final BooksContext in;
    private final CostFigures figures;
    private final TypedFigures typed;

    public ReportApi(BooksContext in, CostFigures figures, TypedFigures typed) {
        this.in = in;
        this.figures = figures;
        this.typed = typed;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/cost-report", this::show);
        routes.get("/api/jobs/{id}/to-complete", this::list);
        routes.post("/api/jobs/{id}/to-complete", in.once().apply(this::say));
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

    private void list(Context ctx) {
        Requests.onlyParameters(ctx);
        List<ToComplete.Kept> all = typed.of(in.job(ctx).id());
        List<ToComplete.Kept> inForce = ToComplete.inForce(all, Optional.empty());
        Replies.json(
                ctx,
                Json.object()
                        .put(
                                "items",
                                Json.list(all.stream()
                                        .map(kept -> json(kept)
                                                .put("counts", inForce.contains(kept))
                                                .build())
                                        .toList()))
                        .build());
    }

    private void say(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, Job> job = in.job(ctx);
        ToComplete figure = Requests.body(ctx, toComplete(job.id(), job.facts().currency()));
        ToComplete.Kept kept = Refusal.require(new SayToComplete(in.books(), typed).say(figure));
        Replies.created(
                ctx,
                "/api/jobs/" + job.id().number() + "/to-complete",
                json(kept)
                        .put(
                                "counts",
                                ToComplete.inForce(typed.of(job.id()), Optional.empty())
                                        .contains(kept))
                        .build());
    }

    /** What is still to come of a code; without an amount, that it is worked out again. */
    public static Reader<ToComplete> toComplete(Job.Id job, Currency currency) {
        return Fields.object(fields -> {
            Reader<Money> money = Decimals.money(Read.good(currency));
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<String> code = fields.optional("costCode", Readers.name(), "");
            Read<String> episode = fields.optional("episode", Readers.name(), "");
            Read<Optional<Money>> net = fields.optional("net", money);
            Read<Money> tax = fields.optional("tax", money, Money.zero(currency));
            Read<String> note = fields.required("note", Readers.text(EntryJson.MOST_NOTE));
            return fields.build(() -> new ToComplete(
                    job,
                    date.get(),
                    new ToComplete.Place(code.get(), episode.get()),
                    net.get().map(amount -> new ToComplete.Sum(amount, tax.get())),
                    note.get()));
        });
    }

    private Json.Members json(ToComplete.Kept kept) {
        ToComplete figure = kept.figure();
        Json.Members members = Json.object()
                .put("id", kept.id().number())
                .put("date", figure.date().toString());
        if (!figure.place().costCode().isEmpty()) {
            members.put("costCode", figure.place().costCode());
        }
        if (!figure.place().episode().isEmpty()) {
            members.put("episode", figure.place().episode());
        }
        figure.sum()
                .ifPresent(sum -> members.put("net", sum.net().amount())
                        .put("tax", sum.tax().amount())
                        .put("currency", sum.net().currency().code()));
        return members.put("note", figure.note())
                .put("by", kept.by().number())
                .put("at", Moments.text(kept.at(), in.zone()));
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
