package dayglass.web.api.inventory.booking;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;

/** {@code /api/bookings}, {@code /api/bench-visits} or {@code /api/absences}, with handing over and taking back. */
public final class OccupationApi {
    private final Kind kind;
    private final String path;
    private final String noun;
    private final Whereabouts whereabouts;

    private OccupationApi(Kind kind, String path, String noun, Whereabouts whereabouts) {
        this.kind = kind;
        this.path = path;
        this.noun = noun;
        this.whereabouts = whereabouts;
    }

    /**
     * Adds all three.
     *
     * @param once makes a handler that creates safe to be called twice
     */
    public static void addTo(RoutesConfig routes, Whereabouts whereabouts, UnaryOperator<Handler> once) {
        new OccupationApi(Kind.BOOKING, "/api/bookings", "booking", whereabouts).add(routes, once);
        new OccupationApi(Kind.BENCH, "/api/bench-visits", "bench visit", whereabouts).add(routes, once);
        new OccupationApi(Kind.ABSENCE, "/api/absences", "absence", whereabouts).add(routes, once);
    }

    private void add(RoutesConfig routes, UnaryOperator<Handler> once) {
        routes.post(path, once.apply(this::create));
        routes.get(path, this::list);
        routes.get(path + "/{id}", this::read);
        routes.put(path + "/{id}", this::change);
        routes.post(path + "/{id}/cancel", this::cancel);
        if (kind == Kind.BOOKING) {
            routes.post(path + "/{id}/handover", this::handOut);
            routes.post(path + "/{id}/return", this::takeBack);
        }
    }

    private House house() {
        return whereabouts.settings().now().facts();
    }

    private ZoneId zone() {
        return house().zone();
    }

    private void create(Context ctx) {
        Requests.onlyParameters(ctx);
        ZoneId zone = zone();
        OccupationJson.New asked = Requests.body(ctx, OccupationJson.several(kind, house()));
        List<Stored<Occupation.Id, Occupation>> added =
                Refusal.require(whereabouts.bookUnits().add(asked.units(), asked.entry()));
        Replies.created(
                ctx,
                path + "/" + added.get(0).id().number(),
                Json.object()
                        .put(
                                "items",
                                Json.list(added.stream()
                                        .map(each -> OccupationJson.write(each, zone))
                                        .toList()))
                        .build());
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx, "limit", "after", "unit", "from", "until");
        Replies.Slice slice = Replies.Slice.of(ctx);
        ZoneId zone = zone();
        OptionalLong unit = Requests.number(ctx, "unit", Long.MAX_VALUE);
        Occupations.Which which = new Occupations.Which(
                Optional.of(kind),
                unit.isPresent() ? Optional.of(new Unit.Id(unit.getAsLong())) : Optional.empty(),
                MomentQuery.moment(ctx, "from", zone),
                MomentQuery.moment(ctx, "until", zone));
        List<Stored<Occupation.Id, Occupation>> fetched =
                whereabouts.occupations().list(which, Optional.of(new Occupation.Id(slice.after())), slice.toFetch());
        Replies.json(
                ctx,
                slice.page(
                        path,
                        MomentQuery.kept(ctx, "unit", "from", "until"),
                        fetched,
                        each -> each.id().number(),
                        each -> OccupationJson.write(each, zone)));
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        answer(ctx, find(ctx));
    }

    private void change(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Occupation.Id, Occupation> current = find(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        var entry = Requests.body(ctx, OccupationJson.one(kind, house()));
        requireMatch(ifMatch, current);
        answer(ctx, done(whereabouts.bookUnits().change(current, entry), current.id()));
    }

    private void cancel(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Occupation.Id, Occupation> current = find(ctx);
        requireMatch(IfMatch.of(ctx), current);
        answer(ctx, done(whereabouts.bookUnits().cancel(current), current.id()));
    }

    private void handOut(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Occupation.Id, Occupation> current = find(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        OccupationJson.Handling handling = Requests.body(ctx, OccupationJson.goingOut(zone()));
        requireMatch(ifMatch, current);
        HandOver handOver = whereabouts.handOver();
        answer(ctx, done(handOver.out(current, at(handling), handling.reason()), current.id()));
    }

    private void takeBack(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Occupation.Id, Occupation> current = find(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        OccupationJson.Handling handling = Requests.body(ctx, OccupationJson.comingBack(zone()));
        requireMatch(ifMatch, current);
        answer(ctx, done(whereabouts.handOver().back(current, at(handling)), current.id()));
    }

    private Instant at(OccupationJson.Handling handling) {
        return handling.at().orElseGet(() -> whereabouts.clock().instant());
    }

    private Stored<Occupation.Id, Occupation> find(Context ctx) {
        return find(new Occupation.Id(Requests.pathId(ctx)));
    }

    private Stored<Occupation.Id, Occupation> find(Occupation.Id id) {
        return whereabouts
                .occupations()
                .find(id)
                .filter(found -> found.facts().kind() == kind)
                .orElseThrow(() -> new Refusal(
                        ProblemKind.NOT_FOUND, "There is no " + noun + " with the id " + id.number() + "."));
    }

    private void requireMatch(IfMatch ifMatch, Stored<Occupation.Id, Occupation> current) {
        if (!ifMatch.matches(current.version())) {
            throw stale(current);
        }
    }

    private Refusal stale(Stored<Occupation.Id, Occupation> current) {
        return IfMatch.stale("This " + noun + " is", current.version(), OccupationJson.write(current, zone()));
    }

    private <T> T done(Outcome<T> outcome, Occupation.Id id) {
        return outcome.fold(value -> value, problem -> {
            throw problem.code() == Problem.Code.STALE ? stale(find(id)) : Refusal.of(problem);
        });
    }

    private void answer(Context ctx, Stored<Occupation.Id, Occupation> stored) {
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.json(
                ctx, OccupationJson.write(stored, whereabouts.door().overrides().of(stored.id()), zone()));
    }
}
