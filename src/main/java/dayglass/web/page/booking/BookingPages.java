package dayglass.web.page.booking;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.house.Household;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The list of what is ahead and out, and the pages of each. */
public final class BookingPages {
    private static final int MOST_SHOWN = 500;
    private static final Duration AHEAD = Duration.ofDays(36_525);
    private static final List<String> KINDS = List.of("booking", "bench visit", "absence", "hold");

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Html html;

    private BookingPages(Shelf shelf, Whereabouts whereabouts, Html html) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.html = html;
    }

    public static void route(RoutesConfig routes, Shelf shelf, Whereabouts whereabouts, Household household) {
        Html html = new Html(household);
        BookingPages pages = new BookingPages(shelf, whereabouts, html);
        routes.get("/bookings", pages::list);
        new NewBookingPage(shelf.units(), whereabouts, html).route(routes);
        new BookingPage(shelf, whereabouts, household, html).route(routes);
        new HoldPages(shelf.units(), whereabouts, html).route(routes);
        new FreePage(shelf, whereabouts, html).route(routes);
    }

    private void list(Context ctx) {
        String kind = Optional.ofNullable(ctx.queryParam("kind")).orElse("");
        String words = Optional.ofNullable(ctx.queryParam("words")).orElse("");
        List<BookingRow> all = rows();
        List<BookingRow> found = all.stream()
                .filter(row -> kind.isEmpty() || row.kind().equals(kind))
                .filter(row -> row.has(words))
                .toList();
        html.render(
                ctx,
                "bookings.jte",
                Map.of(
                        "rows",
                        found.subList(0, Math.min(MOST_SHOWN, found.size())),
                        "found",
                        found.size(),
                        "all",
                        all.size(),
                        "kind",
                        kind,
                        "kinds",
                        KINDS,
                        "words",
                        words));
    }

    private List<BookingRow> rows() {
        Instant now = whereabouts.clock().instant();
        Wording words = new Wording(now, whereabouts.settings().now().facts().zone());
        Map<LensModel.Id, String> models = shelf.modelNames();
        Map<Unit.Id, BookingRow.Of> units = new HashMap<>();
        Requests.all(shelf.units())
                .forEach(unit -> units.put(
                        unit.id(),
                        new BookingRow.Of(
                                unit.id().number(),
                                unit.facts().tag(),
                                unit.facts().model().map(models::get).orElse(""))));
        List<BookingRow> rows = new ArrayList<>();
        for (Stored<Occupation.Id, Occupation> each : whereabouts.occupations().between(now, now.plus(AHEAD))) {
            boolean back = each.facts().handling().cameBack().isPresent();
            Optional.ofNullable(units.get(each.facts().unit()))
                    .filter(unit -> !back)
                    .ifPresent(unit -> rows.add(BookingRow.of(each, unit, words)));
        }
        for (Stored<Hold.Id, Hold> each : Requests.all(whereabouts.holds())) {
            boolean lapsed = !each.facts().expires().isAfter(now);
            Optional.ofNullable(units.get(each.facts().unit()))
                    .filter(unit -> !lapsed)
                    .ifPresent(unit -> rows.add(BookingRow.ofHold(each, unit, words)));
        }
        rows.sort(Comparator.comparing(BookingRow::begins).thenComparing(BookingRow::tag));
        return rows;
    }
}
