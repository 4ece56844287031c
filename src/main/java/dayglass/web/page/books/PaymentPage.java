package dayglass.web.page.books;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.books.entry.Entry;
import dayglass.books.post.Invoice;
import dayglass.books.post.Invoices;
import dayglass.job.Job;
import dayglass.web.api.books.InvoiceJson;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** An invoice in the books: its lines, what was paid on it, and a form that keeps a payment. */
public final class PaymentPage {
    private final BooksPages in;

    PaymentPage(BooksPages in) {
        this.in = in;
    }

    /** What is at the head of the page. */
    public record Head(long id, String supplier, String number, String date, String gross, String base, String owed) {}

    /** A line as it was posted. */
    public record Line(long entry, String kind, String what, String code, String net, String tax) {}

    /**
     * A payment.
     *
     * @param difference what the rate of the day made it dearer, or below zero cheaper; empty where it was not
     * @param entry of that difference; 0 where there is none
     */
    public record Paid(String on, String amount, String rate, String base, String difference, long entry) {}

    void route(RoutesConfig routes) {
        routes.get("/books/invoices/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/books/invoices/{id}/payments", "/books/invoices/{id}", this::pay);
    }

    private Invoices.Kept find(Context ctx) {
        return in.books
                .invoices()
                .find(new Invoice.Id(Requests.number(ctx, "id")))
                .orElseThrow(() -> Requests.missing(ctx));
    }

    private void show(Context ctx, Form form) {
        Invoices.Kept kept = find(ctx);
        Stored<Job.Id, Job> job = in.books.house().jobs().find(kept.job()).orElseThrow();
        Money owed = in.books.payInvoice().owed(kept);
        Map<String, Object> model = BooksPages.model(
                job,
                form.values().isEmpty()
                        ? Form.EMPTY.with("/date", in.today().toString()).with("/amount", owed.amount())
                        : form);
        model.put(
                "head",
                new Head(
                        kept.id().number(),
                        kept.supplier(),
                        kept.number(),
                        Words.date(kept.date()),
                        Words.money(kept.gross()),
                        isForeign(kept) ? Words.money(kept.baseGross()) : "",
                        kept.reversed() ? "" : Words.money(owed)));
        model.put("open", !kept.reversed() && owed.signum() != 0);
        model.put("foreign", isForeign(kept));
        model.put(
                "lines",
                in.books.entries().posting(kept.posting()).stream()
                        .map(posted -> line(posted.id(), posted.entry()))
                        .toList());
        List<Paid> payments = in.books.invoices().payments(kept.id()).stream()
                .map(PaymentPage::paid)
                .toList();
        model.put("payments", payments);
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "invoice.jte", model);
        } else {
            in.html.render(ctx, "invoice.jte", model);
        }
    }

    private static boolean isForeign(Invoices.Kept kept) {
        return !kept.gross().currency().equals(kept.baseGross().currency());
    }

    private static Line line(Entry.Id id, Entry entry) {
        return new Line(
                id.number(),
                entry.kind().word(),
                entry.item().description(),
                entry.coding().costCode(),
                Words.money(entry.amounts().net()),
                Words.amount(entry.amounts().tax()));
    }

    private static Paid paid(Invoices.Payment payment) {
        Invoices.Paid paid = payment.paid();
        Money difference = paid.base().minus(paid.booked());
        return new Paid(
                Words.date(paid.on()),
                Words.money(paid.amount()),
                paid.exchange().rate().toPlainString() + ", " + paid.exchange().source(),
                Words.money(paid.base()),
                difference.signum() == 0 ? "" : Words.money(difference),
                payment.difference().map(Entry.Id::number).orElse(0L));
    }

    private void pay(Context ctx) {
        Invoices.Kept kept = find(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(
                                InvoiceJson.payment(
                                        kept.gross().currency(),
                                        kept.baseGross().currency()),
                                FormJson.read(form))
                        .then(draft -> in.books.payInvoice().pay(kept.id(), draft))
                        .map(payment -> "/books/invoices/" + kept.id().number()),
                problem -> show(ctx, form.with(problem)));
    }
}
