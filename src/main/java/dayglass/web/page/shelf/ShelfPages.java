package dayglass.web.page.shelf;

import dayglass.catalogue.LensModel;
import dayglass.house.Household;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.shelf.table.ShelfImport;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lists of the shelf: units, models and sets. */
public final class ShelfPages {
    private static final int MOST_SHOWN = 500;

    private final Shelf shelf;
    private final Html html;

    private ShelfPages(Shelf shelf, Html html) {
        this.shelf = shelf;
        this.html = html;
    }

    /** A model in the list. */
    public record ModelRow(long id, String name, String kind, String focal, String tStop, String mounts, long units) {}

    /** A set in the list. */
    public record SetRow(long id, String name, boolean matched, String members, String covers) {}

    public static void route(RoutesConfig routes, Shelf shelf, ShelfImport tables, Household household) {
        ShelfPages pages = new ShelfPages(shelf, new Html(household));
        routes.get("/shelf", pages::units);
        routes.get("/shelf/models", pages::models);
        routes.get("/shelf/sets", pages::sets);
        new UnitPages(shelf, pages.html).route(routes);
        new ModelPages(shelf.models(), pages.html).route(routes);
        new SetPages(shelf, household.settings(), pages.html).route(routes);
        new TablePages(tables, pages.html).route(routes);
    }

    private void units(Context ctx) {
        String words = Optional.ofNullable(ctx.queryParam("words")).orElse("");
        Map<Unit.Id, String> sets = new HashMap<>();
        Requests.all(shelf.sets())
                .forEach(set -> set.facts()
                        .members()
                        .forEach(unit -> sets.put(unit, set.facts().name())));
        Map<LensModel.Id, String> models = shelf.modelNames();
        List<UnitRow> all = Requests.all(shelf.units()).stream()
                .map(unit -> UnitRow.of(
                        unit, unit.facts().model().map(models::get), Optional.ofNullable(sets.get(unit.id()))))
                .toList();
        List<UnitRow> found = all.stream().filter(row -> row.has(words)).toList();
        html.render(
                ctx,
                "shelf.jte",
                Map.of(
                        "units",
                        found.subList(0, Math.min(MOST_SHOWN, found.size())),
                        "found",
                        found.size(),
                        "all",
                        all.size(),
                        "words",
                        words));
    }

    private void models(Context ctx) {
        Map<LensModel.Id, Long> counts = new HashMap<>();
        Requests.all(shelf.units())
                .forEach(unit -> unit.facts().model().ifPresent(model -> counts.merge(model, 1L, Long::sum)));
        List<ModelRow> rows = Requests.all(shelf.models()).stream()
                .map(model -> row(model.id(), model.facts(), counts.getOrDefault(model.id(), 0L)))
                .toList();
        html.render(ctx, "models.jte", Map.of("models", rows));
    }

    private static ModelRow row(LensModel.Id id, LensModel model, long units) {
        LensModel.OpticalRecord record = model.record();
        String focal = record.focalMm().map(BigDecimal::toPlainString).orElse("")
                + record.longestFocalMm()
                        .map(end -> " to " + end.toPlainString())
                        .orElse("");
        return new ModelRow(
                id.number(),
                model.fullName(),
                model.kind().word(),
                focal.isEmpty() ? "" : focal + " mm",
                record.tStop().map(stop -> "T" + stop.toPlainString()).orElse(""),
                String.join(", ", record.mounts()),
                units);
    }

    private void sets(Context ctx) {
        List<SetRow> rows = Requests.all(shelf.sets()).stream()
                .map(set -> {
                    List<Unit> members = set.facts().members().stream()
                            .map(id -> shelf.units().find(id).orElseThrow().facts())
                            .toList();
                    return new SetRow(
                            set.id().number(),
                            set.facts().name(),
                            set.facts().matched(),
                            String.join(", ", members.stream().map(Unit::tag).toList()),
                            Words.covers(set.facts().covers(members)));
                })
                .toList();
        html.render(ctx, "sets.jte", Map.of("sets", rows));
    }
}
