package dayglass.web.api.desk;

import dayglass.base.Currency;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.desk.paper.Invoice;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.Rental;
import dayglass.shelf.desk.InvoiceJson;
import dayglass.shelf.desk.RentalDeeds;
import dayglass.shelf.desk.RentalJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** {@code /api/rentals}: what is done to each, by an address that names the deed. */
final class RentalApi {
    private static final String PATH = "/api/rentals";

    private final Desk desk;
    private final Acts<Rental.Id, Rental> acts;

    RentalApi(Desk desk) {
        this.desk = desk;
        this.acts = new Acts<>(PATH, "rental", desk.rentals(), Rental.Id::new, this::json);
    }

    Acts<Rental.Id, Rental> acts() {
        return acts;
    }

    void addTo(RoutesConfig routes, UnaryOperator<Handler> once) {
        routes.get(PATH, acts::list);
        routes.get(PATH + "/{id}", acts::read);
        routes.get(PATH + "/{id}/invoice", this::invoice);
        rentIn(routes, once);
        deed(
                routes,
                once,
                "handover",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.door(),
                        (rental, door) -> desk.letOut().out(rental, door.items(), door.reason())));
        deed(
                routes,
                once,
                "return",
                ctx -> acts.act(
                        ctx, RentalDeeds.door(), (rental, door) -> desk.letOut().back(rental, door.items())));
        deed(
                routes,
                once,
                "undo-handover",
                ctx -> acts.act(
                        ctx, RentalDeeds.unit(), (rental, unit) -> desk.letOut().undoOut(rental, unit)));
        deed(
                routes,
                once,
                "swap",
                ctx -> acts.act(
                        ctx, RentalDeeds.swap(), (rental, swap) -> desk.letOut().swap(rental, swap.from(), swap.to())));
        deed(
                routes,
                once,
                "extend",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.lastDay(),
                        (rental, last) -> desk.runRental().extend(rental, last)));
        deed(
                routes,
                once,
                "charges",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.charge(currency(ctx)),
                        (rental, charged) -> desk.runRental().charge(rental, charged)));
        deed(
                routes,
                once,
                "reversals",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.reversal(),
                        (rental, what) -> desk.runRental().reverse(rental, what.at(), what.why())));
        deed(
                routes,
                once,
                "deposit",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.amount("taken", currency(ctx)),
                        (rental, taken) -> desk.runRental().takeDeposit(rental, taken)));
        deed(
                routes,
                once,
                "settle",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.amount("keep", currency(ctx)),
                        (rental, keep) -> desk.endRental()
                                .settle(rental, desk.letOut().now(rental).state(), keep)));
        deed(
                routes,
                once,
                "cancel",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.why(),
                        (rental, why) -> desk.endRental()
                                .cancel(rental, desk.letOut().now(rental).state(), why)));
    }

    /** What is rented in: ordered, got, and each taken back. */
    private void rentIn(RoutesConfig routes, UnaryOperator<Handler> once) {
        deed(
                routes,
                once,
                "order",
                ctx -> acts.act(
                        ctx,
                        RentalDeeds.order(),
                        (rental, said) -> desk.rentIn().order(rental, said)));
        onLine(routes, once, "undo-order", desk.rentIn()::undoOrder);
        onLine(routes, once, "got", desk.rentIn()::got);
        onLine(routes, once, "undo-got", desk.rentIn()::undoGot);
    }

    private void onLine(
            RoutesConfig routes,
            UnaryOperator<Handler> once,
            String name,
            BiFunction<Stored<Rental.Id, Rental>, Integer, Outcome<Stored<Rental.Id, Rental>>> deed) {
        deed(routes, once, name, ctx -> acts.act(ctx, RentalDeeds.line(), deed));
    }

    private void invoice(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Rental.Id, Rental> rental = acts.find(ctx);
        Invoice invoice = Invoice.of(rental.facts())
                .orElseThrow(() -> new Refusal(ProblemKind.NOT_FOUND, Invoice.whyNone(rental.facts())));
        Replies.json(ctx, InvoiceJson.write(rental.id(), invoice));
    }

    private static void deed(RoutesConfig routes, UnaryOperator<Handler> once, String name, Handler handler) {
        routes.post(PATH + "/{id}/" + name, once.apply(handler));
    }

    private Currency currency(Context ctx) {
        return acts.find(ctx).facts().promise().price().currency();
    }

    private Json.Obj json(Stored<Rental.Id, Rental> rental) {
        Json.Members members = Json.object()
                .put("id", rental.id().number())
                .put("version", rental.version())
                .put("state", desk.letOut().now(rental).state().word());
        RentalJson.write(members, rental.facts());
        List<Json> inBooks = new ArrayList<>();
        desk.rentIn()
                .books()
                .of(rental.id())
                .forEach((line, entry) -> inBooks.add(Json.object()
                        .put("line", line)
                        .put("jobId", entry.job().number())
                        .put("commitment", entry.entry())
                        .build()));
        if (!inBooks.isEmpty()) {
            members.put("inBooks", Json.list(inBooks));
        }
        return members.build();
    }
}
