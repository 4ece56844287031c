package dayglass.app.demo;

import static dayglass.app.demo.DemoData.bytes;
import static dayglass.app.demo.DemoData.must;

import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.CostingLines;
import dayglass.books.JobCodes;
import dayglass.books.JobCostCodes;
import dayglass.books.chart.Chart;
import dayglass.books.chart.ChartTable;
import dayglass.books.entry.Kind;
import dayglass.books.post.AcceptPlan;
import dayglass.books.post.Books;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.web.api.books.InvoiceJson;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps the demo's books through the acts that users have: its chart, the estimate and the orders from its plan, two
 * invoices, and the first weeks closed. What is posted is on the days of the film, not on that of the demo.
 */
public final class DemoBooks {
    private final Books books;
    private final JobCostCodes costCodes;
    private final Stored<Job.Id, Job> job;

    private DemoBooks(Books books, JobCostCodes costCodes, Job.Id job) {
        this.books = books;
        this.costCodes = costCodes;
        this.job = books.house().jobs().find(job).orElseThrow();
    }

    /** What {@code demo-data/books.json} says; invoices stand as REST takes them. */
    private record File(
            LocalDate estimateOn,
            LocalDate orderedOn,
            Map<String, String> costCodes,
            Map<String, String> purchaseOrders,
            List<Json> invoices,
            List<LocalDate> close) {}

    private static Reader<File> reader() {
        return Fields.object(fields -> {
            Read<LocalDate> estimate = fields.required("estimateOn", Readers.date());
            Read<LocalDate> ordered = fields.required("orderedOn", Readers.date());
            Read<Map<String, String>> codes = fields.required("costCodes", Readers.words(Readers.name()));
            Read<Map<String, String>> orders = fields.required("purchaseOrders", Readers.words(Readers.name()));
            Read<List<Json>> invoices = fields.required("invoices", Readers.list((json, place) -> Read.good(json)));
            Read<List<LocalDate>> close = fields.required("close", Readers.list(Readers.date()));
            return fields.build(() ->
                    new File(estimate.get(), ordered.get(), codes.get(), orders.get(), invoices.get(), close.get()));
        });
    }

    /** Fills the books of a job that has none. */
    public static void fill(
            Books books, JobCostCodes costCodes, Job.Id job, Stored<KeptCosting.Id, KeptCosting> costing) {
        File file = reader().read(bytes("books.json")).fold(read -> read, faults -> {
            throw new IllegalStateException("demo-data/books.json is faulty: " + faults);
        });
        new DemoBooks(books, costCodes, job).fill(file, costing);
    }

    private void fill(File file, Stored<KeptCosting.Id, KeptCosting> costing) {
        List<Chart.CostCode> codes = must(ChartTable.read(bytes("cost-codes.csv"), ""));
        must(books.charts().keep(new Stored<>(job.id(), 0, new Chart(job.id(), codes))));
        CostCodes byOption = new CostCodes(file.costCodes());
        must(costCodes.keep(new Stored<>(job.id(), 0, new JobCodes(job.id(), byOption))));
        CostingLines lines = CostingLines.of(costing, byOption);
        accept(file, costing, lines, Kind.ESTIMATE, file.estimateOn());
        accept(file, costing, lines, Kind.COMMITMENT, file.orderedOn());
        file.invoices().forEach(this::invoice);
        file.close().forEach(day -> must(books.close().close(job.id(), day)));
    }

    private void accept(
            File file, Stored<KeptCosting.Id, KeptCosting> costing, CostingLines lines, Kind as, LocalDate on) {
        must(books.acceptPlan()
                .accept(new AcceptPlan.Plan(job.id(), costing.id().number(), lines, as, on, file.purchaseOrders())));
    }

    private void invoice(Json json) {
        InvoiceJson form = new InvoiceJson(
                job.id(), job.facts().currency(), books.entries().orders(job.id(), Optional.empty()));
        must(books.matchInvoice().post(form.reader().readAll(json).fold(read -> read, faults -> {
            throw new IllegalStateException("an invoice of demo-data/books.json is faulty: " + faults);
        })));
    }
}
