package dayglass.web.page;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.inventory.OwnedUnit;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.OwnedReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** The shelf: owned units, each added, changed and removed. */
public final class ShelfPages {
    /** A unit in the list. */
    public record Row(long id, String tag, String covers, String available) {}

    private final PageSources sources;
    private final Html html;

    ShelfPages(PageSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/shelf", ctx -> html.render(ctx, "shelf.jte", list(Form.EMPTY)));
        routes.post("/shelf", this::add);
        routes.get("/shelf/{id}", this::show);
        routes.post("/shelf/{id}", this::change);
        routes.get("/shelf/{id}/remove", this::askToRemove);
        routes.post("/shelf/{id}/remove", this::remove);
    }

    private Map<String, Object> list(Form form) {
        List<Row> rows = Requests.all(sources.options().ownedUnits()).stream()
                .map(unit -> new Row(
                        unit.id().number(),
                        unit.facts().tag(),
                        Words.covers(unit.facts().covers()),
                        unit.facts().available().isEmpty()
                                ? "always"
                                : Words.dates(unit.facts().available())))
                .toList();
        return Map.of("units", rows, "form", form);
    }

    private static Outcome<OwnedUnit> read(Form form) {
        return OwnedReader.unit()
                .readAll(FormJson.read(form))
                .fold(option -> Outcome.done(OwnedUnit.of(option)), faults -> Outcome.refused(Problem.faulty(faults)));
    }

    private void add(Context ctx) {
        Form form = FormJson.compact(Requests.form(ctx));
        read(form)
                .then(sources.options().ownedUnits()::add)
                .fold(
                        unit -> {
                            JobPages.see(ctx, "/shelf");
                            return unit;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "shelf.jte", list(form.with(problem)));
                            return problem;
                        });
    }

    private Stored<OwnedUnit.Id, OwnedUnit> find(Context ctx) {
        return Requests.find(ctx, sources.options().ownedUnits(), OwnedUnit.Id::new);
    }

    private void show(Context ctx) {
        Stored<OwnedUnit.Id, OwnedUnit> unit = find(ctx);
        Form form = FormJson.form(OptionWriter.owned(unit.facts().option()));
        html.render(ctx, "unit.jte", model(unit, form.with("version", String.valueOf(unit.version()))));
    }

    private static Map<String, Object> model(Stored<OwnedUnit.Id, OwnedUnit> unit, Form form) {
        return Map.of("id", unit.id().number(), "tag", unit.facts().tag(), "form", form);
    }

    private void change(Context ctx) {
        Stored<OwnedUnit.Id, OwnedUnit> unit = find(ctx);
        Form form = FormJson.compact(Requests.form(ctx));
        read(form)
                .then(facts ->
                        sources.options().ownedUnits().change(new Stored<>(unit.id(), Requests.version(form), facts)))
                .fold(
                        changed -> {
                            JobPages.see(ctx, "/shelf");
                            return changed;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "unit.jte", model(unit, form.with(problem)));
                            return problem;
                        });
    }

    private void askToRemove(Context ctx) {
        Stored<OwnedUnit.Id, OwnedUnit> unit = find(ctx);
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what", "the unit " + unit.facts().tag(),
                        "action", "/shelf/" + unit.id().number() + "/remove",
                        "back", "/shelf/" + unit.id().number(),
                        "version", unit.version(),
                        "place", "shelf"));
    }

    private void remove(Context ctx) {
        OwnedUnit.Id id = new OwnedUnit.Id(Requests.number(ctx, "id"));
        Requests.require(sources.options().ownedUnits().remove(id, Requests.version(Requests.form(ctx))));
        JobPages.see(ctx, "/shelf");
    }
}
