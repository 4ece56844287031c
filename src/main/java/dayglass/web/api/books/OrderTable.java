package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.chart.Chart;
import dayglass.books.entry.Entry;
import dayglass.books.entry.EntryFaults;
import dayglass.books.entry.Kind;
import dayglass.books.post.Books;
import dayglass.job.Job;
import dayglass.sheet.CsvText;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Commitments that are open when the books begin, as a table: a row an order. With one bad row nothing is taken; each
 * fault says its line and column.
 */
public final class OrderTable {
    /** What a table's headings may be, and the member of an entry that each stands for. */
    private static final Map<String, String> HEADINGS = Map.ofEntries(
            Map.entry("date", "date"),
            Map.entry("supplier", "supplier"),
            Map.entry("purchase order", "purchaseOrder"),
            Map.entry("description", "description"),
            Map.entry("cost code", "costCode"),
            Map.entry("episode", "episode"),
            Map.entry("service from", "serviceFrom"),
            Map.entry("service to", "serviceTo"),
            Map.entry("tag", "tag"),
            Map.entry("serial", "serial"),
            Map.entry("quantity", "quantity"),
            Map.entry("rate", "rate"),
            Map.entry("net", "net"),
            Map.entry("tax code", "taxCode"),
            Map.entry("tax", "tax"),
            Map.entry("currency", "currency"),
            Map.entry("exchange rate", "exchange/rate"),
            Map.entry("exchange source", "exchange/source"),
            Map.entry("exchange date", "exchange/date"),
            Map.entry("note", "note"));

    private final Books books;
    private final Job.Id job;
    private final Currency base;

    public OrderTable(Books books, Job.Id job, Currency base) {
        this.books = books;
        this.job = job;
        this.base = base;
    }

    /** The orders of a table, none of which is posted yet. */
    public Outcome<List<Entry>> read(String text) {
        return CsvText.read(text.getBytes(StandardCharsets.UTF_8))
                .fold(this::read, problem -> Outcome.refused(at("/text", problem.faults())));
    }

    private Outcome<List<Entry>> read(CsvText csv) {
        List<Fault> faults = new ArrayList<>();
        Reader<EntryJson.Typed> entry = EntryJson.reader(job, base);
        Reader<Entry> order = (json, place) -> entry.read(withKind(json), place).map(EntryJson.Typed::entry);
        List<TableRows.Row<Entry>> rows =
                new TableRows<>(HEADINGS, (member, cell) -> Json.text(cell), order).read(csv, faults);
        Chart chart = books.charts().of(job).facts();
        Optional<LocalDate> closed = books.close().closedThrough(job);
        rows.forEach(row -> faults(row.said(), chart, closed)
                .forEach(what -> faults.add(new Fault("", "Line " + row.line() + ", " + what))));
        return faults.isEmpty()
                ? Outcome.done(rows.stream().map(TableRows.Row::said).toList())
                : Outcome.refused(at("/text", faults));
    }

    private static Json withKind(Json json) {
        Map<String, Json> members = new HashMap<>(((Json.Obj) json).members());
        members.put("kind", Json.text(Kind.COMMITMENT.word()));
        Json.Members whole = Json.object();
        members.forEach(whole::put);
        return whole.build();
    }

    /** What the reader of one row cannot know. */
    private static List<String> faults(Entry order, Chart chart, Optional<LocalDate> closed) {
        List<String> faults = new ArrayList<>();
        EntryFaults.of(order, chart).forEach(fault -> faults.add(heading(fault) + ": " + fault.message()));
        if (order.coding().supplier().isEmpty()) {
            faults.add("supplier: is missing: an order is with somebody");
        }
        if (closed.filter(day -> !order.date().isAfter(day)).isPresent()) {
            faults.add("date: lies in a closed period: give it one after " + closed.get());
        }
        return faults;
    }

    private static String heading(Fault fault) {
        return HEADINGS.entrySet().stream()
                .filter(each -> each.getValue().equals(fault.pointer().substring(1)))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private static Problem at(String pointer, List<Fault> faults) {
        return Problem.faulty(faults.stream()
                .map(fault -> new Fault(pointer, fault.message()))
                .toList());
    }
}
