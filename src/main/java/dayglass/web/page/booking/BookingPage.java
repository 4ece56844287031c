package dayglass.web.page.booking;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Obstacle;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.inventory.booking.OccupationJson;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One booking, bench visit or absence: its facts, and the forms that change it, let it out and take it back. */
final class BookingPage {
    private static final String PAGE = "/bookings/{id}";
    private static final String AT = "/at";
    private static final String OVERRIDE = "/override";

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Household household;
    private final Html html;

    BookingPage(Shelf shelf, Whereabouts whereabouts, Household household, Html html) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.household = household;
        this.html = html;
    }

    /** Which of the page's forms was sent. */
    private enum Sent {
        CHANGE,
        OUT,
        BACK
    }

    void route(RoutesConfig routes) {
        routes.get(PAGE, ctx -> html.render(ctx, "booking.jte", model(find(ctx), Optional.empty(), Form.EMPTY)));
        routes.post(PAGE, this::change);
        FormRoutes.take(routes, PAGE + "/handover", PAGE, this::handOver);
        FormRoutes.take(routes, PAGE + "/return", PAGE, this::takeBack);
        routes.get(PAGE + "/cancel", this::askToCancel);
        routes.post(PAGE + "/cancel", this::cancel);
    }

    private House house() {
        return whereabouts.settings().now().facts();
    }

    private Stored<Occupation.Id, Occupation> find(Context ctx) {
        return whereabouts
                .occupations()
                .find(new Occupation.Id(Requests.number(ctx, "id")))
                .orElseThrow(() -> Requests.missing(ctx));
    }

    /** The occupation with the version on which the form was based. */
    private static Stored<Occupation.Id, Occupation> based(Stored<Occupation.Id, Occupation> now, Form form) {
        return new Stored<>(now.id(), Requests.version(form), now.facts());
    }

    private Map<String, Object> model(Stored<Occupation.Id, Occupation> stored, Optional<Sent> sent, Form form) {
        Stored<Unit.Id, Unit> unit = shelf.units().find(stored.facts().unit()).orElseThrow();
        Instant now = whereabouts.clock().instant();
        Map<Person.Id, String> names = household.names();
        Form blank = Form.EMPTY.with("version", String.valueOf(stored.version()));
        Form change = EntryForm.of(stored.facts(), stored.version(), house());
        return Map.of(
                "page",
                BookingView.of(stored, unit, new Wording(now, house().zone()), names)
                        .with(
                                whereabouts.handOver().obstacles(stored, now),
                                whereabouts.door().overrides().of(stored.id()),
                                names),
                "change",
                sent.equals(Optional.of(Sent.CHANGE)) ? form : change,
                "goesOut",
                sent.equals(Optional.of(Sent.OUT)) ? form : blank,
                "comesBack",
                sent.equals(Optional.of(Sent.BACK)) ? form : blank);
    }

    private void change(Context ctx) {
        Stored<Occupation.Id, Occupation> now = find(ctx);
        Form form = Requests.form(ctx);
        answer(
                ctx,
                Sent.CHANGE,
                form,
                EntryForm.read(form, now.facts(), house())
                        .then(entry -> whereabouts.bookUnits().change(based(now, form), entry)));
    }

    private void handOver(Context ctx) {
        Stored<Occupation.Id, Occupation> now = find(ctx);
        Form form = Requests.form(ctx);
        Outcome<Stored<Occupation.Id, Occupation>> done = handling(form, OccupationJson.goingOut(house().zone()))
                .then(handling -> {
                    Instant at = handling.at().orElseGet(whereabouts.clock()::instant);
                    return handling.reason().isEmpty() && isAskedForAReason(now, at)
                            ? Outcome.faulty(OVERRIDE, "say why it goes out all the same; it is kept with your name")
                            : whereabouts.handOver().out(based(now, form), at, handling.reason());
                });
        answer(ctx, Sent.OUT, form, done);
    }

    private boolean isAskedForAReason(Stored<Occupation.Id, Occupation> booking, Instant at) {
        List<Obstacle> obstacles = whereabouts.handOver().obstacles(booking, at);
        return !obstacles.isEmpty() && obstacles.stream().allMatch(Obstacle::overridable);
    }

    private void takeBack(Context ctx) {
        Stored<Occupation.Id, Occupation> now = find(ctx);
        Form form = Requests.form(ctx);
        answer(
                ctx,
                Sent.BACK,
                form,
                handling(form, OccupationJson.comingBack(house().zone()))
                        .then(handling -> whereabouts
                                .handOver()
                                .back(based(now, form), handling.at().orElseGet(whereabouts.clock()::instant))));
    }

    private Outcome<OccupationJson.Handling> handling(Form form, Reader<OccupationJson.Handling> reader) {
        Json.Members members = Json.object();
        EntryForm.put(members, "at", ClockField.text(form, AT, house().zone()));
        EntryForm.put(members, "override", form.value(OVERRIDE).strip());
        return EntryForm.read(reader, members.build());
    }

    private void answer(Context ctx, Sent sent, Form form, Outcome<Stored<Occupation.Id, Occupation>> outcome) {
        Optional<Problem> refused = outcome.fold(
                done -> {
                    Requests.see(ctx, "/bookings/" + done.id().number());
                    return Optional.empty();
                },
                Optional::of);
        refused.ifPresent(problem -> {
            // Whoever sends it again has seen the newer one.
            Stored<Occupation.Id, Occupation> newest = find(ctx);
            Form again = problem.code() == Problem.Code.STALE
                    ? form.with("version", String.valueOf(newest.version())).with(stale(newest))
                    : form.with(problem);
            html.renderFaulty(ctx, "booking.jte", model(newest, Optional.of(sent), again));
        });
    }

    private Problem stale(Stored<Occupation.Id, Occupation> newest) {
        Occupation facts = newest.facts();
        Wording words = new Wording(whereabouts.clock().instant(), house().zone());
        return new Problem(
                Problem.Code.STALE,
                "Somebody changed it meanwhile. It now is \"" + facts.subject() + "\", "
                        + words.moment(facts.stay().out()) + " to "
                        + words.moment(facts.stay().back()) + ", "
                        + words.state(facts) + ". What you typed stands below: send it again to put it in that place.");
    }

    private void askToCancel(Context ctx) {
        Stored<Occupation.Id, Occupation> stored = find(ctx);
        Wording words = new Wording(whereabouts.clock().instant(), house().zone());
        html.render(
                ctx,
                "bookingcancel.jte",
                Map.of(
                        "id",
                        stored.id().number(),
                        "version",
                        stored.version(),
                        "what",
                        "the " + Wording.kind(stored.facts().kind()) + " \""
                                + stored.facts().subject() + "\" of "
                                + shelf.units()
                                        .find(stored.facts().unit())
                                        .orElseThrow()
                                        .facts()
                                        .tag(),
                        "when",
                        words.moment(stored.facts().stay().out()) + " to "
                                + words.moment(stored.facts().stay().back())));
    }

    private void cancel(Context ctx) {
        Stored<Occupation.Id, Occupation> now = find(ctx);
        Refusal.require(whereabouts.bookUnits().cancel(based(now, Requests.form(ctx))));
        Requests.see(ctx, "/bookings/" + now.id().number());
    }
}
