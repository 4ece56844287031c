package dayglass.web.page.desk;

import static java.util.stream.Collectors.groupingBy;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.house.House;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Decimals;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The desk: the house itself and its suppliers with their rate cards and purchase offers. */
public final class DeskPages {
    /** A supplier with what is known from it. */
    public record Row(long id, long version, String name, boolean house, List<Link> cards, List<Link> offers) {
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

    private final DeskSources sources;
    private final Html html;
    private final CardPages cards;
    private final OfferPages offers;

    public DeskPages(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.cards = new CardPages(sources, html);
        this.offers = new OfferPages(sources, html);
    }

    public void route(RoutesConfig routes) {
        routes.get("/desk", ctx -> html.render(ctx, "desk.jte", list(Form.EMPTY, NO_CARD)));
        FormRoutes.take(routes, "/desk/suppliers", "/desk", this::add);
        FormRoutes.take(routes, "/desk/suppliers/{id}/cards", "/desk", this::addCard);
        FormRoutes.take(routes, "/desk/suppliers/{id}", "/desk", this::change);
        routes.get("/desk/suppliers/{id}/remove", this::askToRemove);
        routes.post("/desk/suppliers/{id}/remove", this::remove);
        cards.route(routes);
        offers.route(routes);
        new CardImportPage(sources, html).route(routes);
        new SupplierImportPage(sources.tables().suppliers(), html).route(routes);
    }

    /** The house first, then the others as they came. */
    private Map<String, Object> list(Form form, NewCard card) {
        Map<Supplier.Id, List<Stored<RateCard.Id, RateCard>>> cardsOf = Requests.all(sources.cards()).stream()
                .collect(groupingBy(each -> each.facts().supplier()));
        Map<Supplier.Id, List<Stored<PurchaseOffer.Id, PurchaseOffer>>> offersOf =
                Requests.all(sources.offers()).stream()
                        .collect(groupingBy(each -> each.facts().supplier()));
        List<Row> rows = Requests.all(sources.suppliers()).stream()
                .map(supplier -> row(
                        supplier,
                        cardsOf.getOrDefault(supplier.id(), List.of()),
                        offersOf.getOrDefault(supplier.id(), List.of())))
                .sorted(Comparator.comparing(row -> !row.house()))
                .toList();
        House house = sources.household().settings().now().facts();
        return Map.of(
                "suppliers",
                rows,
                "houseName",
                house.name(),
                "currency",
                house.currency().code(),
                "form",
                form,
                "card",
                card);
    }

    private Row row(
            Stored<Supplier.Id, Supplier> supplier,
            List<Stored<RateCard.Id, RateCard>> cards,
            List<Stored<PurchaseOffer.Id, PurchaseOffer>> offers) {
        return new Row(
                supplier.id().number(),
                supplier.version(),
                supplier.facts().name(),
                supplier.facts().house(),
                cards.isEmpty() ? List.of() : links(supplier.id(), cards),
                links(offers));
    }

    private List<Link> links(Supplier.Id supplier, List<Stored<RateCard.Id, RateCard>> cards) {
        LocalDate today = sources.today();
        List<RateCard.Id> inForce = sources.cards().inForce(supplier, today).stream()
                .map(Stored::id)
                .toList();
        return cards.stream()
                .map(card -> new Link(
                        "/desk/cards/" + card.id().number(),
                        card.facts().name(),
                        "from " + Words.date(card.facts().effectiveFrom())
                                + standing(card, inForce, today) + ", "
                                + card.facts().rates().size()
                                + (card.facts().rates().size() == 1 ? " rate, " : " rates, ")
                                + card.facts().currency()))
                .toList();
    }

    private static String standing(Stored<RateCard.Id, RateCard> card, List<RateCard.Id> inForce, LocalDate today) {
        if (inForce.contains(card.id())) {
            return ", in force today";
        }
        return card.facts().effectiveFrom().isAfter(today) ? ", follows" : ", came before";
    }

    private static List<Link> links(List<Stored<PurchaseOffer.Id, PurchaseOffer>> offers) {
        return offers.stream()
                .map(offer -> new Link(
                        "/desk/offers/" + offer.id().number(),
                        offer.facts().offer().code(),
                        Words.covers(offer.facts().offer().covers()) + ", "
                                + Words.money(offer.facts().offer().terms().price())))
                .toList();
    }

    private void add(Context ctx) {
        Form form = Requests.form(ctx);
        keep(ctx, form, sources.suppliers()::add);
    }

    /** Another name, or that it is this house or no more. */
    private void change(Context ctx) {
        Stored<Supplier.Id, Supplier> supplier = Requests.find(ctx, sources.suppliers(), Supplier.Id::new);
        Form form = Requests.form(ctx);
        keep(
                ctx,
                form,
                facts -> sources.suppliers().change(new Stored<>(supplier.id(), Requests.version(form), facts)));
    }

    private void keep(Context ctx, Form form, Function<Supplier, Outcome<Stored<Supplier.Id, Supplier>>> kept) {
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = Requests.read(form, "name", Readers.name(), faults);
        Outcome<Stored<Supplier.Id, Supplier>> outcome = name.isPresent()
                ? kept.apply(new Supplier(name.get(), form.has("house")))
                : Outcome.refused(Problem.faulty(faults));
        outcome.fold(
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
        Supplier.Id supplier =
                Requests.find(ctx, sources.suppliers(), Supplier.Id::new).id();
        Form form = Requests.form(ctx);
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = Requests.read(form, "name", Readers.name(), faults);
        Optional<Currency> currency = Requests.read(form, "currency", Decimals.currency(), faults);
        Optional<LocalDate> from = Requests.read(form, "effectiveFrom", Readers.date(), faults);
        Outcome<Stored<RateCard.Id, RateCard>> made = faults.isEmpty()
                ? sources.cards()
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
        Stored<Supplier.Id, Supplier> supplier = Requests.find(ctx, sources.suppliers(), Supplier.Id::new);
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
        Refusal.require(sources.suppliers().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }
}
