package dayglass.web.page.desk;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.shelf.LetsNames;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.request.PathNumbers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One rate of a card: added, changed and removed. */
final class RatePages {
    private final DeskSources sources;
    private final Html html;
    private final CardPages cards;

    RatePages(DeskSources sources, Html html, CardPages cards) {
        this.sources = sources;
        this.html = html;
        this.cards = cards;
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/cards/{id}/rates/{rate}", ctx -> showRate(ctx, rateForm(ctx)));
        routes.post("/desk/cards/{id}/rates/{rate}", this::keepRate);
        FormRoutes.take(
                routes, "/desk/cards/{id}/rates/{rate}/remove", "/desk/cards/{id}/rates/{rate}", this::removeRate);
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
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        int at = place(ctx, card.facts());
        Form form = at == card.facts().rates().size()
                ? Form.EMPTY
                : RateForm.of(card.facts().rates().get(at));
        return form.with("version", String.valueOf(card.version()));
    }

    private void showRate(Context ctx, Form form) {
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        int at = place(ctx, card.facts());
        Map<String, Object> model = Map.of(
                "card",
                card.id().number(),
                "number",
                at + 1,
                "title",
                cards.supplier(card.facts()).name() + ", " + card.facts().name(),
                "currency",
                card.facts().currency().code(),
                "known",
                at < card.facts().rates().size(),
                "things",
                LetsChoices.of(sources.shelf()),
                "letsNow",
                letsNow(form),
                "form",
                form);
        if (form.faulty()) {
            html.renderFaulty(ctx, "rate.jte", model);
        } else {
            html.render(ctx, "rate.jte", model);
        }
    }

    /** The name of what the form says that the rate is for, also where it can no more be chosen. */
    private String letsNow(Form form) {
        String[] parts = form.value("/lets").split("/", 2);
        return Lets.Kind.of(parts[0])
                .filter(kind -> parts.length == 2)
                .flatMap(kind -> PathNumbers.of(parts[1]).stream()
                        .mapToObj(number -> new Lets(kind, number))
                        .findFirst())
                .map(new LetsNames(sources.shelf())::said)
                .orElse("");
    }

    private void keepRate(Context ctx) {
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        Form form = FormJson.compact(Requests.form(ctx));
        RateForm.read(form, card.facts().currency())
                .fold(
                        rate -> changed(card, place(ctx, card.facts()), rate, Requests.version(form)),
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
                return Outcome.faulty("/id", "another rate of this card has this id: give it its own");
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
        return sources.cards()
                .change(new Stored<>(
                        card.id(),
                        version,
                        new RateCard(facts.supplier(), facts.name(), facts.currency(), facts.effectiveFrom(), rates)));
    }

    private void removeRate(Context ctx) {
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        List<Rate> rates = new ArrayList<>(card.facts().rates());
        int at = place(ctx, card.facts());
        if (at == rates.size()) {
            throw Requests.missing(ctx);
        }
        rates.remove(at);
        Refusal.require(keep(card, rates, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, "/desk/cards/" + card.id().number());
    }
}
