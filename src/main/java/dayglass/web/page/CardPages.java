package dayglass.web.page;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import dayglass.wire.Readers;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.RentalReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rate card, filled rate by rate. */
public final class CardPages {
    /** A rate in the list. */
    public record Row(int number, String code, String covers, String blocks, String terms) {}

    private final PageSources sources;
    private final Html html;

    CardPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/cards/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/desk/cards/{id}/successor", "/desk/cards/{id}", this::succeed);
        routes.get("/desk/cards/{id}/remove", this::askToRemove);
        routes.post("/desk/cards/{id}/remove", this::remove);
        routes.get("/desk/cards/{id}/rates/{rate}", ctx -> showRate(ctx, rateForm(ctx)));
        routes.post("/desk/cards/{id}/rates/{rate}", this::keepRate);
        FormRoutes.take(
                routes, "/desk/cards/{id}/rates/{rate}/remove", "/desk/cards/{id}/rates/{rate}", this::removeRate);
    }

    private Stored<RateCard.Id, RateCard> find(Context ctx) {
        return Requests.find(ctx, sources.options().rateCards(), RateCard.Id::new);
    }

    private String supplier(RateCard card) {
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
        Requests.require(sources.options().rateCards().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk");
    }

    /** The rate that the address names, from 1; one past the last is a new one. */
    private static int place(Context ctx, RateCard card) {
        long number = Requests.number(ctx, "rate");
        if (number > card.rates().size() + 1L) {
            throw Requests.missing(ctx);
        }
        return Math.toIntExact(number) - 1;
    }

    private Form rateForm(Context ctx) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        int at = place(ctx, card.facts());
        Form form = at == card.facts().rates().size()
                ? Form.EMPTY
                : FormJson.form(
                        OptionWriter.rate(card.facts().rates().get(at).from(new Supplier(supplier(card.facts())))));
        return form.with("version", String.valueOf(card.version()));
    }

    private void showRate(Context ctx, Form form) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        Map<String, Object> model = Map.of(
                "card",
                card.id().number(),
                "number",
                place(ctx, card.facts()) + 1,
                "title",
                supplier(card.facts()) + ", " + card.facts().name(),
                "currency",
                card.facts().currency().code(),
                "known",
                place(ctx, card.facts()) < card.facts().rates().size(),
                "form",
                form);
        if (form.faulty()) {
            html.renderFaulty(ctx, "rate.jte", model);
        } else {
            html.render(ctx, "rate.jte", model);
        }
    }

    private void keepRate(Context ctx) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        Form form = FormJson.compact(Requests.form(ctx));
        FormJson.read(form, RentalReader.rate(card.facts().currency(), supplier(card.facts())))
                .fold(
                        option -> changed(card, place(ctx, card.facts()), Rate.of(option), Requests.version(form)),
                        faults -> Outcome.<Stored<RateCard.Id, RateCard>>refused(Problem.faulty(faults)))
                .fold(
                        kept -> {
                            Requests.see(ctx, "/desk/cards/" + card.id().number());
                            return kept;
                        },
                        problem -> {
                            showRate(ctx, form.with(problem));
                            return problem;
                        });
    }

    private Outcome<Stored<RateCard.Id, RateCard>> changed(
            Stored<RateCard.Id, RateCard> card, int at, Rate rate, long version) {
        List<Rate> rates = new ArrayList<>(card.facts().rates());
        for (int other = 0; other < rates.size(); other++) {
            if (other != at && rates.get(other).code().equals(rate.code())) {
                return Outcome.refused(Problem.faulty(
                        List.of(new Fault("/id", "another rate of this card has this id: give it its own"))));
            }
        }
        if (at == rates.size()) {
            rates.add(rate);
        } else {
            rates.set(at, rate);
        }
        return keep(card, rates, version);
    }

    private Outcome<Stored<RateCard.Id, RateCard>> keep(
            Stored<RateCard.Id, RateCard> card, List<Rate> rates, long version) {
        RateCard facts = card.facts();
        return sources.options()
                .rateCards()
                .change(new Stored<>(
                        card.id(),
                        version,
                        new RateCard(facts.supplier(), facts.name(), facts.currency(), facts.effectiveFrom(), rates)));
    }

    private void removeRate(Context ctx) {
        Stored<RateCard.Id, RateCard> card = find(ctx);
        List<Rate> rates = new ArrayList<>(card.facts().rates());
        int at = place(ctx, card.facts());
        if (at == rates.size()) {
            throw Requests.missing(ctx);
        }
        rates.remove(at);
        Requests.require(keep(card, rates, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk/cards/" + card.id().number());
    }
}
