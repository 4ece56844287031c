package dayglass.web.page.desk;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Supplier;
import dayglass.cost.plan.Question;
import dayglass.web.error.Refusal;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.wire.Decimals;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.PurchaseReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A supplier's offer to sell: made, changed and removed. */
final class OfferPages {
    private final DeskSources sources;
    private final Html html;

    OfferPages(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get(
                "/desk/suppliers/{id}/offers/new", ctx -> show(ctx, supplier(ctx), action(supplier(ctx)), Form.EMPTY));
        routes.post("/desk/suppliers/{id}/offers/new", this::make);
        routes.get("/desk/offers/{id}", this::showKept);
        routes.post("/desk/offers/{id}", this::change);
        routes.get("/desk/offers/{id}/remove", this::askToRemove);
        routes.post("/desk/offers/{id}/remove", this::remove);
    }

    private Stored<Supplier.Id, Supplier> supplier(Context ctx) {
        return Requests.find(ctx, sources.suppliers(), Supplier.Id::new);
    }

    private Stored<PurchaseOffer.Id, PurchaseOffer> find(Context ctx) {
        return Requests.find(ctx, sources.offers(), PurchaseOffer.Id::new);
    }

    private Stored<Supplier.Id, Supplier> sellerOf(PurchaseOffer offer) {
        return sources.suppliers().find(offer.supplier()).orElseThrow();
    }

    private static String action(Stored<Supplier.Id, Supplier> supplier) {
        return "/desk/suppliers/" + supplier.id().number() + "/offers/new";
    }

    private static String action(Stored<PurchaseOffer.Id, ?> offer, String more) {
        return "/desk/offers/" + offer.id().number() + more;
    }

    private void show(Context ctx, Stored<Supplier.Id, Supplier> supplier, String action, Form form) {
        Map<String, Object> model = Map.of("supplier", supplier.facts().name(), "action", action, "form", form);
        if (form.faulty()) {
            html.renderFaulty(ctx, "offer.jte", model);
        } else {
            html.render(ctx, "offer.jte", model);
        }
    }

    private void showKept(Context ctx) {
        Stored<PurchaseOffer.Id, PurchaseOffer> offer = find(ctx);
        PurchaseOffer facts = offer.facts();
        Stored<Supplier.Id, Supplier> seller = sellerOf(facts);
        LocalDate first = PurchaseOffer.Offer.ANY_FIRST_DAY;
        Question.Purchase purchase = facts.offer().from(seller.facts(), PurchaseOffer.Offer.ANY_FIRST_DAY);
        Form form = FormJson.form(OptionWriter.offer(purchase, first))
                .with("version", String.valueOf(offer.version()))
                .with("currency", facts.currency().code())
                .with("validUntil", facts.validUntil().map(LocalDate::toString).orElse(""))
                .with(
                        "/availableFrom",
                        facts.offer().availableFrom().map(LocalDate::toString).orElse(""));
        show(ctx, seller, action(offer, ""), form);
    }

    private static Outcome<PurchaseOffer> read(Form form, Stored<Supplier.Id, Supplier> supplier) {
        List<Fault> faults = new ArrayList<>();
        Optional<Currency> currency = Requests.read(form, "currency", Decimals.currency(), faults);
        Optional<LocalDate> until =
                form.has("validUntil") ? Requests.read(form, "validUntil", Readers.date(), faults) : Optional.empty();
        Read<Currency> read = currency.map(Read::good).orElseGet(Read::bad);
        Optional<Question.Purchase> purchase = FormJson.read(
                        form, PurchaseReader.offer(read, supplier.facts().name(), PurchaseOffer.Offer.ANY_FIRST_DAY))
                .fold(Optional::of, found -> {
                    faults.addAll(found);
                    return Optional.empty();
                });
        if (!faults.isEmpty()) {
            return Outcome.refused(Problem.faulty(faults));
        }
        return Outcome.done(new PurchaseOffer(
                supplier.id(), currency.orElseThrow(), PurchaseOffer.Offer.of(purchase.orElseThrow()), until));
    }

    private void make(Context ctx) {
        Stored<Supplier.Id, Supplier> supplier = supplier(ctx);
        Form form = FormJson.compact(Requests.form(ctx));
        finish(ctx, supplier, action(supplier), form, read(form, supplier).then(sources.offers()::add));
    }

    private void change(Context ctx) {
        Stored<PurchaseOffer.Id, PurchaseOffer> offer = find(ctx);
        Stored<Supplier.Id, Supplier> seller = sellerOf(offer.facts());
        Form form = FormJson.compact(Requests.form(ctx));
        finish(
                ctx,
                seller,
                action(offer, ""),
                form,
                read(form, seller)
                        .then(facts ->
                                sources.offers().change(new Stored<>(offer.id(), Requests.version(form), facts))));
    }

    private void finish(
            Context ctx,
            Stored<Supplier.Id, Supplier> supplier,
            String action,
            Form form,
            Outcome<Stored<PurchaseOffer.Id, PurchaseOffer>> outcome) {
        outcome.fold(
                kept -> {
                    Requests.see(ctx, "/desk");
                    return kept;
                },
                problem -> {
                    show(ctx, supplier, action, form.with(problem));
                    return problem;
                });
    }

    private void askToRemove(Context ctx) {
        Stored<PurchaseOffer.Id, PurchaseOffer> offer = find(ctx);
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what", "the offer " + offer.facts().offer().code(),
                        "action", action(offer, "/remove"),
                        "back", action(offer, ""),
                        "version", offer.version(),
                        "place", "desk"));
    }

    private void remove(Context ctx) {
        PurchaseOffer.Id id = new PurchaseOffer.Id(Requests.number(ctx, "id"));
        Refusal.require(sources.offers().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }
}
