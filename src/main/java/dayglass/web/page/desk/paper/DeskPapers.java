package dayglass.web.page.desk.paper;

import dayglass.base.Stored;
import dayglass.desk.paper.Invoice;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RentalNow;
import dayglass.paper.Pdf;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.request.PaperAsked;
import dayglass.web.request.PathNumbers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/**
 * The papers of quotes and rentals by their addresses, on A4 or with {@code ?paper=Letter} on Letter; a quote's with
 * {@code ?revision=N} as it stood.
 */
public final class DeskPapers {
    private final PaperSources sources;
    private final Html html;

    public DeskPapers(PaperSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/desk/quotes/{id}/quote.pdf", this::quote);
        routes.get("/desk/rentals/{id}/packing-list.pdf", ctx -> {
            Rental rental = rental(ctx).facts();
            send(ctx, "packing-list-" + rental.number(), "packingpaper.jte", new PackingPaper(sources, rental).model());
        });
        routes.get("/desk/rentals/{id}/handover.pdf", ctx -> {
            RentalNow now = sources.desk().letOut().now(rental(ctx));
            send(ctx, "handover-" + now.facts().number(), "handoverpaper.jte", new DoorPaper(sources, now).handover());
        });
        routes.get("/desk/rentals/{id}/return.pdf", ctx -> {
            RentalNow now = sources.desk().letOut().now(rental(ctx));
            send(ctx, "return-" + now.facts().number(), "returnpaper.jte", new DoorPaper(sources, now).handedBack());
        });
        routes.get("/desk/rentals/{id}/invoice.pdf", this::invoice);
    }

    private Stored<Rental.Id, Rental> rental(Context ctx) {
        return Requests.find(ctx, sources.desk().rentals(), Rental.Id::new);
    }

    private void quote(Context ctx) {
        Quote quote = Requests.find(ctx, sources.desk().quotes(), Quote.Id::new).facts();
        int last = quote.revisions().size();
        String asked = Optional.ofNullable(ctx.queryParam("revision")).orElse(Integer.toString(last));
        int revision = (int) PathNumbers.of(asked).stream()
                .filter(number -> number <= last)
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        ProblemKind.NOT_FOUND,
                        "Quote " + quote.number() + " has no such revision: they are numbered from 1 to " + last
                                + "."));
        send(
                ctx,
                "quote-" + quote.number() + "-" + revision,
                "quotepaper.jte",
                new QuotePaper(sources, quote, revision).model());
    }

    private void invoice(Context ctx) {
        Stored<Rental.Id, Rental> rental = rental(ctx);
        Invoice invoice = Invoice.of(rental.facts())
                .orElseThrow(() -> new Refusal(ProblemKind.NOT_FOUND, Invoice.whyNone(rental.facts())));
        send(ctx, "invoice-" + invoice.number(), "invoicepaper.jte", new InvoicePaper(sources, invoice).model());
    }

    private void send(Context ctx, String name, String template, Map<String, Object> model) {
        byte[] paper = Pdf.of(html.text(template, model), PaperAsked.of(ctx));
        ctx.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + name + ".pdf\"")
                .header("Cache-Control", "no-store")
                .result(paper);
    }
}
