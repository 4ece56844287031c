package dayglass.web.page.desk.rental;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.Rental;
import dayglass.shelf.desk.QuoteJson;
import dayglass.shelf.desk.RentalDeeds;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Once;
import dayglass.web.page.Requests;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.desk.price.PackagePage;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Quotes: issued from a package, looked at, promised anew, declined, and confirmed as a rental. */
public final class QuotePages {
    private static final String LIST = "/desk/quotes";
    private static final String ONE = LIST + "/{id}";

    private final DeskSources sources;
    private final Html html;
    private final PackagePage packages;
    private final Once once;

    public QuotePages(DeskSources sources, Html html, PackagePage packages) {
        this.sources = sources;
        this.html = html;
        this.packages = packages;
        this.once = new Once(sources.household().keyedAnswers());
    }

    public void route(RoutesConfig routes) {
        routes.get(LIST, this::list);
        routes.post(LIST, this::issue);
        routes.get(ONE, ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, ONE + "/revisions", ONE, this::revise);
        FormRoutes.take(routes, ONE + "/confirm", ONE, this::confirm);
        FormRoutes.take(routes, ONE + "/decline", ONE, this::decline);
    }

    private Desk desk() {
        return sources.desk();
    }

    private Stored<Quote.Id, Quote> find(Context ctx) {
        return Requests.find(ctx, desk().quotes(), Quote.Id::new);
    }

    private static Stored<Quote.Id, Quote> based(Stored<Quote.Id, Quote> now, Form form) {
        return new Stored<>(now.id(), Requests.version(form), now.facts());
    }

    /** Those that are open first, then by number, the latest first. */
    private void list(Context ctx) {
        List<QuoteView.Row> rows = Requests.all(desk().quotes()).stream()
                .sorted(Comparator.comparing(
                                (Stored<Quote.Id, Quote> quote) -> quote.facts().decision())
                        .thenComparing(quote -> -quote.facts().number()))
                .map(quote -> QuoteView.Row.of(quote, sources.today()))
                .toList();
        html.render(ctx, "quotes.jte", Map.of("quotes", rows));
    }

    private void show(Context ctx, Form form) {
        Stored<Quote.Id, Quote> quote = find(ctx);
        int count = quote.facts().revisions().size();
        int revision = Optional.ofNullable(ctx.queryParam("revision"))
                .filter(text -> text.matches("[1-9][0-9]{0,5}"))
                .map(Integer::valueOf)
                .filter(number -> number <= count)
                .orElse(count);
        QuoteView view = QuoteView.of(
                quote,
                revision,
                new QuoteView.Around(
                        sources.shelf(),
                        sources.household().names(),
                        sources.today(),
                        desk().rentals().ofQuote(quote.id())));
        Map<String, Object> model = Map.of("page", view, "form", form);
        if (form.faulty()) {
            html.renderFaulty(ctx, "quote.jte", model);
        } else {
            html.render(ctx, "quote.jte", model);
        }
    }

    private void issue(Context ctx) {
        Form form = FormJson.compact(Requests.form(ctx));
        promise(ctx, form, () -> wanted(form).then(desk().makeQuote()::issue));
    }

    private void revise(Context ctx) {
        Stored<Quote.Id, Quote> quote = find(ctx);
        Form form = FormJson.compact(Requests.form(ctx));
        promise(ctx, form, () -> wanted(form).then(wanted -> desk().makeQuote().revise(based(quote, form), wanted)));
    }

    private void promise(Context ctx, Form form, Supplier<Outcome<Stored<Quote.Id, Quote>>> act) {
        once.act(
                ctx,
                form,
                () -> act.get().map(quote -> LIST + "/" + quote.id().number()),
                problem -> packages.refused(ctx, form.with(problem)));
    }

    /** What the page of a package says; its deposit is in the house's currency. */
    private Outcome<MakeQuote.Wanted> wanted(Form form) {
        String currency =
                sources.household().settings().now().facts().currency().code();
        Form whole = form.has("/deposit/amount") ? form.with("/deposit/currency", currency) : form;
        return read(whole, QuoteJson.wanted(sources.today()));
    }

    static <T> Outcome<T> read(Form form, Reader<T> reader) {
        return FormJson.read(form, reader).outcome();
    }

    private void confirm(Context ctx) {
        Stored<Quote.Id, Quote> quote = find(ctx);
        Form form = Requests.form(ctx);
        once.act(
                ctx,
                form,
                () -> desk().runRental().confirm(based(quote, form)).map(QuotePages::address),
                problem -> show(ctx, form.with(problem)));
    }

    private static String address(Stored<Rental.Id, Rental> rental) {
        return "/desk/rentals/" + rental.id().number();
    }

    private void decline(Context ctx) {
        Stored<Quote.Id, Quote> quote = find(ctx);
        Form form = Requests.form(ctx);
        once.act(
                ctx,
                form,
                () -> read(form, RentalDeeds.why())
                        .then(why -> desk().makeQuote().decline(based(quote, form), why))
                        .map(declined -> LIST + "/" + declined.id().number()),
                problem -> show(ctx, form.with(problem)));
    }
}
