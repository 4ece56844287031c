package dayglass.storage;

import dayglass.wire.Json;
import dayglass.wire.JsonText;
import java.nio.charset.StandardCharsets;
import org.jooq.Field;
import org.jooq.Record;

/** A row as JSON: a column with JSON in it as that JSON, one that answers yes or no as a truth, nothing for no value. */
final class RowJson {
    private static final String JSON = "_json";
    private static final String YES_OR_NO = "is_";

    private RowJson() {}

    static Json.Members of(Record row, Field<?> leftOut) {
        Json.Members members = Json.object();
        for (Field<?> field : row.fields()) {
            Object value = row.get(field);
            if (value != null && !field.equals(leftOut)) {
                String name = field.getName();
                members.put(
                        name.endsWith(JSON) ? name.substring(0, name.length() - JSON.length()) : name,
                        json(name, value));
            }
        }
        return members;
    }

    private static Json json(String name, Object value) {
        if (name.endsWith(JSON)) {
            return JsonText.parse(value.toString().getBytes(StandardCharsets.UTF_8))
                    .fold(json -> json, faults -> {
                        throw new IllegalStateException("the column " + name + " holds no JSON: " + faults);
                    });
        }
        if (value instanceof Number number) {
            return name.startsWith(YES_OR_NO) ? Json.bool(number.longValue() != 0) : Json.number(number.longValue());
        }
        return Json.text(value.toString());
    }
}
