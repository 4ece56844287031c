package dayglass.planning;

import dayglass.wire.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The plain values inside a small tree of JSON, by their path: {@code blocks/0/price}. */
final class Leaves {
    private Leaves() {}

    static Map<String, String> of(@Nullable Json json) {
        Map<String, String> leaves = new LinkedHashMap<>();
        if (json != null) {
            collect("", json, leaves);
        }
        return leaves;
    }

    private static void collect(String path, Json json, Map<String, String> into) {
        if (json instanceof Json.Obj object) {
            object.members().forEach((name, value) -> collect(below(path, name), value, into));
        } else if (json instanceof Json.Arr list) {
            List<Json> entries = list.entries();
            for (int at = 0; at < entries.size(); at++) {
                collect(below(path, Integer.toString(at)), entries.get(at), into);
            }
        } else if (json instanceof Json.Text text) {
            into.put(path, text.value());
        } else if (json instanceof Json.Num number) {
            into.put(path, number.literal());
        } else if (json instanceof Json.Bool bool) {
            into.put(path, Boolean.toString(bool.value()));
        }
    }

    private static String below(String path, String step) {
        return path.isEmpty() ? step : path + "/" + step;
    }
}
