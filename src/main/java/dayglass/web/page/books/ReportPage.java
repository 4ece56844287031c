package dayglass.web.page.books;

import dayglass.base.Id;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.CostingLines;
import dayglass.books.chart.Chart;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.post.AcceptPlan;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.books.report.CostReport.Figures;
import dayglass.books.report.ToComplete;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
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
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cost report, and the costing that can be accepted into it. */
public final class ReportPage {
    private final BooksPages in;

    ReportPage(BooksPages in) {
        this.in = in;
    }

    /**
     * One row of the report.
     *
     * @param title what the chart calls the code; empty where it has no name
     * @param change of the final cost since the day that the page names; empty where there was none
     */
    public record Row(String name, String title, List<Cell> cells, String change) {
        public Row {
            cells = List.copyOf(cells);
        }

        Row titled(String other) {
            return new Row(name, other, cells, change);
        }
    }

    /**
     * A figure.
     *
     * @param address of the entries that it is the sum of; empty where it is worked out from others
     */
    public record Cell(String amount, String address) {}

    /** A costing that is not in the books. */
    public record Plan(long costing, String total, String made) {}

    void route(RoutesConfig routes) {
        routes.get("/books", this::first);
        routes.get("/books/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/books/{id}/accept", "/books/{id}", this::accept);
    }

    /** The books of the newest job; one without any is told how they begin. */
    private void first(Context ctx) {
        Optional<Stored<Job.Id, Job>> newest = Requests.all(in.books.house().jobs()).stream()
                .max(Comparator.comparing((Stored<Job.Id, Job> job) ->
                                in.books.entries().earliest(job.id()).isPresent())
                        .thenComparing(job -> job.id().number()));
        if (newest.isPresent()) {
            Requests.see(ctx, "/books/" + newest.get().id().number());
        } else {
            in.html.render(ctx, "booksempty.jte", Map.of());
        }
    }

    private void show(Context ctx, Form form) {
        Stored<Job.Id, Job> job = in.job(ctx);
        By by = Optional.ofNullable(ctx.queryParam("by")).flatMap(By::of).orElse(By.CODE);
        Basis basis =
                Optional.ofNullable(ctx.queryParam("basis")).flatMap(Basis::of).orElse(Basis.NET);
        LocalDate since = since(job.id());
        CostReport report = report(job, by, basis, Optional.empty());
        CostReport before = report(job, by, basis, Optional.of(since));
        Chart chart = in.books.charts().of(job.id()).facts();
        Map<String, Object> model = BooksPages.model(job, form.values().isEmpty() ? blank() : form);
        model.put("jobs", jobs());
        model.put("by", by.word());
        model.put("basis", basis.word());
        model.put("currency", job.facts().currency().code());
        model.put("since", Words.date(since));
        model.put(
                "rows",
                report.rows().stream()
                        .map(row -> row(job.id(), row, report, before))
                        .map(row -> by == By.CODE ? row.titled(chart.nameOf(row.name())) : row)
                        .toList());
        model.put(
                "total",
                new Row(
                        "Total",
                        "",
                        cells(entries(job.id()), "", report.total()),
                        change(before.total(), report.total())));
        model.put("typed", typed(job.id()));
        model.put("plan", plan(job.id()));
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "books.jte", model);
        } else {
            in.html.render(ctx, "books.jte", model);
        }
    }

    /** The figures that somebody typed and that count, in words. */
    private List<String> typed(Job.Id job) {
        return ToComplete.inForce(in.plans.typed().of(job), Optional.empty()).stream()
                .map(ToComplete.Kept::figure)
                .map(figure -> (figure.place().costCode().isEmpty()
                                ? "without a code"
                                : figure.place().costCode())
                        + (figure.place().episode().isEmpty()
                                ? ""
                                : ", episode " + figure.place().episode())
                        + figure.sum()
                                .map(sum -> ", " + Words.amount(sum.net()) + " net")
                                .orElse("")
                        + " from " + Words.date(figure.date()) + " (" + figure.note() + ")")
                .toList();
    }

    private Form blank() {
        return Form.EMPTY.with("/date", in.today().toString());
    }

    /** The last day of the week before this one. */
    private LocalDate since(Job.Id job) {
        LocalDate today = in.today();
        return in.books
                .periods()
                .calendars()
                .of(job)
                .facts()
                .calendar()
                .of(today)
                .map(period -> period.firstDay().minusDays(1))
                .orElse(today.minusDays(7));
    }

    private CostReport report(Stored<Job.Id, Job> job, By by, Basis basis, Optional<LocalDate> until) {
        return CostReport.of(
                by, basis, job.facts().currency(), in.plans.figures().of(job.id(), until));
    }

    private List<Choice> jobs() {
        return Requests.all(in.books.house().jobs()).stream()
                .map(job -> new Choice(
                        String.valueOf(job.id().number()), job.facts().name()))
                .toList();
    }

    /** The row of a name; its figures lead to the entries that bear it. */
    private static Row row(Job.Id job, CostReport.Row row, CostReport report, CostReport before) {
        String parameter = Map.of(By.CODE, "costCode", By.EPISODE, "episode", By.SUPPLIER, "supplier")
                .get(report.by());
        String which = "&" + parameter + "=" + URLEncoder.encode(row.name(), StandardCharsets.UTF_8);
        return new Row(
                row.name(),
                "",
                cells(entries(job), which, row.figures()),
                change(before.figures(row.name()), row.figures()));
    }

    private static String entries(Job.Id job) {
        return "/books/" + job.number() + "/entries?kind=";
    }

    private static List<Cell> cells(String entries, String which, Figures figures) {
        String toComplete = entries.replace("/entries?kind=", "/to-complete")
                + (which.startsWith("&costCode=") ? which.replaceFirst("&", "?") : "");
        return List.of(
                cell(figures.estimate(), entries + Kind.ESTIMATE.word() + which),
                cell(figures.committed(), entries + Kind.COMMITMENT.word() + which),
                cell(figures.actual(), entries + Kind.ACTUAL.word() + which),
                cell(figures.accrued(), entries + Kind.ACCRUAL.word() + which),
                cell(figures.toComplete(), toComplete),
                cell(figures.finalCost(), ""),
                cell(figures.variance(), ""));
    }

    private static String change(Figures before, Figures now) {
        Money change = now.finalCost().minus(before.finalCost());
        return change.signum() == 0 ? "" : Words.amount(change);
    }

    private static Cell cell(Money amount, String address) {
        return new Cell(Words.amount(amount), address);
    }

    /** The latest costing of the job, unless it is in the books; number 0 where there is none. */
    private Plan plan(Job.Id job) {
        return in.plans
                .costings()
                .latestOf(job)
                .filter(costing -> !in.books.entries().hasCosting(costing.id().number()))
                .map(costing -> new Plan(
                        costing.id().number(),
                        Words.money(costing.facts().summary().total()),
                        Words.moment(costing.facts().summary().createdAt(), in.zone())))
                .orElse(new Plan(0, "", ""));
    }

    private record Accepted(LocalDate date, Kind as) {}

    private static final Reader<Accepted> ACCEPTED = Fields.object(fields -> {
        Read<LocalDate> date = fields.required("date", Readers.date());
        Read<Kind> as = fields.required(
                "as",
                Readers.word(Map.of(Kind.COMMITMENT.word(), Kind.COMMITMENT, Kind.ESTIMATE.word(), Kind.ESTIMATE)));
        return fields.build(() -> new Accepted(date.get(), as.get()));
    });

    private void accept(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        Json json = Json.object()
                .put("date", form.value("/date"))
                .put("as", form.value("/as"))
                .build();
        in.once(
                ctx,
                form,
                () -> BooksPages.read(ACCEPTED, json)
                        .then(accepted -> accept(job.id(), form, accepted))
                        .map(posted -> "/books/" + job.id().number()),
                problem -> show(ctx, form.with(problem)));
    }

    private Outcome<List<Posted>> accept(Job.Id job, Form form, Accepted accepted) {
        Optional<Stored<KeptCosting.Id, KeptCosting>> latest =
                in.plans.costings().latestOf(job);
        Optional<Long> seen = latest.map(Stored::id)
                .map(Id::number)
                .filter(id -> form.value("costing").equals(String.valueOf(id)));
        if (seen.isEmpty()) {
            return Outcome.refused(
                    dayglass.base.Problem.Code.STALE,
                    "The job was costed again since this page was made: look at the newer costing first.");
        }
        CostingLines lines = CostingLines.of(
                latest.orElseThrow(), in.plans.codes().of(job).facts().codes());
        return in.books
                .acceptPlan()
                .accept(new AcceptPlan.Plan(job, seen.get(), lines, accepted.as(), accepted.date(), Map.of()));
    }
}
