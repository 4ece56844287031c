package dayglass.storage;

import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Facts that are kept as text, in the form that they have in a costing request. */
public final class FactsJson {
    private FactsJson() {}

    public static String texts(List<String> texts) {
        return JsonPrint.pretty(Json.texts(texts));
    }

    public static List<String> texts(String json) {
        return read(Readers.list(Readers.name()), json);
    }

    private static <T> T read(Reader<T> reader, String json) {
        Checked<T> checked = reader.read(json.getBytes(StandardCharsets.UTF_8));
        return checked.fold(value -> value, faults -> {
            throw new IllegalStateException("the database holds what it should not: " + faults);
        });
    }
}
