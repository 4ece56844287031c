package dayglass.web.api.desk;

import dayglass.base.Stored;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.Rental;
import dayglass.shelf.desk.QuoteJson;
import dayglass.shelf.desk.RentalDeeds;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.time.LocalDate;
import java.util.function.UnaryOperator;

/** {@code /api/quotes}: issued, revised, declined, or confirmed as a rental. */
final class QuoteApi {
    private static final String PATH = "/api/quotes";

    private final Desk desk;
    private final Acts<Quote.Id, Quote> acts;
    private final Acts<Rental.Id, Rental> rentals;

    QuoteApi(Desk desk, Acts<Rental.Id, Rental> rentals) {
        this.desk = desk;
        this.acts = new Acts<>(PATH, "quote", desk.quotes(), Quote.Id::new, this::json);
        this.rentals = rentals;
    }

    void addTo(RoutesConfig routes, UnaryOperator<Handler> once) {
        routes.get(PATH, acts::list);
        routes.post(PATH, once.apply(this::issue));
        routes.get(PATH + "/{id}", acts::read);
        routes.post(
                PATH + "/{id}/revisions",
                once.apply(ctx -> acts.act(
                        ctx, wanted(), (quote, wanted) -> desk.makeQuote().revise(quote, wanted))));
        routes.post(
                PATH + "/{id}/decline",
                ctx -> acts.act(
                        ctx, RentalDeeds.why(), (quote, why) -> desk.makeQuote().decline(quote, why)));
        routes.post(PATH + "/{id}/confirm", once.apply(this::confirm));
    }

    private LocalDate today() {
        return desk.pricing().today();
    }

    private Reader<MakeQuote.Wanted> wanted() {
        return QuoteJson.wanted(today());
    }

    private void issue(Context ctx) {
        Requests.onlyParameters(ctx);
        acts.created(ctx, Refusal.require(desk.makeQuote().issue(Requests.body(ctx, wanted()))));
    }

    private void confirm(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Quote.Id, Quote> quote = acts.find(ctx);
        acts.body(ctx, Fields.object(fields -> fields.build(() -> true)), quote);
        rentals.created(ctx, Refusal.require(desk.runRental().confirm(quote)));
    }

    private Json.Obj json(Stored<Quote.Id, Quote> quote) {
        Json.Members members = Json.object()
                .put("id", quote.id().number())
                .put("version", quote.version())
                .put("state", quote.facts().state(today()));
        QuoteJson.write(members, quote.facts());
        desk.rentals()
                .ofQuote(quote.id())
                .ifPresent(rental -> members.put("rentalId", rental.id().number()));
        return members.build();
    }
}
