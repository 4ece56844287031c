package dayglass.web.page.wall;

import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.house.House;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.wall.WallPicture.Bar;
import dayglass.web.page.wall.WallPicture.Group;
import dayglass.web.page.wall.WallPicture.Row;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The wall, from a week on for some weeks. */
public final class WallPages {
    private static final int USUAL_WEEKS = 4;
    private static final int MOST_WEEKS = 13;

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Html html;

    public WallPages(Shelf shelf, Whereabouts whereabouts, Html html) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/wall", this::wall);
        new ScanPage(shelf, html).route(routes);
    }

    /** What was asked to be shown; anything that cannot be read is the usual. */
    private record Asked(LocalDate from, int weeks, String words) {
        static Asked of(Context ctx, LocalDate today) {
            return new Asked(
                    day(ctx.queryParam("from"), today).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
                    weeks(ctx.queryParam("weeks")),
                    Optional.ofNullable(ctx.queryParam("words")).orElse("").strip());
        }

        private static LocalDate day(@Nullable String text, LocalDate today) {
            try {
                LocalDate day = text == null || text.isBlank() ? today : LocalDate.parse(text);
                return Math.abs(day.getYear() - today.getYear()) > 100 ? today : day;
            } catch (DateTimeParseException unreadable) {
                return today;
            }
        }

        private static int weeks(@Nullable String text) {
            boolean number = text != null && text.matches("[1-9][0-9]?");
            return number ? Math.min(MOST_WEEKS, Integer.parseInt(text)) : USUAL_WEEKS;
        }

        DateRange days() {
            return new DateRange(from, from.plusWeeks(weeks));
        }
    }

    private void wall(Context ctx) {
        House house = whereabouts.settings().now().facts();
        Instant now = whereabouts.clock().instant();
        Asked asked = Asked.of(ctx, now.atZone(house.zone()).toLocalDate());
        WallDays days = new WallDays(asked.days(), house.zone());
        int at = now.isBefore(days.begin()) || !now.isBefore(days.end()) ? -1 : days.x(now);
        WallPicture picture = new WallPicture(days, groups(asked, days, now), at);
        Map<String, Object> model = new HashMap<>(Map.of(
                "picture", picture,
                "from", asked.from().toString(),
                "weeks", asked.weeks(),
                "words", asked.words(),
                "earlier", asked.from().minusWeeks(asked.weeks()).toString(),
                "later", asked.from().plusWeeks(asked.weeks()).toString(),
                "zone", house.zone().getId()));
        html.render(ctx, "wall.jte", model);
    }

    private List<Group> groups(Asked asked, WallDays days, Instant now) {
        Map<Unit.Id, List<Bar>> bars = bars(days, now);
        Map<Unit.Id, String> sets = new HashMap<>();
        for (Stored<LensSet.Id, LensSet> set : Requests.all(shelf.sets())) {
            set.facts().members().forEach(unit -> sets.put(unit, set.facts().name()));
        }
        Map<LensModel.Id, String> models = shelf.modelNames();
        Map<String, Map<String, Row>> groups = new TreeMap<>();
        for (Stored<Unit.Id, Unit> unit : Requests.all(shelf.units())) {
            String model = unit.facts().model().map(models::get).orElse("");
            String set = sets.getOrDefault(unit.id(), "");
            List<Bar> ofUnit = bars.getOrDefault(unit.id(), List.of());
            String subjects = String.join(" ", ofUnit.stream().map(Bar::title).toList());
            boolean wanted = has(asked.words(), unit.facts().tag() + " " + model + " " + set + " " + subjects);
            if (wanted && unit.facts().departure().isEmpty()) {
                groups.computeIfAbsent(set, name -> new TreeMap<>())
                        .put(
                                unit.facts().tag(),
                                new Row(unit.id().number(), unit.facts().tag(), model, ofUnit));
            }
        }
        List<Group> all = new ArrayList<>();
        groups.forEach((name, rows) -> all.add(new Group(name, List.copyOf(rows.values()))));
        // What is in no set comes after the sets.
        if (!all.isEmpty() && all.get(0).name().isEmpty()) {
            all.add(all.remove(0));
        }
        return all;
    }

    private static boolean has(String words, String text) {
        return text.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }

    private Map<Unit.Id, List<Bar>> bars(WallDays days, Instant now) {
        var zone = whereabouts.settings().now().facts().zone();
        Map<Unit.Id, List<Bar>> bars = new HashMap<>();
        for (Stored<Hold.Id, Hold> hold : Requests.all(whereabouts.holds())) {
            if (hold.facts().expires().isAfter(now)) {
                bars.computeIfAbsent(hold.facts().unit(), unit -> new ArrayList<>())
                        .addAll(linked("/holds/" + hold.id().number(), WallPicture.bars(hold.facts(), days, zone)));
            }
        }
        for (Stored<Occupation.Id, Occupation> each : whereabouts.occupations().between(days.begin(), days.end())) {
            bars.computeIfAbsent(each.facts().unit(), unit -> new ArrayList<>())
                    .addAll(linked("/bookings/" + each.id().number(), WallPicture.bars(each.facts(), days, now, zone)));
        }
        return bars;
    }

    private static List<Bar> linked(String address, List<Bar> bars) {
        return bars.stream().map(bar -> bar.leadingTo(address)).toList();
    }
}
