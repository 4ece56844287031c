package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.house.HouseSettings;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.shelf.LensSetJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One set: its members in their order, and who was in it. A member is a field {@code /members/N} of its own. */
public final class SetPages extends RecordPages<LensSet.Id, LensSet> {
    private static final String MEMBERS = "/members/";
    private static final String MATCHED = "matched";

    private final Shelf shelf;
    private final HouseSettings settings;

    SetPages(Shelf shelf, HouseSettings settings, Html html) {
        super(
                html,
                new Kind<>("/shelf/sets", "/shelf/sets", "shelf", shelf.sets(), LensSet.Id::new, LensSetJson.reader()));
        this.shelf = shelf;
        this.settings = settings;
    }

    /** A unit's time in the set. */
    public record Stay(String tag, String since, String until) {}

    @Override
    protected String template() {
        return "set.jte";
    }

    @Override
    protected String name(LensSet facts) {
        return "the set " + facts.name();
    }

    /** Members without gaps between them. */
    @Override
    protected Form ordered(Form sent) {
        Map<Integer, String> members = new TreeMap<>();
        Map<String, String> values = new LinkedHashMap<>();
        FormJson.compact(sent).values().forEach((name, value) -> {
            if (!name.startsWith(MEMBERS)) {
                values.put(name, value);
            } else if (!value.isBlank() && name.substring(MEMBERS.length()).matches("[0-9]{1,6}")) {
                members.put(Integer.valueOf(name.substring(MEMBERS.length())), value);
            }
        });
        int place = 0;
        for (String member : members.values()) {
            values.put(MEMBERS + place++, member);
        }
        return new Form(values, List.of(), "");
    }

    @Override
    protected Json json(Form form) {
        List<Json> members = new ArrayList<>();
        Map<String, String> others = new LinkedHashMap<>();
        form.values().forEach((name, value) -> {
            if (name.startsWith(MEMBERS)) {
                members.add(value.matches("[1-9][0-9]{0,17}") ? new Json.Num(value) : Json.text(value));
            } else {
                others.put(name, value);
            }
        });
        Json.Members json = Json.object();
        ((Json.Obj) FormJson.read(new Form(others, List.of(), ""))).members().forEach(json::put);
        return json.put(MATCHED, form.has(MATCHED))
                .put("members", Json.list(members))
                .build();
    }

    @Override
    protected Form form(LensSet facts) {
        Json.Members members = Json.object();
        LensSetJson.write(members, facts);
        return FormJson.form(members.build()).with(MATCHED, facts.matched() ? "yes" : "");
    }

    @Override
    protected Map<String, Object> model(Optional<Stored<LensSet.Id, LensSet>> stored, Form form) {
        return Map.of(
                "id",
                stored.map(set -> set.id().number()).orElse(0L),
                "title",
                stored.map(set -> set.facts().name()).orElse("A new set"),
                "units",
                units(stored.map(Stored::id)),
                "stays",
                stored.map(set -> stays(set.id())).orElse(List.of()),
                "form",
                form);
    }

    /** The units that are in no other set. */
    private List<Choice> units(Optional<LensSet.Id> self) {
        Map<Unit.Id, LensSet.Id> taken = new HashMap<>();
        Requests.all(shelf.sets()).forEach(set -> set.facts().members().forEach(unit -> taken.put(unit, set.id())));
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "nothing")));
        Requests.all(shelf.units()).stream()
                .filter(unit -> !taken.containsKey(unit.id()) || self.equals(Optional.ofNullable(taken.get(unit.id()))))
                .map(unit -> new Choice(
                        String.valueOf(unit.id().number()), unit.facts().tag()))
                .forEach(choices::add);
        return choices;
    }

    private List<Stay> stays(LensSet.Id set) {
        return shelf.sets().history(set).stream()
                .map(each -> new Stay(
                        shelf.units().find(each.unit()).orElseThrow().facts().tag(),
                        day(each.joinedAt()),
                        each.leftAt().map(this::day).orElse("")))
                .toList();
    }

    private String day(Instant instant) {
        return Words.date(instant.atZone(settings.now().facts().zone()).toLocalDate());
    }
}
