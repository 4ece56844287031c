package dayglass.web.page.desk.rental;

import dayglass.base.Currency;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RentalNow;
import dayglass.inventory.Unit;
import dayglass.shelf.desk.RentalDeeds;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Once;
import dayglass.web.page.Requests;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.form.Form;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** Rentals: the list, and one with all that is done to it from the handover to the invoice. */
public final class RentalPages {
    private static final String LIST = "/desk/rentals";
    private static final String ONE = LIST + "/{id}";

    private final DeskSources sources;
    private final Html html;
    private final Once once;

    public RentalPages(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.once = new Once(sources.household().keyedAnswers());
    }

    private interface Deed {
        Outcome<Stored<Rental.Id, Rental>> done(Stored<Rental.Id, Rental> rental, Form form);
    }

    public void route(RoutesConfig routes) {
        routes.get(LIST, this::list);
        routes.get(ONE, ctx -> show(ctx, "", prefilled(ctx)));
        deed(routes, "handover", this::handOver);
        deed(
                routes,
                "return",
                (rental, form) -> read(RentalDeeds.door(), form)
                        .then(door -> desk().letOut().back(rental, door.items())));
        deed(
                routes,
                "undo-handover",
                (rental, form) -> QuotePages.read(form, RentalDeeds.unit())
                        .then(unit -> desk().letOut().undoOut(rental, unit)));
        deed(routes, "swap", this::swap);
        deed(
                routes,
                "extend",
                (rental, form) -> QuotePages.read(form, RentalDeeds.lastDay())
                        .then(last -> desk().runRental().extend(rental, last)));
        deed(
                routes,
                "order",
                (rental, form) -> QuotePages.read(form, RentalDeeds.order())
                        .then(said -> desk().rentIn().order(rental, said)));
        onLine(routes, "undo-order", desk().rentIn()::undoOrder);
        onLine(routes, "got", desk().rentIn()::got);
        onLine(routes, "undo-got", desk().rentIn()::undoGot);
        deed(
                routes,
                "charges",
                (rental, form) -> QuotePages.read(form, RentalDeeds.charge(currency(rental)))
                        .then(charged -> desk().runRental().charge(rental, charged)));
        deed(
                routes,
                "reversals",
                (rental, form) -> QuotePages.read(form, RentalDeeds.reversal())
                        .then(what -> desk().runRental().reverse(rental, what.at(), what.why())));
        deed(
                routes,
                "deposit",
                (rental, form) -> QuotePages.read(form, RentalDeeds.amount("taken", currency(rental)))
                        .then(taken -> desk().runRental().takeDeposit(rental, taken)));
        deed(
                routes,
                "settle",
                (rental, form) -> QuotePages.read(form, RentalDeeds.amount("keep", currency(rental)))
                        .then(keep ->
                                desk().endRental().settle(rental, now(rental).state(), keep)));
        deed(
                routes,
                "cancel",
                (rental, form) -> QuotePages.read(form, RentalDeeds.why())
                        .then(why ->
                                desk().endRental().cancel(rental, now(rental).state(), why)));
    }

    private Desk desk() {
        return sources.desk();
    }

    private RentalNow now(Stored<Rental.Id, Rental> rental) {
        return desk().letOut().now(rental);
    }

    private static Currency currency(Stored<Rental.Id, Rental> rental) {
        return rental.facts().promise().price().currency();
    }

    /** What has not ended first, then by number, the latest first. */
    private void list(Context ctx) {
        List<RentalView.Row> rows = Requests.all(desk().rentals()).stream()
                .sorted(Comparator.comparing((Stored<Rental.Id, Rental> rental) ->
                                rental.facts().ending().isPresent())
                        .thenComparing(rental -> -rental.facts().number()))
                .map(rental -> RentalView.Row.of(now(rental)))
                .toList();
        html.render(ctx, "rentals.jte", Map.of("rentals", rows));
    }

    private Stored<Rental.Id, Rental> find(Context ctx) {
        return Requests.find(ctx, desk().rentals(), Rental.Id::new);
    }

    /** A link can say what is to be charged; nothing is charged until the form is sent. */
    private static Form prefilled(Context ctx) {
        return Form.sent(ctx.queryParamMap());
    }

    private void show(Context ctx, String deed, Form form) {
        Map<String, Object> model = Map.of(
                "page",
                new RentalReading(sources).view(find(ctx)),
                "deed",
                deed,
                "form",
                form,
                "cleaning",
                desk().rules()
                        .now()
                        .facts()
                        .cleaning()
                        .map(amount -> amount.amount())
                        .orElse(""));
        if (form.faulty()) {
            html.renderFaulty(ctx, "rental.jte", model);
        } else {
            html.render(ctx, "rental.jte", model);
        }
    }

    private void deed(RoutesConfig routes, String name, Deed deed) {
        FormRoutes.take(routes, ONE + "/" + name, ONE, ctx -> {
            Stored<Rental.Id, Rental> rental = find(ctx);
            Form form = Requests.form(ctx);
            once.act(
                    ctx,
                    form,
                    () -> deed.done(new Stored<>(rental.id(), Requests.version(form), rental.facts()), form)
                            .map(done -> LIST + "/" + done.id().number()),
                    problem -> show(ctx, name, form.with(problem)));
        });
    }

    /** A deed that is done to a line which is rented in. */
    private void onLine(
            RoutesConfig routes,
            String name,
            BiFunction<Stored<Rental.Id, Rental>, Integer, Outcome<Stored<Rental.Id, Rental>>> done) {
        deed(
                routes,
                name,
                (rental, form) -> QuotePages.read(form, RentalDeeds.line()).then(line -> done.apply(rental, line)));
    }

    private static <T> Outcome<T> read(Reader<T> reader, Form form) {
        return reader.readAt("", DoorForm.json(form), Listener.PERSON).outcome();
    }

    private Outcome<Stored<Rental.Id, Rental>> handOver(Stored<Rental.Id, Rental> rental, Form form) {
        return read(RentalDeeds.door(), form).then(door -> desk().letOut().out(rental, door.items(), door.reason()));
    }

    /** The unit that goes instead is named by its tag, typed or scanned. */
    private Outcome<Stored<Rental.Id, Rental>> swap(Stored<Rental.Id, Rental> rental, Form form) {
        return QuotePages.read(form, RentalDeeds.unit())
                .then(from -> sources.shelf()
                        .units()
                        .tagged(form.value("tag").strip())
                        .<Outcome<Unit.Id>>map(unit -> Outcome.done(unit.id()))
                        .orElseGet(() -> Outcome.faulty("tag", "no unit has this tag: type or scan another"))
                        .then(to -> desk().letOut().swap(rental, from, to)));
    }
}
