package dayglass.web.page.booking;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The form that enters a bench visit, an absence or a booking of one unit. */
final class NewBookingPage {
    private static final String PAGE = "/bookings/new";

    private final Units units;
    private final Whereabouts whereabouts;
    private final Html html;

    NewBookingPage(Units units, Whereabouts whereabouts, Html html) {
        this.units = units;
        this.whereabouts = whereabouts;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get(PAGE, this::show);
        routes.post(PAGE, this::add);
    }

    private House house() {
        return whereabouts.settings().now().facts();
    }

    private void show(Context ctx) {
        Kind kind = kind(ctx, Optional.ofNullable(ctx.queryParam("kind")).orElse(""));
        Stored<Unit.Id, Unit> unit =
                unit(ctx, Optional.ofNullable(ctx.queryParam("unit")).orElse(""));
        Form form =
                ClockField.with(Form.EMPTY, EntryForm.OUT, whereabouts.clock().instant(), house().zone());
        html.render(ctx, "bookingnew.jte", model(kind, unit, form));
    }

    private static Kind kind(Context ctx, String word) {
        return Kind.of(word).orElseThrow(() -> Requests.missing(ctx));
    }

    private Stored<Unit.Id, Unit> unit(Context ctx, String number) {
        return PathNumbers.of(number).stream()
                .boxed()
                .findFirst()
                .flatMap(id -> units.find(new Unit.Id(id)))
                .orElseThrow(() -> Requests.missing(ctx));
    }

    private Map<String, Object> model(Kind kind, Stored<Unit.Id, Unit> unit, Form form) {
        return Map.of(
                "kind",
                kind,
                "unit",
                unit.id().number(),
                "tag",
                unit.facts().tag(),
                "zone",
                house().zone(),
                "form",
                form);
    }

    private void add(Context ctx) {
        Form form = Requests.form(ctx);
        Kind kind = kind(ctx, form.value("kind"));
        Stored<Unit.Id, Unit> unit = unit(ctx, form.value("unit"));
        Outcome<List<Stored<Occupation.Id, Occupation>>> added = EntryForm.read(
                        form, List.of(String.valueOf(unit.id().number())), kind, house())
                .then(asked -> whereabouts.bookUnits().add(asked.units(), asked.entry()));
        Optional<Problem> refused = added.fold(
                done -> {
                    Requests.see(ctx, "/bookings/" + done.get(0).id().number());
                    return Optional.empty();
                },
                Optional::of);
        refused.ifPresent(problem -> html.renderFaulty(ctx, "bookingnew.jte", model(kind, unit, form.with(problem))));
    }
}
