package dayglass.web.api.inventory.booking;

import dayglass.catalogue.LensModel;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.house.Moments;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** {@code /api/availability}: which units and whole sets are free from one moment to another. */
public final class AvailabilityApi {
    private final Whereabouts whereabouts;

    public AvailabilityApi(Whereabouts whereabouts) {
        this.whereabouts = whereabouts;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/availability", this::ask);
    }

    private void ask(Context ctx) {
        Requests.onlyParameters(ctx, "out", "back", "model");
        ZoneId zone = whereabouts.settings().now().facts().zone();
        Instant out = required(ctx, "out", zone);
        Instant back = required(ctx, "back", zone);
        if (!out.isBefore(back)) {
            throw Requests.badParameter("back", "it must be later than out");
        }
        OptionalLong model = Requests.number(ctx, "model", Long.MAX_VALUE);
        Stay stay = whereabouts.availability().stay(out, back);
        Availability.Answer answer = whereabouts
                .availability()
                .during(stay, model.isPresent() ? Optional.of(new LensModel.Id(model.getAsLong())) : Optional.empty());
        Replies.json(ctx, show(answer, zone));
    }

    private static Instant required(Context ctx, String name, ZoneId zone) {
        return MomentQuery.moment(ctx, name, zone)
                .orElseThrow(() -> Requests.badParameter(
                        name, "say " + (name.equals("out") ? "from" : "to") + " when, such as 2027-04-12T15:00"));
    }

    private static Json show(Availability.Answer answer, ZoneId zone) {
        return Json.object()
                .put("out", Moments.text(answer.asked().out(), zone))
                .put("back", Moments.text(answer.asked().back(), zone))
                .put("freeAt", Moments.text(answer.asked().freeAt(), zone))
                .put(
                        "freeUnits",
                        answer.units().stream()
                                .filter(Availability.OfUnit::free)
                                .count())
                .put(
                        "units",
                        Json.list(answer.units().stream()
                                .map(unit -> show(unit, zone))
                                .toList()))
                .put(
                        "sets",
                        Json.list(answer.sets().stream()
                                .map(set -> show(set, zone))
                                .toList()))
                .build();
    }

    private static Json show(Availability.OfUnit unit, ZoneId zone) {
        Json.Members members = Json.object()
                .put("unitId", unit.unit().unit().number())
                .put("tag", unit.unit().tag());
        unit.unit().model().ifPresent(model -> members.put("modelId", model.number()));
        unit.unit().set().ifPresent(set -> members.put("setId", set.number()));
        members.put("free", unit.free());
        unit.nextFree().ifPresent(next -> members.put("nextFree", Moments.text(next, zone)));
        return members.putUnlessEmpty("obstacles", texts(unit.obstacles()))
                .putUnlessEmpty("warnings", texts(unit.warnings()))
                .build();
    }

    private static List<Json> texts(List<String> texts) {
        return texts.stream().map(Json::text).toList();
    }

    private static Json show(Availability.OfSet set, ZoneId zone) {
        Json.Members members = Json.object()
                .put("setId", set.set().number())
                .put("members", set.members())
                .put("freeMembers", set.freeMembers())
                .put("free", set.free());
        set.nextFree().ifPresent(next -> members.put("nextFree", Moments.text(next, zone)));
        return members.build();
    }
}
