package dayglass.storage.books;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.COST_CHART;
import static dayglass.storage.schema.Tables.JOB;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.chart.Chart;
import dayglass.books.chart.Charts;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.CostChartRecord;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** A row a job, its codes as JSON. A code that entries bear never leaves. */
public final class JooqCharts extends VersionedTable<Job.Id, Chart, CostChartRecord> implements Charts {
    private static final Reader<List<Chart.CostCode>> CODES = Readers.list(Fields.object(fields -> {
        Read<String> code = fields.required("code", Readers.anyText());
        Read<String> name = fields.required("name", Readers.anyText());
        return fields.build(() -> new Chart.CostCode(code.get(), name.get()));
    }));

    public JooqCharts(Database database) {
        super(database, new Shape<>("chart of cost codes", COST_CHART.JOB_ID, COST_CHART.VERSION, Job.Id::new));
    }

    @Override
    public Stored<Job.Id, Chart> of(Job.Id job) {
        return find(job).orElseGet(() -> new Stored<>(job, 0, new Chart(job, List.of())));
    }

    @Override
    public Outcome<Stored<Job.Id, Chart>> keep(Stored<Job.Id, Chart> chart) {
        return addOrChange(chart);
    }

    @Override
    protected void fill(CostChartRecord row, Chart facts) {
        row.setJobId(facts.job().number());
        row.setCodesJson(JsonPrint.pretty(Json.list(facts.codes().stream()
                .map(each -> Json.object()
                        .put("code", each.code())
                        .put("name", each.name())
                        .build())
                .toList())));
    }

    @Override
    protected Chart facts(DSLContext sql, CostChartRecord row) {
        return CODES.read(row.getCodesJson().getBytes(StandardCharsets.UTF_8))
                .fold(codes -> new Chart(new Job.Id(row.getJobId()), codes), faults -> {
                    throw new IllegalStateException("a chart was kept in another form: " + faults);
                });
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Job.Id> self, Chart facts) {
        return missing(sql, "", "job", JOB.ID, facts.job()).or(() -> gone(sql, facts));
    }

    private static Optional<Problem> gone(DSLContext sql, Chart facts) {
        List<Fault> gone = sql
                .selectDistinct(BOOK_ENTRY.COST_CODE)
                .from(BOOK_ENTRY)
                .where(BOOK_ENTRY.JOB_ID.eq(facts.job().number()), EntryRows.stands())
                .orderBy(BOOK_ENTRY.COST_CODE)
                .fetch(BOOK_ENTRY.COST_CODE)
                .stream()
                .filter(code -> !facts.allows(code))
                .map(code -> new Fault(
                        "/text",
                        code.isEmpty()
                                ? "Entries without a code are in the books: reverse them and enter them with one first"
                                : "The code " + code + " is borne by entries and must stay in the chart: add its row"))
                .toList();
        return gone.isEmpty() ? Optional.empty() : Optional.of(Problem.faulty(gone));
    }

    /** It goes with its job. */
    @Override
    protected List<String> uses(DSLContext sql, Job.Id id) {
        return List.of();
    }
}
