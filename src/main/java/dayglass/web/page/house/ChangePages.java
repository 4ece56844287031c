package dayglass.web.page.house;

import dayglass.base.Stored;
import dayglass.house.Change;
import dayglass.house.Changes;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.web.page.Html;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.JsonText;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Who changed what, the newest first; of everything or of one thing. */
public final class ChangePages {
    private static final int MOST = 200;

    /**
     * One change.
     *
     * @param differences what it made different, as far as the change before it is on the page
     * @param facts as they were after it, as text; empty after a removal
     */
    public record Row(
            String when,
            String who,
            String deed,
            String thing,
            String address,
            List<String> differences,
            String facts) {
        public Row {
            differences = List.copyOf(differences);
        }
    }

    private final Household household;
    private final Html html;

    ChangePages(Household household, Html html) {
        this.household = household;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/house/changes", this::show);
    }

    private void show(Context ctx) {
        Optional<String> noun = Optional.ofNullable(ctx.queryParam("noun"));
        String id = Optional.ofNullable(ctx.queryParam("id")).orElse("");
        OptionalLong thing =
                id.matches("[1-9][0-9]{0,17}") ? OptionalLong.of(Long.parseLong(id)) : OptionalLong.empty();
        List<Stored<Change.Id, Change>> newest = household.changes().newest(new Changes.Of(noun, thing), MOST);
        String about = noun.map(word -> thing.isPresent() ? word + " " + thing.getAsLong() : "every " + word)
                .orElse("everything");
        html.render(ctx, "changes.jte", Map.of("about", about, "rows", rows(newest)));
    }

    private List<Row> rows(List<Stored<Change.Id, Change>> newest) {
        ZoneId zone = household.settings().now().facts().zone();
        Map<Person.Id, String> names = household.names();
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < newest.size(); at++) {
            Change change = newest.get(at).facts();
            Optional<Change> before = newest.subList(at + 1, newest.size()).stream()
                    .map(Stored::facts)
                    .filter(older -> older.noun().equals(change.noun()) && older.thing() == change.thing())
                    .findFirst();
            rows.add(new Row(
                    Words.moment(change.madeAt(), zone),
                    names.getOrDefault(change.by(), "person " + change.by().number()),
                    change.deed().word(),
                    change.noun() + " " + change.thing(),
                    "/house/changes?noun=" + change.noun().replace(" ", "+") + "&id=" + change.thing(),
                    differences(before.flatMap(Change::facts), change.facts()),
                    change.facts().orElse("")));
        }
        return rows;
    }

    private static List<String> differences(Optional<String> before, Optional<String> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return List.of();
        }
        Map<String, Json> old = members(before.get());
        Map<String, Json> now = members(after.get());
        List<String> differences = new ArrayList<>();
        now.forEach((name, value) -> {
            Json was = old.getOrDefault(name, Json.nothing());
            if (!name.equals("version") && !was.equals(value)) {
                differences.add(name.replace('_', ' ') + ": " + text(was) + " → " + text(value));
            }
        });
        old.forEach((name, value) -> {
            if (!now.containsKey(name)) {
                differences.add(name.replace('_', ' ') + ": " + text(value) + " → nothing");
            }
        });
        return differences;
    }

    private static Map<String, Json> members(String json) {
        return JsonText.parse(json.getBytes(StandardCharsets.UTF_8))
                .fold(value -> value instanceof Json.Obj object ? object.members() : Map.of(), faults -> Map.of());
    }

    private static String text(Json value) {
        if (value instanceof Json.Text words) {
            return words.value();
        }
        return value instanceof Json.Null ? "nothing" : JsonPrint.pretty(value).strip();
    }
}
