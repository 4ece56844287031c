package dayglass.web.page.wall;

import dayglass.base.Stored;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Opens a unit by the tag that was scanned or typed; where none has it, shows those that look alike. */
public final class ScanPage {
    private static final int MOST_ALIKE = 12;

    private final Shelf shelf;
    private final Html html;

    ScanPage(Shelf shelf, Html html) {
        this.shelf = shelf;
        this.html = html;
    }

    /** A unit that may have been meant. */
    public record Alike(long id, String tag, String serial) {}

    void route(RoutesConfig routes) {
        routes.get("/scan", this::scan);
    }

    private void scan(Context ctx) {
        String tag = Optional.ofNullable(ctx.queryParam("tag")).orElse("").strip();
        Optional<Stored<Unit.Id, Unit>> exact =
                tag.isEmpty() ? Optional.empty() : shelf.units().tagged(tag);
        List<Stored<Unit.Id, Unit>> alike = exact.isPresent() || tag.isEmpty() ? List.of() : alike(tag);
        List<Stored<Unit.Id, Unit>> same = alike.stream()
                .filter(unit -> unit.facts().tag().equalsIgnoreCase(tag)
                        || unit.facts().serial().filter(tag::equalsIgnoreCase).isPresent())
                .toList();
        Optional<Stored<Unit.Id, Unit>> only = same.size() == 1 ? Optional.of(same.get(0)) : exact;
        if (only.isPresent()) {
            ctx.redirect("/shelf/units/" + only.get().id().number(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(tag.isEmpty() ? HttpStatus.OK : HttpStatus.NOT_FOUND);
        html.render(
                ctx,
                "scan.jte",
                Map.of(
                        "tag",
                        tag,
                        "alike",
                        alike.stream()
                                .limit(MOST_ALIKE)
                                .map(unit -> new Alike(
                                        unit.id().number(),
                                        unit.facts().tag(),
                                        unit.facts().serial().orElse("")))
                                .toList()));
    }

    /** Those that have the letters and digits of what was typed in their tag or serial. */
    private List<Stored<Unit.Id, Unit>> alike(String tag) {
        String wanted = bare(tag);
        return wanted.isEmpty()
                ? List.of()
                : Requests.all(shelf.units()).stream()
                        .filter(unit -> bare(unit.facts().tag()).contains(wanted)
                                || wanted.contains(bare(unit.facts().tag()))
                                || unit.facts()
                                        .serial()
                                        .filter(serial -> bare(serial).contains(wanted))
                                        .isPresent())
                        .toList();
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
