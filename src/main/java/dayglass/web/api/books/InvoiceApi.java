package dayglass.web.api.books;

import dayglass.base.Stored;
import dayglass.books.entry.Entries;
import dayglass.books.post.Invoice;
import dayglass.books.post.Invoices;
import dayglass.books.post.MatchInvoice;
import dayglass.books.post.PayInvoice;
import dayglass.job.Job;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.house.Moments;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** {@code /api/jobs/{id}/invoices}, laying one beside its orders, and {@code /api/invoices/{id}/payments}. */
public final class InvoiceApi {
    private static final String PATH = "/api/jobs/{id}/invoices";

    private final BooksContext in;

    public InvoiceApi(BooksContext in) {
        this.in = in;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::list);
        routes.post(PATH, in.once().apply(this::post));
        routes.post(PATH + "/match", this::match);
        routes.get("/api/invoices/{id}", this::read);
        routes.post("/api/invoices/{id}/payments", in.once().apply(this::pay));
    }

    private Invoice body(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        List<Entries.Order> orders = in.books().entries().orders(job.id(), Optional.empty());
        return Requests.body(ctx, new InvoiceJson(job.id(), job.facts().currency(), orders).reader());
    }

    private void match(Context ctx) {
        Requests.onlyParameters(ctx);
        List<MatchInvoice.Match> matches =
                Refusal.require(in.books().matchInvoice().match(body(ctx)));
        Replies.json(
                ctx,
                Json.object()
                        .put("toExplain", matches.stream().anyMatch(MatchInvoice.Match::toExplain))
                        .put(
                                "lines",
                                Json.list(matches.stream().map(InvoiceApi::json).toList()))
                        .build());
    }

    private static Json json(MatchInvoice.Match match) {
        Json.Members members = Json.object();
        match.order()
                .ifPresent(order -> members.put(
                                "commitment", order.commitment().id().number())
                        .put("open", order.open().baseNet().amount()));
        return members.put("invoiced", match.amounts().baseNet().amount())
                .put("released", match.released().baseNet().amount())
                .put("difference", match.difference().amount())
                .put("baseCurrency", match.difference().currency().code())
                .put("toExplain", match.toExplain())
                .build();
    }

    private void post(Context ctx) {
        Requests.onlyParameters(ctx);
        Invoices.Kept kept = Refusal.require(in.books().matchInvoice().post(body(ctx)));
        Replies.created(ctx, "/api/invoices/" + kept.id().number(), json(kept));
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx);
        List<Json> items = in.books().invoices().of(in.job(ctx).id()).stream()
                .<Json>map(this::json)
                .toList();
        Replies.json(ctx, Json.object().put("items", Json.list(items)).build());
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        Replies.json(ctx, json(find(ctx)));
    }

    private Invoices.Kept find(Context ctx) {
        Invoice.Id id = new Invoice.Id(Requests.pathId(ctx));
        return in.books()
                .invoices()
                .find(id)
                .orElseThrow(() ->
                        new Refusal(ProblemKind.NOT_FOUND, "There is no invoice with the id " + id.number() + "."));
    }

    private Json.Obj json(Invoices.Kept kept) {
        return Json.object()
                .put("id", kept.id().number())
                .put("jobId", kept.job().number())
                .put("supplier", kept.supplier())
                .put("number", kept.number())
                .put("date", kept.date().toString())
                .put("posting", kept.posting().number())
                .put("gross", kept.gross().amount())
                .put("currency", kept.gross().currency().code())
                .put("baseGross", kept.baseGross().amount())
                .put("baseCurrency", kept.baseGross().currency().code())
                .put("owed", in.books().payInvoice().owed(kept).amount())
                .put("reversed", kept.reversed())
                .put(
                        "payments",
                        Json.list(in.books().invoices().payments(kept.id()).stream()
                                .map(this::json)
                                .toList()))
                .build();
    }

    private Json json(Invoices.Payment payment) {
        Invoices.Paid paid = payment.paid();
        Json.Members members = Json.object()
                .put("date", paid.on().toString())
                .put("amount", paid.amount().amount())
                .put("exchange", EntryJson.exchange(paid.exchange()))
                .put("base", paid.base().amount())
                .put("booked", paid.booked().amount())
                .put("difference", paid.base().minus(paid.booked()).amount());
        payment.difference().ifPresent(entry -> members.put("differenceEntry", entry.number()));
        return members.put("enteredBy", payment.by().number())
                .put("enteredAt", Moments.text(payment.at(), in.zone()))
                .build();
    }

    private void pay(Context ctx) {
        Requests.onlyParameters(ctx);
        Invoices.Kept invoice = find(ctx);
        PayInvoice.Draft draft = Requests.body(
                ctx,
                InvoiceJson.payment(
                        invoice.gross().currency(), invoice.baseGross().currency()));
        Refusal.require(in.books().payInvoice().pay(invoice.id(), draft));
        Replies.created(ctx, "/api/invoices/" + invoice.id().number(), json(invoice));
    }
}
