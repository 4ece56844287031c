package dayglass.web.page;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.web.error.Refusal;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Decimals;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The desk: suppliers with their rate cards and purchase offers. */
public final class DeskPages {
    /** A supplier with what is known from it. */
    public record Row(long id, long version, String name, List<Link> cards, List<Link> offers) {
        public Row {
            cards = List.copyOf(cards);
            offers = List.copyOf(offers);
        }
    }

    /**
     * The form of a new card that was not taken.
     *
     * @param supplier whose card it was to be; 0 where there was none
     */
    public record NewCard(long supplier, Form form) {
        /** What stands in the form below a supplier. */
        public Form below(long other) {
            return supplier == other ? form : Form.EMPTY;
        }
    }

    public record Link(String address, String name, String facts) {}

    private static final NewCard NO_CARD = new NewCard(0, Form.EMPTY);

    private final PageSources sources;
    private final Html html;
    private final CardPages cards;
    private final OfferPages offers;

    DeskPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.cards = new CardPages(sources, html);
        this.offers = new OfferPages(sources, html);
    }

    void route(RoutesConfig routes) {
        routes.get("/desk", ctx -> html.render(ctx, "desk.jte", list(Form.EMPTY, NO_CARD)));
        FormRoutes.take(routes, "/desk/suppliers", "/desk", this::add);
        FormRoutes.take(routes, "/desk/suppliers/{id}/cards", "/desk", this::addCard);
        routes.get("/desk/suppliers/{id}/remove", this::askToRemove);
        routes.post("/desk/suppliers/{id}/remove", this::remove);
        cards.route(routes);
        offers.route(routes);
    }

    private Map<String, Object> list(Form form, NewCard card) {
        List<Row> rows = new ArrayList<>();
        for (Stored<Supplier.Id, Supplier> supplier :
                Requests.all(sources.options().suppliers())) {
            rows.add(new Row(
                    supplier.id().number(),
                    supplier.version(),
                    supplier.facts().name(),
                    cardsOf(supplier.id()),
                    offersOf(supplier.id())));
        }
        return Map.of("suppliers", rows, "form", form, "card", card);
    }

    private List<Link> cardsOf(Supplier.Id supplier) {
        return Requests.all(sources.options().rateCards()).stream()
                .filter(card -> card.facts().supplier().equals(supplier))
                .map(card -> new Link(
                        "/desk/cards/" + card.id().number(),
                        card.facts().name(),
                        "from " + Words.date(card.facts().effectiveFrom()) + ", "
                                + card.facts().rates().size() + " rates, "
                                + card.facts().currency()))
                .toList();
    }

    private List<Link> offersOf(Supplier.Id supplier) {
        return sources.options().purchaseOffers().madeBy(supplier).stream()
                .map(offer -> new Link(
                        "/desk/offers/" + offer.id().number(),
                        offer.facts().offer().code(),
                        Words.covers(offer.facts().offer().covers()) + ", "
                                + Words.money(offer.facts().offer().terms().price())))
                .toList();
    }

    private void add(Context ctx) {
        Form form = Requests.form(ctx);
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = JobsPages.read(form, "name", Readers.name(), faults);
        if (name.isEmpty()) {
            html.renderFaulty(ctx, "desk.jte", list(form.with(faults), NO_CARD));
            return;
        }
        sources.options()
                .suppliers()
                .add(new Supplier(name.get()))
                .fold(
                        supplier -> {
                            Requests.see(ctx, "/desk");
                            return supplier;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "desk.jte", list(form.with(problem), NO_CARD));
                            return problem;
                        });
    }

    /** Makes an empty card, to be filled on its own page. */
    private void addCard(Context ctx) {
        Supplier.Id supplier = Requests.find(ctx, sources.options().suppliers(), Supplier.Id::new)
                .id();
        Form form = Requests.form(ctx);
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = JobsPages.read(form, "name", Readers.name(), faults);
        Optional<Currency> currency = JobsPages.read(form, "currency", Decimals.currency(), faults);
        Optional<LocalDate> from = JobsPages.read(form, "effectiveFrom", Readers.date(), faults);
        Outcome<Stored<RateCard.Id, RateCard>> made = faults.isEmpty()
                ? sources.options()
                        .rateCards()
                        .add(new RateCard(
                                supplier, name.orElseThrow(), currency.orElseThrow(), from.orElseThrow(), List.of()))
                : Outcome.refused(Problem.faulty(faults));
        made.fold(
                card -> {
                    Requests.see(ctx, "/desk/cards/" + card.id().number());
                    return card;
                },
                problem -> {
                    NewCard refused = new NewCard(supplier.number(), form.with(problem));
                    html.renderFaulty(ctx, "desk.jte", list(Form.EMPTY, refused));
                    return problem;
                });
    }

    private void askToRemove(Context ctx) {
        Stored<Supplier.Id, Supplier> supplier =
                Requests.find(ctx, sources.options().suppliers(), Supplier.Id::new);
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what",
                        "the supplier " + supplier.facts().name(),
                        "action",
                        "/desk/suppliers/" + supplier.id().number() + "/remove",
                        "back",
                        "/desk",
                        "version",
                        supplier.version(),
                        "place",
                        "desk"));
    }

    private void remove(Context ctx) {
        Supplier.Id id = new Supplier.Id(Requests.number(ctx, "id"));
        Refusal.require(sources.options().suppliers().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }
}
