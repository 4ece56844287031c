package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.post.Invoice;
import dayglass.job.Job;
import dayglass.sheet.CsvText;
import dayglass.wire.Checked;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invoices as JSON; their lines may come as a table instead, each row a line whose headings are its members. */
public final class InvoiceJson {
    private static final int MOST_LINES = 1_000;

    /** What a table's headings may be, and the member of a line that each stands for. */
    private static final Map<String, String> HEADINGS = Map.ofEntries(
            Map.entry("commitment", "commitment"),
            Map.entry("purchase order", "purchaseOrder"),
            Map.entry("description", "description"),
            Map.entry("cost code", "costCode"),
            Map.entry("episode", "episode"),
            Map.entry("service from", "serviceFrom"),
            Map.entry("service to", "serviceTo"),
            Map.entry("net", "net"),
            Map.entry("tax code", "taxCode"),
            Map.entry("tax", "tax"),
            Map.entry("more to come", "more"),
            Map.entry("explanation", "explanation"));

    private final Job.Id job;
    private final Currency base;
    private final List<Entries.Order> orders;

    /**
     * Reads invoices of a job.
     *
     * @param orders of the job, by which a line's purchase order finds its commitment
     */
    public InvoiceJson(Job.Id job, Currency base, List<Entries.Order> orders) {
        this.job = job;
        this.base = base;
        this.orders = new ArrayList<>(orders);
    }

    public Reader<Invoice> reader() {
        return Fields.object(fields -> {
            Read<String> supplier = fields.required("supplier", Readers.name());
            Read<String> number = fields.required("number", Readers.name());
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<Optional<LocalDate>> postedOn = fields.optional("postedOn", Readers.date());
            Read<Currency> currency = fields.optional("currency", Decimals.currency(), base);
            Read<Exchange> exchange = EntryJson.exchange(fields, currency, base, date);
            Reader<Invoice.Line> line = line(supplier, currency);
            Read<List<Invoice.Line>> lines = fields.has("text")
                    ? fields.required("text", table(line))
                    : fields.required("lines", Readers.notEmpty(Readers.list(line)));
            return fields.build(() -> new Invoice(
                    job,
                    supplier.get(),
                    number.get(),
                    date.get(),
                    postedOn.get().orElse(date.get()),
                    exchange.get(),
                    lines.get()));
        });
    }

    private Reader<Invoice.Line> line(Read<String> supplier, Read<Currency> currency) {
        return Fields.object(fields -> {
            Read<Optional<Entry.Id>> commitment = fields.optional("commitment", Ids.id(Entry.Id::new));
            Read<Optional<String>> purchaseOrder = fields.optional("purchaseOrder", Readers.name());
            Read<Optional<String>> description = fields.optional("description", Readers.name());
            Read<Optional<String>> code = fields.optional("costCode", Readers.name());
            Read<Optional<String>> episode = fields.optional("episode", Readers.name());
            Read<Optional<DateRange>> service = EntryJson.service(fields);
            Read<String> taxCode = fields.optional("taxCode", Readers.name(), "");
            Read<Money> net = fields.required("net", EntryJson.amount(currency));
            Read<Optional<Money>> tax = fields.optional("tax", EntryJson.amount(currency));
            Read<Boolean> more = fields.optional("more", Readers.yesOrNo(), false);
            Read<String> explanation = fields.optional("explanation", Readers.text(EntryJson.MOST_NOTE), "");
            Read<Optional<Entry.Id>> order = order(fields, supplier, commitment, purchaseOrder);
            return fields.build(() -> new Invoice.Line(
                    order.get(),
                    new Invoice.Text(description.get(), code.get(), episode.get(), service.get(), taxCode.get()),
                    net.get(),
                    tax.get().orElse(Money.zero(net.get().currency())),
                    more.get(),
                    explanation.get()));
        });
    }

    /** The commitment that a line names, or the first open one of its purchase order that no line took yet. */
    private Read<Optional<Entry.Id>> order(
            Fields fields,
            Read<String> supplier,
            Read<Optional<Entry.Id>> commitment,
            Read<Optional<String>> purchaseOrder) {
        if (!commitment.isGood() || !purchaseOrder.isGood() || !supplier.isGood()) {
            return Read.bad();
        }
        if (commitment.get().isPresent() || purchaseOrder.get().isEmpty()) {
            return commitment;
        }
        Optional<Entries.Order> found = orders.stream()
                .filter(each -> isOf(each, supplier.get(), purchaseOrder.get().get()))
                .findFirst();
        found.ifPresent(orders::remove);
        return found.isPresent()
                ? Read.good(found.map(each -> each.commitment().id()))
                : fields.place()
                        .member("purchaseOrder")
                        .fault("has no open commitment left with this supplier: name the commitment, or leave it out");
    }

    private static boolean isOf(Entries.Order order, String supplier, String purchaseOrder) {
        Entry entry = order.commitment().entry();
        return !order.open().isZero()
                && entry.coding().supplier().equals(supplier)
                && entry.papers().purchaseOrder().equals(purchaseOrder);
    }

    private static Reader<List<Invoice.Line>> table(Reader<Invoice.Line> line) {
        return (json, place) -> {
            Read<String> text = Readers.anyText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            return CsvText.read(text.get().getBytes(StandardCharsets.UTF_8))
                    .fold(
                            csv -> rows(csv, line).fold(Read::good, faults -> {
                                faults.forEach(fault -> place.fault(fault.message()));
                                return Read.bad();
                            }),
                            problem -> place.fault(problem.faults().stream()
                                    .map(Fault::message)
                                    .findFirst()
                                    .orElse(problem.detail())));
        };
    }

    private static Checked<List<Invoice.Line>> rows(CsvText csv, Reader<Invoice.Line> line) {
        List<Fault> faults = new ArrayList<>();
        List<Invoice.Line> lines = new ArrayList<>();
        if (csv.rows().isEmpty() || csv.rows().size() > MOST_LINES) {
            faults.add(new Fault("", "The table must have 1 to " + MOST_LINES + " rows below its headings"));
        }
        List<String> members = new ArrayList<>();
        for (String heading : csv.heading().cells()) {
            String member = HEADINGS.get(heading.strip().toLowerCase(java.util.Locale.ROOT));
            if (member == null) {
                faults.add(new Fault(
                        "",
                        "Line 1: the heading \"" + heading + "\" is not known; known are "
                                + String.join(
                                        ", ",
                                        HEADINGS.keySet().stream().sorted().toList())));
            }
            members.add(member == null ? "" : member);
        }
        if (faults.isEmpty()) {
            csv.rows()
                    .forEach(row -> line.readAll(json(members, row)).fold(lines::add, wrong -> {
                        wrong.forEach(fault -> faults.add(
                                new Fault("", "Line " + row.line() + ", " + place(fault) + fault.message())));
                        return false;
                    }));
        }
        return faults.isEmpty() ? new Checked.Good<>(lines) : new Checked.Faulty<>(faults);
    }

    private static String place(Fault fault) {
        return fault.pointer().isEmpty() ? "" : fault.pointer().substring(1) + ": ";
    }

    private static Json json(List<String> members, CsvText.Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int at = 0; at < Math.min(members.size(), row.cells().size()); at++) {
            String cell = row.cells().get(at).strip();
            if (!cell.isEmpty()) {
                cells.put(members.get(at), cell);
            }
        }
        Json.Members line = Json.object();
        cells.forEach((name, cell) -> line.put(
                name,
                name.equals("more")
                        ? yesOrNo(cell)
                        : name.equals("commitment") && cell.matches("[0-9]{1,18}")
                                ? new Json.Num(cell)
                                : Json.text(cell)));
        return line.build();
    }

    private static Json yesOrNo(String cell) {
        return cell.equals("yes") || cell.equals("no") ? Json.bool(cell.equals("yes")) : Json.text(cell);
    }
}
