package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.post.Invoice;
import dayglass.books.post.PayInvoice;
import dayglass.job.Job;
import dayglass.sheet.CsvText;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invoices as JSON; their lines may come as a table instead, each row a line whose headings are its members. */
public final class InvoiceJson {
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
        if (!commitment.isGood() || !purchaseOrder.isGood()) {
            return Read.bad();
        }
        // Of a supplier at fault the invoice tells; its lines have no fault of their own.
        if (commitment.get().isPresent() || purchaseOrder.get().isEmpty() || !supplier.isGood()) {
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
            Read<String> text = Readers.wholeText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            List<Fault> faults = new ArrayList<>();
            List<TableRows.Row<Invoice.Line>> rows = CsvText.read(text.get().getBytes(StandardCharsets.UTF_8))
                    .fold(csv -> new TableRows<>(HEADINGS, InvoiceJson::cell, line).read(csv, faults), problem -> {
                        faults.addAll(problem.faults());
                        return List.of();
                    });
            faults.forEach(fault -> place.fault(fault.message()));
            return faults.isEmpty()
                    ? Read.good(rows.stream().map(TableRows.Row::said).toList())
                    : Read.bad();
        };
    }

    private static Json cell(String member, String said) {
        if (member.equals("more") && (said.equals("yes") || said.equals("no"))) {
            return Json.bool(said.equals("yes"));
        }
        return member.equals("commitment") && said.matches("[0-9]{1,18}") ? new Json.Num(said) : Json.text(said);
    }

    /** A payment in the currency of its invoice. */
    public static Reader<PayInvoice.Draft> payment(Currency currency, Currency base) {
        return Fields.object(fields -> {
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<Money> amount = fields.required("amount", EntryJson.amount(Read.good(currency)));
            Read<Exchange> exchange = EntryJson.exchange(fields, Read.good(currency), base, date);
            Read<Optional<String>> code = fields.optional("costCode", Readers.name());
            return fields.build(() -> new PayInvoice.Draft(date.get(), amount.get(), exchange.get(), code.get()));
        });
    }
}
