package dayglass.wire.costing;

import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Requests made from a good one by small changes. */
final class Changes {
    private Changes() {}

    /** Applies {@code pointer := JSON}, {@code pointer + "member" : JSON} and {@code - pointer}, parted by ;; */
    static byte[] apply(byte[] text, String changes) {
        String now = JsonPrint.pretty(Requests.json(text));
        for (String change : changes.split(";;", -1)) {
            now = one(now, change.strip().startsWith("+ ") ? " " + change.strip() : change.strip());
        }
        return now.getBytes(StandardCharsets.UTF_8);
    }

    /** The text of a request with so many options of each kind. */
    static String withOptions(int rentals, int purchases, int owned) {
        List<String> rent = new ArrayList<>();
        List<String> buy = new ArrayList<>();
        List<String> own = new ArrayList<>();
        for (int i = 0; i < rentals; i++) {
            rent.add("{\"id\":\"r" + i + "\",\"supplier\":\"s\",\"covers\":{\"a\":1},"
                    + "\"blocks\":[{\"days\":1,\"price\":\"1\"}]}");
        }
        for (int i = 0; i < purchases; i++) {
            buy.add("{\"id\":\"p" + i + "\",\"supplier\":\"s\",\"covers\":{\"a\":1},\"price\":\"1\","
                    + "\"termMonths\":1,\"resale\":{\"lossPercentPerYear\":\"1\"}}");
        }
        for (int i = 0; i < owned; i++) {
            own.add("{\"id\":\"o" + i + "\",\"covers\":{\"a\":1}}");
        }
        return request("{\"slot\":\"a\",\"count\":1}", rent, buy, own);
    }

    /** The text of a request that needs so many slots. */
    static String withSlots(int slots) {
        List<String> needs = new ArrayList<>();
        for (int i = 0; i < slots; i++) {
            needs.add("{\"slot\":\"s" + i + "\",\"count\":1}");
        }
        needs.add(needs.get(0));
        return request(String.join(",", needs), List.of(), List.of(), List.of());
    }

    private static String request(String needs, List<String> rentals, List<String> purchases, List<String> owned) {
        return "{\"job\":\"j\",\"currency\":\"EUR\",\"schedule\":[{\"from\":\"2027-04-05\",\"use\":\"shoot\"}],"
                + "\"needs\":[" + needs + "],\"rentals\":[" + String.join(",", rentals) + "],\"purchases\":["
                + String.join(",", purchases) + "],\"owned\":[" + String.join(",", owned) + "]}";
    }

    private static String one(String text, String change) {
        Json root = Requests.json(text.getBytes(StandardCharsets.UTF_8));
        // A raw value may be no tree at all (a member twice, 01): it goes in as text by way of a mark.
        String mark = "\"@@mark@@\"";
        if (change.startsWith("- ")) {
            return JsonPrint.pretty(put(root, steps(change.substring(2).strip()), null));
        }
        if (change.startsWith(":= ") || change.contains(" := ")) {
            String[] parts = change.split(":= ", 2);
            Json marked = put(root, steps(parts[0].strip()), Json.text("@@mark@@"));
            return JsonPrint.pretty(marked).replace(mark, parts[1].strip());
        }
        String[] parts = change.split(" \\+ ", 2);
        Json marked = put(root, steps(parts[0].strip() + "/@@mark@@"), Json.text("x"));
        return JsonPrint.pretty(marked).replace(mark + " : \"x\"", parts[1].strip());
    }

    private static List<String> steps(String pointer) {
        return pointer.isEmpty()
                ? List.of()
                : List.of(pointer.substring(1).split("/", -1)).stream()
                        .map(step -> step.replace("~1", "/").replace("~0", "~"))
                        .toList();
    }

    private static Json put(Json at, List<String> steps, @Nullable Json value) {
        if (steps.isEmpty()) {
            return Objects.requireNonNull(value);
        }
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        if (at instanceof Json.Arr list) {
            List<Json> entries = new ArrayList<>(list.entries());
            int index = Integer.parseInt(step);
            if (rest.isEmpty() && value == null) {
                entries.remove(index);
            } else if (index == entries.size()) {
                entries.add(Objects.requireNonNull(value));
            } else {
                entries.set(index, put(entries.get(index), rest, value));
            }
            return Json.list(entries);
        }
        Map<String, Json> members = new LinkedHashMap<>(((Json.Obj) at).members());
        if (rest.isEmpty() && value == null) {
            if (members.remove(step) == null) {
                throw new IllegalArgumentException("nothing to remove at " + step);
            }
        } else {
            members.put(step, put(members.getOrDefault(step, Json.nothing()), rest, value));
        }
        return new Json.Obj(members, Set.of());
    }
}
