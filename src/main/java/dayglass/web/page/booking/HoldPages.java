package dayglass.web.page.booking;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.inventory.booking.HoldApi;
import dayglass.web.page.Html;
import dayglass.web.page.form.Form;
import dayglass.web.page.shelf.RecordPages;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Json;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** One hold: a wish in line for a unit. */
final class HoldPages extends RecordPages<Hold.Id, Hold> {
    private static final String EXPIRES = "/expires";
    private static final Pattern WHOLE = Pattern.compile("0|[1-9][0-9]{0,3}");

    private final Units units;
    private final Whereabouts whereabouts;

    HoldPages(Units units, Whereabouts whereabouts, Html html) {
        super(
                html,
                new Kind<>(
                        "/holds",
                        "/bookings?kind=hold",
                        "bookings",
                        whereabouts.holds(),
                        Hold.Id::new,
                        HoldApi.reader(whereabouts)));
        this.units = units;
        this.whereabouts = whereabouts;
    }

    @Override
    protected String template() {
        return "hold.jte";
    }

    @Override
    protected String name(Hold facts) {
        return "the hold for " + facts.subject();
    }

    @Override
    protected Form blank(Context ctx) {
        return Form.EMPTY
                .with("/unitId", Optional.ofNullable(ctx.queryParam("unit")).orElse(""))
                .with("/rank", "1");
    }

    private ZoneId zone() {
        return whereabouts.settings().now().facts().zone();
    }

    @Override
    protected Json json(Form form) {
        Json.Members members = Json.object();
        number(members, "unitId", form);
        EntryForm.put(members, "out", ClockField.text(form, EntryForm.OUT, zone()));
        EntryForm.put(members, "back", ClockField.text(form, EntryForm.BACK, zone()));
        number(members, "rank", form);
        EntryForm.put(members, "expires", ClockField.text(form, EXPIRES, zone()));
        EntryForm.put(members, "subject", form.value(EntryForm.SUBJECT).strip());
        return members.build();
    }

    private static void number(Json.Members members, String name, Form form) {
        String typed = form.value("/" + name).strip();
        if (WHOLE.matcher(typed).matches() || PathNumbers.of(typed).isPresent()) {
            members.put(name, new Json.Num(typed));
        } else {
            EntryForm.put(members, name, typed);
        }
    }

    @Override
    protected Form form(Hold facts) {
        Form form = Form.EMPTY
                .with("/unitId", String.valueOf(facts.unit().number()))
                .with("/rank", String.valueOf(facts.rank()))
                .with(EntryForm.SUBJECT, facts.subject());
        form = ClockField.with(form, EntryForm.OUT, facts.out(), zone());
        form = ClockField.with(form, EntryForm.BACK, facts.back(), zone());
        return ClockField.with(form, EXPIRES, facts.expires(), zone());
    }

    @Override
    protected Map<String, Object> model(Optional<Stored<Hold.Id, Hold>> stored, Form form) {
        return Map.of(
                "id",
                stored.map(hold -> hold.id().number()).orElse(0L),
                "tag",
                PathNumbers.of(form.value("/unitId")).stream()
                        .boxed()
                        .findFirst()
                        .flatMap(id -> units.find(new Unit.Id(id)))
                        .map(unit -> unit.facts().tag())
                        .orElse(""),
                "zone",
                zone(),
                "form",
                form);
    }
}
