package dayglass.web.page.label;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.house.HouseSettings;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.paper.PaperSize;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Chooses units and prints their labels. All that is chosen stands in the address. */
public final class LabelPages {
    private static final int MOST_SHOWN = 300;
    private static final int MOST_LABELS = 1_000;

    private final Shelf shelf;
    private final HouseSettings settings;
    private final Html html;

    public LabelPages(Shelf shelf, HouseSettings settings, Html html) {
        this.shelf = shelf;
        this.settings = settings;
        this.html = html;
    }

    /** A unit that may be chosen. */
    public record Candidate(long id, String tag, String model, String set, boolean chosen) {
        boolean has(String words) {
            String all = String.join("\n", tag, model, set).toLowerCase(Locale.ROOT);
            return Stream.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+", -1))
                    .allMatch(all::contains);
        }
    }

    /** What the fields say; anything that cannot be read is the usual. */
    public record Asked(String kind, String paper, int columns, int rows, int margin, int used, String words) {
        static Asked of(Context ctx) {
            String kind = text(ctx, "kind");
            String paper = text(ctx, "paper");
            return new Asked(
                    Symbol.Kind.of(kind).orElse(Symbol.Kind.QR).word(),
                    PaperSize.of(paper).orElse(PaperSize.A4).word(),
                    number(ctx, "columns", 3, new Bounds(1, 8)),
                    number(ctx, "rows", 8, new Bounds(1, 20)),
                    number(ctx, "margin", 5, new Bounds(0, 30)),
                    number(ctx, "used", 0, new Bounds(0, 159)),
                    text(ctx, "words"));
        }

        private record Bounds(int least, int most) {}

        private static int number(Context ctx, String name, int usual, Bounds bounds) {
            String text = text(ctx, name);
            return text.matches("[0-9]{1,3}")
                    ? Math.max(bounds.least(), Math.min(bounds.most(), Integer.parseInt(text)))
                    : usual;
        }

        private static String text(Context ctx, String name) {
            return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
        }

        LabelSheets.Layout layout() {
            int places = columns * rows;
            return new LabelSheets.Layout(
                    PaperSize.of(paper).orElseThrow(), columns, rows, margin, Math.min(used, places - 1));
        }
    }

    public void route(RoutesConfig routes) {
        routes.get("/shelf/labels", this::show);
    }

    private void show(Context ctx) {
        Asked asked = Asked.of(ctx);
        Set<String> chosen = new HashSet<>(ctx.queryParams("unit"));
        List<Candidate> all = candidates(chosen);
        List<Candidate> shown = all.stream()
                .filter(each -> each.chosen() || each.has(asked.words()))
                .limit(MOST_SHOWN)
                .toList();
        String house = settings.now().facts().name();
        LabelSheets sheets = new LabelSheets(
                asked.layout(),
                Symbol.Kind.of(asked.kind()).orElseThrow(),
                all.stream()
                        .filter(Candidate::chosen)
                        .limit(MOST_LABELS)
                        .map(each -> new LabelSheets.Text(each.tag(), each.model(), house))
                        .toList());
        html.render(
                ctx,
                "labels.jte",
                Map.of(
                        "asked", asked,
                        "candidates", shown,
                        "all", all.size(),
                        "kinds",
                                Arrays.stream(Symbol.Kind.values())
                                        .map(Symbol.Kind::word)
                                        .toList(),
                        "papers",
                                Arrays.stream(PaperSize.values())
                                        .map(PaperSize::word)
                                        .toList(),
                        "sheets", sheets.sheets(),
                        "impossible", sheets.impossible(),
                        "tooFine", sheets.tooFine()));
    }

    private List<Candidate> candidates(Set<String> chosen) {
        Map<LensModel.Id, String> models = shelf.modelNames();
        Map<Unit.Id, String> sets = new HashMap<>();
        for (Stored<LensSet.Id, LensSet> set : Requests.all(shelf.sets())) {
            set.facts().members().forEach(unit -> sets.put(unit, set.facts().name()));
        }
        return Requests.all(shelf.units()).stream()
                .filter(unit -> unit.facts().departure().isEmpty())
                .map(unit -> new Candidate(
                        unit.id().number(),
                        unit.facts().tag(),
                        unit.facts().model().map(models::get).orElse(""),
                        sets.getOrDefault(unit.id(), ""),
                        chosen.contains(String.valueOf(unit.id().number()))))
                .sorted(Comparator.comparing(Candidate::tag))
                .toList();
    }
}
