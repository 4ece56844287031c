package dayglass.web.page.books;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.books.list.HireLine;
import dayglass.books.list.InsuredLine;
import dayglass.books.list.JobLists;
import dayglass.books.list.ListTables;
import dayglass.job.Job;
import dayglass.paper.PaperSize;
import dayglass.paper.Pdf;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The lists of a job's cost of hire and of what has to be insured: as a PDF and as a workbook. */
public final class ListPages {
    private static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final BooksPages in;
    private final JobLists lists;

    ListPages(BooksPages in, JobLists lists) {
        this.in = in;
        this.lists = lists;
    }

    /** A row as it is printed; the last {@code amounts} of its cells are amounts. */
    public record Row(List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A list as it is printed.
     *
     * @param amounts how many columns at the right are amounts
     * @param totals one a line below
     */
    public record Sheet(String title, List<String> headings, int amounts, List<Row> rows, List<String> totals) {
        public Sheet {
            headings = List.copyOf(headings);
            rows = List.copyOf(rows);
            totals = List.copyOf(totals);
        }
    }

    void route(RoutesConfig routes) {
        routes.get("/books/{id}/hire.xlsx", ctx -> {
            Stored<Job.Id, Job> job = in.job(ctx);
            workbook(ctx, "hire", ListTables.hire(job.facts().name(), in.now(), lists.hire(job.id())));
        });
        routes.get("/books/{id}/insurance.xlsx", ctx -> {
            Stored<Job.Id, Job> job = in.job(ctx);
            workbook(ctx, "insurance", ListTables.insured(job.facts().name(), in.now(), lists.insured(job)));
        });
        routes.get("/books/{id}/hire.pdf", ctx -> print(ctx, "hire", this::hire));
        routes.get("/books/{id}/insurance.pdf", ctx -> print(ctx, "insurance", this::insured));
    }

    private static void named(Context ctx, String name, String ending) {
        ctx.header(
                "Content-Disposition",
                "attachment; filename=\"job-" + ctx.pathParam("id") + "-" + name + "." + ending + "\"");
    }

    private static void workbook(Context ctx, String name, byte[] bytes) {
        named(ctx, name, "xlsx");
        ctx.contentType(WORKBOOK).result(bytes);
    }

    private void print(Context ctx, String name, Function<Stored<Job.Id, Job>, Sheet> list) {
        Stored<Job.Id, Job> job = in.job(ctx);
        in.html.render(
                ctx,
                "paperlist.jte",
                Map.of(
                        "sheet", list.apply(job),
                        "job", job.facts().name(),
                        "house", in.household.settings().now().facts().name(),
                        "made", Words.date(in.today())));
        byte[] page = Pdf.of(Optional.ofNullable(ctx.result()).orElse(""), PaperSize.A4);
        named(ctx, name, "pdf");
        ctx.contentType("application/pdf").result(page);
    }

    private Sheet hire(Stored<Job.Id, Job> job) {
        List<HireLine> lines = lists.hire(job.id());
        Money none = Money.zero(job.facts().currency());
        Money net = lines.stream().map(line -> line.order().amounts().baseNet()).reduce(none, Money::plus);
        Money gross =
                lines.stream().map(line -> line.order().amounts().baseGross()).reduce(none, Money::plus);
        Money open = lines.stream().map(HireLine::open).reduce(none, Money::plus);
        return new Sheet(
                "Cost of hire",
                List.of("supplier", "order", "what", "days of service", "net", "with tax", "open, net"),
                3,
                lines.stream().map(ListPages::row).toList(),
                List.of(
                        "Net: " + Words.money(net),
                        "With tax: " + Words.money(gross),
                        "Open, net: " + Words.money(open)));
    }

    private static Row row(HireLine line) {
        return new Row(List.of(
                line.order().coding().supplier(),
                line.order().papers().purchaseOrder(),
                line.order().item().description(),
                Words.dates(line.order().service()) + " (" + line.days() + ")",
                Words.money(line.order().amounts().baseNet()),
                Words.money(line.order().amounts().baseGross()),
                Words.money(line.open())));
    }

    private Sheet insured(Stored<Job.Id, Job> job) {
        List<InsuredLine> lines = lists.insured(job);
        List<String> totals = new ArrayList<>();
        ListTables.values(lines).forEach(sum -> totals.add("Replacement value that is known: " + Words.money(sum)));
        long unknown = lines.stream().filter(line -> line.value().isEmpty()).count();
        if (unknown > 0) {
            totals.add("Lines without a value: " + unknown + ". Ask the owners before the certificate is asked for.");
        }
        totals.add("What is insured, and for how much, is what the policy says.");
        return new Sheet(
                "For the certificate of insurance",
                List.of("what", "tag", "serial", "owner", "needed", "replacement value"),
                1,
                lines.stream().map(ListPages::row).toList(),
                totals);
    }

    private static Row row(InsuredLine line) {
        return new Row(List.of(
                line.what(),
                line.tag(),
                line.serial(),
                line.owner().isEmpty() ? "the house" : line.owner(),
                Words.dates(line.held()),
                line.value().map(Words::money).orElse("not known")));
    }
}
