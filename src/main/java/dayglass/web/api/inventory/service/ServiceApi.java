package dayglass.web.api.inventory.service;

import dayglass.house.HouseSettings;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.service.DueList;
import dayglass.inventory.service.ServiceDue;
import dayglass.inventory.service.ServicePlan;
import dayglass.inventory.service.ServicePlans;
import dayglass.shelf.ServicePlanJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Representation;
import dayglass.web.api.Requests;
import dayglass.web.api.Resource;
import dayglass.web.api.house.Moments;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** {@code /api/service-plans}, and {@code /api/due}: what falls due for service, the first due first. */
public final class ServiceApi {
    private final ServicePlans plans;
    private final DueList dueList;
    private final HouseSettings settings;
    private final Clock clock;

    public ServiceApi(ServicePlans plans, DueList dueList, HouseSettings settings, Clock clock) {
        this.plans = plans;
        this.dueList = dueList;
        this.settings = settings;
        this.clock = clock;
    }

    public void addTo(RoutesConfig routes) {
        new Resource<>(new Representation<>(
                        "/api/service-plans",
                        "service plan",
                        plans,
                        ServicePlan.Id::new,
                        ServicePlanJson.reader(),
                        ServicePlanJson::write))
                .addTo(routes);
        routes.get("/api/due", this::due);
    }

    private void due(Context ctx) {
        Requests.onlyParameters(ctx, "until");
        Optional<LocalDate> until = Requests.day(ctx, "until");
        Instant now = clock.instant();
        ZoneId zone = settings.now().facts().zone();
        LocalDate today = now.atZone(zone).toLocalDate();
        List<Json> items = dueList.rows(now).stream()
                .filter(row -> until.isEmpty()
                        || row.due()
                                .dueOn()
                                .filter(day -> !day.isAfter(until.get()))
                                .isPresent())
                .<Json>map(row -> show(row, today, zone))
                .toList();
        Replies.json(
                ctx,
                Json.object()
                        .put("today", today.toString())
                        .put("items", Json.list(items))
                        .build());
    }

    private static Json show(DueList.Row row, LocalDate today, ZoneId zone) {
        ServiceDue due = row.due();
        Json.Members members = Json.object()
                .put("unitId", row.plan().facts().unit().number())
                .put("tag", row.unit().tag())
                .put("servicePlanId", row.plan().id().number())
                .put("lastDoneOn", due.lastDoneOn().toString())
                .put("daysOut", due.daysOut());
        due.byMonths().ifPresent(day -> members.put("byMonthsOn", day.toString()));
        due.byDaysOut().ifPresent(day -> members.put("byDaysOutOn", day.toString()));
        due.dueOn().ifPresent(day -> members.put("dueOn", day.toString()));
        members.put("overdue", due.overdueOn(today));
        row.visit().ifPresent(visit -> members.put("visit", visit(visit.id(), visit.facts(), zone)));
        return members.build();
    }

    private static Json visit(Occupation.Id id, Occupation visit, ZoneId zone) {
        return Json.object()
                .put("id", id.number())
                .put("subject", visit.subject())
                .put("out", Moments.text(visit.stay().out(), zone))
                .put("back", Moments.text(visit.stay().back(), zone))
                .build();
    }
}
