package dayglass.web.page;

import dayglass.base.Fault;
import dayglass.base.Stored;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.web.error.Refusal;
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
public final class CardPages {
    /** A rate in the list. */
    public record Row(int number, String code, String covers, String blocks, String terms) {}

    private final PageSources sources;
    private final Html html;
    private final RatePages rates;

    CardPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
        this.rates = new RatePages(sources, html, this);
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/cards/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/desk/cards/{id}/successor", "/desk/cards/{id}", this::succeed);
        routes.get("/desk/cards/{id}/remove", this::askToRemove);
        routes.post("/desk/cards/{id}/remove", this::remove);
        rates.route(routes);
    }

    Stored<RateCard.Id, RateCard> find(Context ctx) {
        return Requests.find(ctx, sources.options().rateCards(), RateCard.Id::new);
    }

    String supplier(RateCard card) {
        return sources.options()
                .suppliers()
                .find(card.supplier())
                .orElseThrow()
                .facts()
                .name();
    }

    private void show(Context ctx, Form form) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        List<Row> rows = new ArrayList<>();
        for (Rate rate : card.facts().rates()) {
            rows.add(new Row(
                    rows.size() + 1,
                    rate.code(),
                    Words.covers(rate.covers()),
                    String.join(
                            ", ",
                            rate.terms().blocks().stream()
                                    .map(block -> RateWords.block(block) + " " + Words.amount(block.price()))
                                    .toList()),
                    RateWords.terms(rate)));
        }
        Label label = new Label(
                card.facts().name(),
                List.of(
                        new Label.Field("supplier", supplier(card.facts())),
                        new Label.Field("in force from", Words.date(card.facts().effectiveFrom())),
                        new Label.Field("currency", card.facts().currency().code())));
        Map<String, Object> model = Map.of(
                "id", card.id().number(), "version", card.version(), "label", label, "rates", rows, "form", form);
        if (form.faulty()) {
            html.renderFaulty(ctx, "card.jte", model);
        } else {
            html.render(ctx, "card.jte", model);
        }
    }

    /** The same rates from a later date on, to be changed there; this card stays. */
    private void succeed(Context ctx) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        Form form = Requests.form(ctx);
        List<Fault> faults = new ArrayList<>();
        Optional<LocalDate> from = JobsPages.read(form, "effectiveFrom", Readers.date(), faults);
        if (from.isEmpty()) {
            show(ctx, form.with(faults));
            return;
        }
        RateCard facts = card.facts();
        sources.options()
                .rateCards()
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
        Refusal.require(sources.options().rateCards().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }
}
