package dayglass.shelf.table;

import dayglass.wire.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An object in the making: values are put at their pointers, and what is named by row numbers becomes a list. */
final class JsonTree {
    private final Map<String, Object> root = new LinkedHashMap<>();

    /** What stands at a pointer, whose steps need no escapes. */
    static Optional<Json> at(Json json, String pointer) {
        Json found = json;
        for (String step : steps(pointer)) {
            if (found instanceof Json.Obj object && object.members().containsKey(step)) {
                found = object.members().get(step);
            } else if (found instanceof Json.Arr list
                    && isRow(step)
                    && Integer.parseInt(step) < list.entries().size()) {
                found = list.entries().get(Integer.parseInt(step));
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(found);
    }

    @SuppressWarnings("unchecked") // only maps of this kind are put into the tree
    void put(String pointer, Json value) {
        String[] steps = steps(pointer);
        Map<String, Object> branch = root;
        for (int at = 0; at < steps.length - 1; at++) {
            branch = (Map<String, Object>)
                    branch.computeIfAbsent(steps[at], step -> new LinkedHashMap<String, Object>());
        }
        branch.put(steps[steps.length - 1], value);
    }

    Json json() {
        return object(root);
    }

    private static Json object(Map<?, ?> tree) {
        Json.Members members = Json.object();
        tree.forEach((name, value) -> members.put(String.valueOf(name), value(value)));
        return members.build();
    }

    private static Json value(Object value) {
        if (!(value instanceof Map<?, ?> branch)) {
            return (Json) value;
        }
        boolean rows = branch.keySet().stream().allMatch(name -> isRow(String.valueOf(name)));
        return rows
                ? Json.list(List.copyOf(branch.values()).stream()
                        .map(JsonTree::value)
                        .toList())
                : object(branch);
    }

    private static boolean isRow(String step) {
        return step.matches("[0-9]{1,6}");
    }

    private static String[] steps(String pointer) {
        return pointer.substring(1).split("/", -1);
    }
}
