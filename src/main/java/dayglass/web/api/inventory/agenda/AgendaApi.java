package dayglass.web.api.inventory.agenda;

import dayglass.calendar.CalendarText;
import dayglass.house.House;
import dayglass.inventory.agenda.Agenda;
import dayglass.inventory.agenda.GiveBack;
import dayglass.inventory.booking.Whereabouts;
import dayglass.shelf.MoneyJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.house.Moments;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.List;

/** {@code /api/due-back} and {@code /api/calendar.ics}. */
public final class AgendaApi {
    private final Agenda agenda;
    private final Whereabouts whereabouts;

    public AgendaApi(Agenda agenda, Whereabouts whereabouts) {
        this.agenda = agenda;
        this.whereabouts = whereabouts;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/due-back", this::dueBack);
        routes.get("/api/calendar.ics", this::calendar);
    }

    private void dueBack(Context ctx) {
        Requests.onlyParameters(ctx, "until");
        House house = whereabouts.settings().now().facts();
        LocalDate today = whereabouts.clock().instant().atZone(house.zone()).toLocalDate();
        LocalDate until = Requests.day(ctx, "until").orElse(today.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY)));
        List<Json> items = agenda.toGiveBack().stream()
                .filter(each -> !each.rented().dueBackOn().isAfter(until))
                .<Json>map(each -> show(each, house.zone()))
                .toList();
        Replies.json(
                ctx,
                Json.object()
                        .put("today", today.toString())
                        .put("until", until.toString())
                        .put("items", Json.list(items))
                        .build());
    }

    private static Json show(GiveBack each, ZoneId zone) {
        Json.Members members = Json.object()
                .put("unitId", each.unit().number())
                .put("tag", each.tag())
                .put("owner", each.rented().owner())
                .put("agreement", each.rented().agreement())
                .put("paidUpTo", each.rented().paidUpTo().toString())
                .put("dueBackOn", each.rented().dueBackOn().toString())
                .put("daysLate", each.daysLate());
        each.rented().lateDay().ifPresent(day -> members.put("lateDay", MoneyJson.write(day)));
        each.lateCost().ifPresent(cost -> members.put("lateCost", MoneyJson.write(cost)));
        each.beyond()
                .ifPresent(booking -> members.put(
                        "bookedBeyond",
                        Json.object()
                                .put("id", booking.id().number())
                                .put("subject", booking.facts().subject())
                                .put("back", Moments.text(booking.facts().stay().back(), zone))
                                .build()));
        return members.build();
    }

    private void calendar(Context ctx) {
        Requests.onlyParameters(ctx);
        Instant now = whereabouts.clock().instant();
        String name = whereabouts.settings().now().facts().name();
        ctx.contentType("text/calendar; charset=utf-8")
                .result(CalendarText.of(name, agenda.events(), now).getBytes(StandardCharsets.UTF_8));
    }
}
