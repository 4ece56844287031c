package dayglass.web.page.agenda;

import dayglass.base.Money;
import dayglass.house.House;
import dayglass.inventory.Holding;
import dayglass.inventory.agenda.Agenda;
import dayglass.inventory.agenda.GiveBack;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.page.Html;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What belongs to others and must be given back: late, this week, later. */
public final class DueBackPage {
    private final Agenda agenda;
    private final Whereabouts whereabouts;
    private final Html html;

    public DueBackPage(Agenda agenda, Whereabouts whereabouts, Html html) {
        this.agenda = agenda;
        this.whereabouts = whereabouts;
        this.html = html;
    }

    /**
     * Rows under one heading.
     *
     * @param lateCost what lateness cost so far, each currency by itself; empty where nothing
     */
    public record Group(String title, List<Row> rows, String lateCost) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /** One unit. */
    public record Row(
            long unit,
            String tag,
            String owner,
            String agreement,
            String due,
            String paidUpTo,
            String lateDay,
            String lateCost,
            long booking,
            String beyond) {}

    public void route(RoutesConfig routes) {
        routes.get("/shelf/due-back", this::show);
    }

    private void show(Context ctx) {
        House house = whereabouts.settings().now().facts();
        LocalDate today = whereabouts.clock().instant().atZone(house.zone()).toLocalDate();
        LocalDate sunday = today.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        List<GiveBack> all = agenda.toGiveBack();
        Map<String, List<GiveBack>> parts = new LinkedHashMap<>();
        for (GiveBack each : all) {
            boolean later = each.rented().dueBackOn().isAfter(sunday);
            parts.computeIfAbsent(
                            each.daysLate() > 0 ? "Late" : later ? "Later" : "This week", title -> new ArrayList<>())
                    .add(each);
        }
        List<Group> groups = new ArrayList<>();
        parts.forEach((title, of) -> groups.add(group(title, of, house.zone())));
        html.render(ctx, "dueback.jte", Map.of("groups", groups, "today", Words.date(today), "feed", feed(ctx)));
    }

    /** The whole address, as a program that subscribes needs it. */
    private static String feed(Context ctx) {
        return ctx.scheme() + "://" + ctx.host() + "/api/calendar.ics";
    }

    private static Group group(String title, List<GiveBack> of, ZoneId zone) {
        Map<String, Money> costs = new TreeMap<>();
        of.forEach(each -> each.lateCost()
                .filter(cost -> cost.signum() > 0)
                .ifPresent(cost -> costs.merge(cost.currency().code(), cost, Money::plus)));
        return new Group(
                title,
                of.stream().map(each -> row(each, zone)).toList(),
                costs.values().stream().map(Words::money).collect(Collectors.joining(" and ")));
    }

    private static Row row(GiveBack each, ZoneId zone) {
        Holding.RentedIn rented = each.rented();
        return new Row(
                each.unit().number(),
                each.tag(),
                rented.owner(),
                rented.agreement(),
                Words.date(rented.dueBackOn())
                        + (each.daysLate() == 0 ? "" : ", " + Words.days(each.daysLate()) + " late"),
                Words.date(rented.paidUpTo()),
                rented.lateDay().map(Words::money).orElse("not said"),
                each.lateCost()
                        .filter(cost -> cost.signum() > 0)
                        .map(Words::money)
                        .orElse(""),
                each.beyond().map(booking -> booking.id().number()).orElse(0L),
                each.beyond()
                        .map(booking -> booking.facts().subject() + " until "
                                + Words.moment(booking.facts().stay().back(), zone))
                        .orElse(""));
    }
}
