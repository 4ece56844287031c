package dayglass.web.page.books;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.post.Invoice;
import dayglass.books.post.Invoices;
import dayglass.books.post.MatchInvoice;
import dayglass.job.Job;
import dayglass.web.api.books.InvoiceJson;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The invoices of a job, and a form that lays one beside what is open with its supplier. */
public final class InvoicePage {
    private static final Pattern LINE = Pattern.compile("/lines/([0-9]{1,6})(/.*)?");
    private static final List<String> TEXTS =
            List.of("description", "costCode", "net", "tax", "taxCode", "explanation");

    private final BooksPages in;

    InvoicePage(BooksPages in) {
        this.in = in;
    }

    /** An order of the supplier's, with what is open on it. */
    public record Open(long commitment, String description, String dates, String purchaseOrder, String net) {}

    /** An invoice that is posted. */
    public record Row(long id, String supplier, String number, String date, String gross, String owed) {}

    /**
     * A line beside its order.
     *
     * @param difference what it comes to beyond what was open; empty where they agree
     */
    public record Beside(String what, String open, String invoiced, String difference, boolean toExplain) {}

    void route(RoutesConfig routes) {
        routes.get("/books/{id}/invoices", ctx -> show(ctx, blank(ctx), List.of()));
        routes.post("/books/{id}/invoices", this::take);
    }

    private Form blank(Context ctx) {
        return Form.EMPTY
                .with(
                        "/supplier",
                        Optional.ofNullable(ctx.queryParam("supplier")).orElse(""))
                .with("/date", in.today().toString());
    }

    private List<Entries.Order> orders(Job.Id job) {
        return in.books.entries().orders(job, Optional.empty()).stream()
                .filter(order -> !order.open().isZero())
                .toList();
    }

    private void show(Context ctx, Form form, List<Beside> beside) {
        Stored<Job.Id, Job> job = in.job(ctx);
        List<Entries.Order> orders = orders(job.id());
        Map<String, Object> model = BooksPages.model(job, form);
        model.put(
                "suppliers",
                orders.stream().map(InvoicePage::supplier).distinct().sorted().toList());
        model.put(
                "open",
                orders.stream()
                        .filter(order -> supplier(order).equals(form.value("/supplier")))
                        .map(InvoicePage::open)
                        .toList());
        model.put(
                "rows", in.books.invoices().of(job.id()).stream().map(this::row).toList());
        model.put("beside", beside);
        model.put("currency", job.facts().currency().code());
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "invoices.jte", model);
        } else {
            in.html.render(ctx, "invoices.jte", model);
        }
    }

    private static String supplier(Entries.Order order) {
        return order.commitment().entry().coding().supplier();
    }

    private static Open open(Entries.Order order) {
        Entry entry = order.commitment().entry();
        return new Open(
                order.commitment().id().number(),
                entry.item().description(),
                Words.dates(entry.service()),
                entry.papers().purchaseOrder(),
                Words.money(order.open().net()));
    }

    private Row row(Invoices.Kept kept) {
        return new Row(
                kept.id().number(),
                kept.supplier(),
                kept.number(),
                Words.date(kept.date()),
                Words.money(kept.gross()),
                kept.reversed()
                        ? "taken back"
                        : Words.money(in.books.payInvoice().owed(kept)));
    }

    private void take(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        List<Integer> typed = typed(form);
        Reader<Invoice> reader = new InvoiceJson(job.id(), job.facts().currency(), orders(job.id())).reader();
        Outcome<Invoice> read = BooksPages.read(reader, json(form, typed));
        Outcome<List<MatchInvoice.Match>> matched = read.then(in.books.matchInvoice()::match);
        List<Beside> beside = matched.fold(
                matches -> matches.stream().map(InvoicePage::beside).toList(), problem -> List.of());
        if (form.value("do").equals("post")) {
            in.once(
                    ctx,
                    form,
                    () -> read.then(in.books.matchInvoice()::post)
                            .map(kept -> "/books/" + job.id().number() + "/invoices"),
                    problem -> show(ctx, form.with(placed(problem, typed)), beside));
        } else {
            Form shown = matched.fold(matches -> form, problem -> form.with(placed(problem, typed)));
            show(ctx, shown, beside);
        }
    }

    private static Beside beside(MatchInvoice.Match match) {
        return new Beside(
                match.order()
                        .map(order -> order.commitment().entry().item().description())
                        .or(() -> match.line().text().description())
                        .orElse(""),
                match.order().map(order -> Words.money(order.open().baseNet())).orElse("not ordered"),
                Words.money(match.amounts().baseNet()),
                match.difference().signum() == 0 ? "" : Words.money(match.difference()),
                match.toExplain());
    }

    /** The numbers of the lines into which something was typed. */
    private static List<Integer> typed(Form form) {
        List<Integer> typed = new ArrayList<>();
        for (int line = 0; line < form.rows("/lines"); line++) {
            int at = line;
            if (TEXTS.stream().anyMatch(name -> form.has("/lines/" + at + "/" + name))) {
                typed.add(line);
            }
        }
        return typed;
    }

    private static Json json(Form form, List<Integer> typed) {
        Json.Members invoice = Json.object();
        for (String name : List.of("supplier", "number", "date", "postedOn", "currency")) {
            put(invoice, form, "/" + name, name);
        }
        if (form.has("/exchange/rate") || form.has("/exchange/source")) {
            Json.Members exchange = Json.object();
            put(exchange, form, "/exchange/rate", "rate");
            put(exchange, form, "/exchange/source", "source");
            invoice.put("exchange", exchange.build());
        }
        if (form.has("/text")) {
            return invoice.put("text", form.value("/text")).build();
        }
        List<Json> lines = new ArrayList<>();
        for (int line : typed) {
            lines.add(line(form, "/lines/" + line + "/"));
        }
        return invoice.put("lines", Json.list(lines)).build();
    }

    private static Json line(Form form, String place) {
        Json.Members line = Json.object();
        TEXTS.forEach(name -> put(line, form, place + name, name));
        String commitment = form.value(place + "commitment");
        if (commitment.matches("[1-9][0-9]{0,17}")) {
            line.put("commitment", new Json.Num(commitment));
        }
        return line.put("more", form.has(place + "more")).build();
    }

    private static void put(Json.Members members, Form form, String field, String name) {
        if (form.has(field)) {
            members.put(name, form.value(field).strip());
        }
    }

    /** Faults told of lines as they were sent stand at the lines as they are shown. */
    private static Problem placed(Problem problem, List<Integer> typed) {
        Map<String, String> moved = new LinkedHashMap<>();
        problem.faults().forEach(fault -> {
            Matcher line = LINE.matcher(fault.pointer());
            if (line.matches() && Integer.parseInt(line.group(1)) < typed.size()) {
                String rest = line.group(2) == null ? "/net" : line.group(2);
                moved.put(fault.pointer(), "/lines/" + typed.get(Integer.parseInt(line.group(1))) + rest);
            }
        });
        return new Problem(
                problem.code(),
                problem.detail(),
                problem.faults().stream()
                        .map(fault -> new Fault(moved.getOrDefault(fault.pointer(), fault.pointer()), fault.message()))
                        .toList());
    }
}
