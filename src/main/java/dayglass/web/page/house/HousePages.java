package dayglass.web.page.house;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.house.Role;
import dayglass.web.api.house.HouseJson;
import dayglass.web.api.house.PersonApi;
import dayglass.web.api.house.WhoIsThere;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The house: its settings and people, each changed on the page, and the choice of who one is. */
public final class HousePages {
    /** Somebody in the list, with the form that changes what is known. */
    public record Row(long id, String name, String role, boolean gone, Form form) {}

    private static final String PAGE = "/house";
    private static final int YEAR_SECONDS = 365 * 24 * 60 * 60;
    private static final Pattern WHOLE = Pattern.compile("0|[1-9][0-9]{0,8}");

    /** An address on this server: after a first slash no other and no backslash. */
    private static final Pattern OWN_ADDRESS = Pattern.compile("/(?:[A-Za-z0-9_.-][A-Za-z0-9_./-]*)?");

    private final Household household;
    private final Html html;

    public HousePages(Household household, Html html) {
        this.household = household;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get(PAGE, ctx -> html.render(ctx, "house.jte", model(settingsForm(), Optional.empty(), Form.EMPTY)));
        routes.post(PAGE, this::changeSettings);
        FormRoutes.take(routes, PAGE + "/people", PAGE, this::add);
        FormRoutes.take(routes, PAGE + "/people/{id}", PAGE, this::change);
        FormRoutes.take(routes, WhoIsThere.CHOICE, PAGE, this::choose);
        new ChangePages(household, html).route(routes);
    }

    private Map<String, Object> model(Form settings, Optional<Person.Id> changed, Form person) {
        List<Row> people = household.everybody().stream()
                .map(each -> row(each, Optional.of(each.id()).equals(changed) ? person : form(each)))
                .toList();
        return Map.of(
                "settings",
                settings,
                "zones",
                ZoneId.getAvailableZoneIds().stream().sorted().toList(),
                "roles",
                Arrays.stream(Role.values()).map(Role::word).toList(),
                "people",
                people,
                "person",
                changed.isPresent() ? Form.EMPTY : person);
    }

    private static Row row(Stored<Person.Id, Person> person, Form form) {
        Person facts = person.facts();
        return new Row(person.id().number(), facts.name(), facts.role().word(), facts.gone(), form);
    }

    private Form settingsForm() {
        Stored<House.Id, House> house = household.settings().now();
        return FormJson.form(HouseJson.facts(house.facts())).with("version", String.valueOf(house.version()));
    }

    private static Form form(Stored<Person.Id, Person> person) {
        return Form.EMPTY
                .with("/name", person.facts().name())
                .with("/role", person.facts().role().word())
                .with("/gone", person.facts().gone() ? "yes" : "")
                .with("version", String.valueOf(person.version()));
    }

    private void changeSettings(Context ctx) {
        Form form = Requests.form(ctx);
        String minutes = form.value("/turnaroundMinutes").strip();
        Json json = Json.object()
                .put("name", form.value("/name").strip())
                .put("timeZone", form.value("/timeZone").strip())
                .put("currency", form.value("/currency").strip())
                .put("outTime", form.value("/outTime").strip())
                .put("backTime", form.value("/backTime").strip())
                .put("turnaroundMinutes", WHOLE.matcher(minutes).matches() ? new Json.Num(minutes) : Json.text(minutes))
                .build();
        answer(
                ctx,
                read(HouseJson.reader(), json)
                        .then(house -> household
                                .settings()
                                .change(new Stored<>(House.Id.ONLY, Requests.version(form), house))),
                problem -> model(form.with(problem), Optional.empty(), Form.EMPTY));
    }

    private void add(Context ctx) {
        Form form = Requests.form(ctx);
        answer(
                ctx,
                read(PersonApi.reader(), person(form)).then(household.people()::add),
                problem -> model(settingsForm(), Optional.empty(), form.with(problem)));
    }

    private void change(Context ctx) {
        Stored<Person.Id, Person> person = Requests.find(ctx, household.people(), Person.Id::new);
        Form form = Requests.form(ctx);
        answer(
                ctx,
                read(PersonApi.reader(), person(form))
                        .then(facts ->
                                household.people().change(new Stored<>(person.id(), Requests.version(form), facts))),
                problem -> model(settingsForm(), Optional.of(person.id()), form.with(problem)));
    }

    private static Json person(Form form) {
        return Json.object()
                .put("name", form.value("/name").strip())
                .put("role", form.value("/role"))
                .put("gone", form.has("/gone"))
                .build();
    }

    private static <T> Outcome<T> read(Reader<T> reader, Json json) {
        return reader.readAt("", json, Listener.PERSON).outcome();
    }

    private <T> void answer(
            Context ctx, Outcome<T> outcome, java.util.function.Function<Problem, Map<String, Object>> again) {
        Optional<Map<String, Object>> faulty =
                outcome.fold(done -> Optional.empty(), problem -> Optional.of(again.apply(problem)));
        faulty.ifPresentOrElse(
                model -> html.renderFaulty(ctx, "house.jte", model), () -> ctx.redirect(PAGE, HttpStatus.SEE_OTHER));
    }

    /** Remembered by the browser alone; no password is asked on one person's machine. */
    private void choose(Context ctx) {
        Form form = Requests.form(ctx);
        String chosen = form.value("person");
        if (household.there().stream()
                .noneMatch(each -> String.valueOf(each.id().number()).equals(chosen))) {
            throw Requests.missing(ctx);
        }
        Cookie cookie = new Cookie(WhoIsThere.COOKIE, chosen, "/", YEAR_SECONDS, false, true);
        cookie.setSameSite(SameSite.STRICT);
        ctx.cookie(cookie);
        String back = form.value("back");
        ctx.redirect(OWN_ADDRESS.matcher(back).matches() ? back : "/", HttpStatus.SEE_OTHER);
    }
}
