package dayglass.web.page.ways;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.shelf.WayJson;
import dayglass.web.error.Refusal;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.wire.Listener;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The form of a way: where its pieces come from and what glass they bring. */
final class WayPages {
    private static final Choice NONE = new Choice("", "none");

    private final WaySources sources;
    private final Html html;

    WayPages(WaySources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/jobs/{id}/ways/new", ctx -> show(ctx, sources.job(ctx).id(), Optional.empty(), Form.EMPTY));
        routes.post("/jobs/{id}/ways/new", this::add);
        routes.get("/ways/{id}", this::open);
        routes.post("/ways/{id}", this::change);
        routes.get("/ways/{id}/remove", this::askToRemove);
        routes.post("/ways/{id}/remove", this::remove);
    }

    private Stored<Way.Id, Way> find(Context ctx) {
        return Requests.find(ctx, sources.ways(), Way.Id::new);
    }

    private void open(Context ctx) {
        Stored<Way.Id, Way> way = find(ctx);
        Form form = WayForm.form(way.facts()).with("version", String.valueOf(way.version()));
        show(ctx, way.facts().job(), Optional.of(way.id()), form);
    }

    private static Outcome<Way> read(Form form, Job.Id job) {
        return WayJson.reader(job)
                .readAt("", WayForm.json(form), Listener.PERSON)
                .outcome();
    }

    private void add(Context ctx) {
        Job.Id job = sources.job(ctx).id();
        Form form = WayForm.ordered(Requests.form(ctx));
        finish(ctx, job, Optional.empty(), form, read(form, job).then(sources.ways()::add));
    }

    private void change(Context ctx) {
        Stored<Way.Id, Way> way = find(ctx);
        Form form = WayForm.ordered(Requests.form(ctx));
        Job.Id job = way.facts().job();
        finish(
                ctx,
                job,
                Optional.of(way.id()),
                form,
                read(form, job)
                        .then(facts -> sources.ways().change(new Stored<>(way.id(), Requests.version(form), facts))));
    }

    private void finish(
            Context ctx, Job.Id job, Optional<Way.Id> way, Form form, Outcome<Stored<Way.Id, Way>> outcome) {
        outcome.fold(
                kept -> {
                    Requests.see(ctx, WaySources.page(job));
                    return kept;
                },
                problem -> {
                    show(ctx, job, way, form.with(problem));
                    return problem;
                });
    }

    private void show(Context ctx, Job.Id job, Optional<Way.Id> way, Form form) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("id", way.map(Way.Id::number).orElse(0L));
        model.put("job", job.number());
        model.put("form", form);
        model.put("sources", choices());
        model.put("lenses", models(false));
        model.put("fronts", models(true));
        if (form.faulty()) {
            html.renderFaulty(ctx, "way.jte", model);
        } else {
            html.render(ctx, "way.jte", model);
        }
    }

    /** Everything that a piece could come from. */
    private List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", "nothing more"));
        for (Stored<PurchaseOffer.Id, PurchaseOffer> offer :
                Requests.all(sources.options().purchaseOffers())) {
            choices.add(new Choice(
                    "offer/" + offer.id().number(),
                    "buy " + offer.facts().offer().code() + ", "
                            + supplier(offer.facts().supplier())));
        }
        for (Stored<RateCard.Id, RateCard> card : Requests.all(sources.options().rateCards())) {
            card.facts()
                    .rates()
                    .forEach(rate -> choices.add(new Choice(
                            "card/" + card.id().number() + "/" + rate.code(),
                            "rent " + rate.code() + ", " + supplier(card.facts().supplier()) + ", "
                                    + card.facts().name())));
        }
        Requests.all(sources.options().lensSets())
                .forEach(set -> choices.add(new Choice(
                        "set/" + set.id().number(), "own set " + set.facts().name())));
        Requests.all(sources.options().units())
                .forEach(unit -> choices.add(new Choice(
                        "unit/" + unit.id().number(), "own unit " + unit.facts().tag())));
        return choices;
    }

    private String supplier(Supplier.Id id) {
        return sources.options()
                .suppliers()
                .find(id)
                .map(found -> found.facts().name())
                .orElse("");
    }

    /** @param fronts those that stand in front of a lens, else the lenses */
    private List<Choice> models(boolean fronts) {
        List<Choice> choices = new ArrayList<>();
        choices.add(NONE);
        Requests.all(sources.models()).stream()
                .filter(model -> (model.facts().kind() == LensModel.Kind.FRONT_ATTACHMENT
                                || model.facts().kind() == LensModel.Kind.EFFECT_FILTER)
                        == fronts)
                .filter(model -> model.facts().kind() != LensModel.Kind.MOUNT_ADAPTER
                        && model.facts().kind() != LensModel.Kind.CLOSE_UP_DIOPTRE)
                .map(model -> new Choice(
                        String.valueOf(model.id().number()), model.facts().fullName()))
                .sorted(Comparator.comparing(Choice::label))
                .forEach(choices::add);
        return choices;
    }

    private void askToRemove(Context ctx) {
        Stored<Way.Id, Way> way = find(ctx);
        String page = "/ways/" + way.id().number();
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what",
                        "the way " + way.facts().name(),
                        "action",
                        page + "/remove",
                        "back",
                        page,
                        "version",
                        way.version(),
                        "place",
                        "jobs"));
    }

    private void remove(Context ctx) {
        Stored<Way.Id, Way> way = find(ctx);
        Refusal.require(sources.ways().remove(way.id(), Requests.version(Requests.form(ctx))));
        Requests.see(ctx, WaySources.page(way.facts().job()));
    }
}
