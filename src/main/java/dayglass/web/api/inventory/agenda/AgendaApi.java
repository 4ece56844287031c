package dayglass.web.api.inventory.agenda;

import dayglass.calendar.CalendarText;
import dayglass.house.House;
import dayglass.inventory.agenda.Agenda;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
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
                .<Json>map(each -> GiveBackJson.write(each, house.zone()))
                .toList();
        Replies.json(
                ctx,
                Json.object()
                        .put("today", today.toString())
                        .put("until", until.toString())
                        .put("items", Json.list(items))
                        .build());
    }

    private void calendar(Context ctx) {
        Requests.onlyParameters(ctx);
        Instant now = whereabouts.clock().instant();
        String name = whereabouts.settings().now().facts().name();
        ctx.contentType("text/calendar; charset=utf-8")
                .result(CalendarText.of(name, agenda.events(), now).getBytes(StandardCharsets.UTF_8));
    }
}
