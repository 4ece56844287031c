package dayglass.web.page;

import dayglass.base.Fault;
import dayglass.base.Stored;
import dayglass.catalogue.Supplier;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
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

    public record Link(String address, String name, String facts) {}

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
        routes.get("/desk", ctx -> html.render(ctx, "desk.jte", list(Form.EMPTY)));
        routes.post("/desk/suppliers", this::add);
        routes.get("/desk/suppliers/{id}/remove", this::askToRemove);
        routes.post("/desk/suppliers/{id}/remove", this::remove);
        cards.route(routes);
        offers.route(routes);
    }

    private Map<String, Object> list(Form form) {
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
        return Map.of("suppliers", rows, "form", form);
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
            html.renderFaulty(ctx, "desk.jte", list(form.with(faults)));
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
                            html.renderFaulty(ctx, "desk.jte", list(form.with(problem)));
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
        Requests.require(sources.options().suppliers().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }
}
