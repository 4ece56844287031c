package dayglass.web.page.desk;

import dayglass.base.Fault;
import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.shelf.LetsNames;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Label;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rate card: shown, followed by another and removed; its rates have pages of their own. */
final class CardPages {
    private final DeskSources sources;
    private final Html html;
    private final RatePages rates;
    private final SheetPage sheet;

    CardPages(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.rates = new RatePages(sources, html, this);
        this.sheet = new SheetPage(sources, html, this);
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/cards/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/desk/cards/{id}/successor", "/desk/cards/{id}", this::succeed);
        routes.get("/desk/cards/{id}/remove", this::askToRemove);
        routes.post("/desk/cards/{id}/remove", this::remove);
        rates.route(routes);
        sheet.route(routes);
    }

    Stored<RateCard.Id, RateCard> find(Context ctx) {
        return Requests.find(ctx, sources.cards(), RateCard.Id::new);
    }

    Supplier supplier(RateCard card) {
        return sources.suppliers().find(card.supplier()).orElseThrow().facts();
    }

    private void show(Context ctx, Form form) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        LetsNames names = new LetsNames(sources.shelf());
        List<RateLine> rows = new ArrayList<>();
        card.facts().rates().forEach(rate -> rows.add(RateLine.of(rows.size() + 1, rate, names)));
        Succession succession = Succession.of(sources.cards(), card, sources.today());
        Map<String, Object> model = Map.of(
                "id",
                card.id().number(),
                "version",
                card.version(),
                "label",
                label(card.facts()),
                "rates",
                rows,
                "succession",
                succession,
                "form",
                form);
        if (form.faulty()) {
            html.renderFaulty(ctx, "card.jte", model);
        } else {
            html.render(ctx, "card.jte", model);
        }
    }

    Label label(RateCard card) {
        Supplier supplier = supplier(card);
        return new Label(
                card.name(),
                List.of(
                        new Label.Field(supplier.house() ? "of this house" : "supplier", supplier.name()),
                        new Label.Field("in force from", Words.date(card.effectiveFrom())),
                        new Label.Field("currency", card.currency().code())));
    }

    /** The same rates from a later date on, to be changed there; this card stays. */
    private void succeed(Context ctx) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        Form form = Requests.form(ctx);
        List<Fault> faults = new ArrayList<>();
        Optional<LocalDate> from = Requests.read(form, "effectiveFrom", Readers.date(), faults);
        if (from.isEmpty()) {
            show(ctx, form.with(faults));
            return;
        }
        RateCard facts = card.facts();
        sources.cards()
                .add(new RateCard(facts.supplier(), facts.name(), facts.currency(), from.get(), facts.rates()))
                .fold(
                        next -> {
                            Requests.see(ctx, "/desk/cards/" + next.id().number());
                            return next;
                        },
                        problem -> {
                            show(ctx, form.with(problem));
                            return problem;
                        });
    }

    private void askToRemove(Context ctx) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what", "the rate card " + card.facts().name(),
                        "action", "/desk/cards/" + card.id().number() + "/remove",
                        "back", "/desk/cards/" + card.id().number(),
                        "version", card.version(),
                        "place", "desk"));
    }

    private void remove(Context ctx) {
        RateCard.Id id = new RateCard.Id(Requests.number(ctx, "id"));
        Refusal.require(sources.cards().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }
}
