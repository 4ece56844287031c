package dayglass.wire.verdict;

import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.JsonText;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Published percentages a year of the price, each table by its name. For users who fall under them; no tax advice. */
public record PublishedTables(String source, Map<String, List<BigDecimal>> byName) {
    public static final PublishedTables KNOWN = read();

    private static PublishedTables read() {
        try (InputStream in = PublishedTables.class.getResourceAsStream("percentage-tables.json")) {
            byte[] text = Objects.requireNonNull(in, "the tables are not there").readAllBytes();
            Json json = JsonText.parse(text).fold(good -> good, faults -> Json.nothing());
            return Fields.object(PublishedTables::tables).readAll(json).fold(tables -> tables, faults -> {
                throw new IllegalStateException("the tables cannot be read: " + faults);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Read<PublishedTables> tables(Fields fields) {
        Read<String> source = fields.required("source", Readers.name());
        Map<String, List<BigDecimal>> byName = new LinkedHashMap<>();
        fields.required("tables", Readers.list(Fields.object(table -> table(table, byName))));
        return fields.build(() -> new PublishedTables(source.get(), byName));
    }

    private static Read<String> table(Fields fields, Map<String, List<BigDecimal>> into) {
        Read<String> name = fields.required("name", Readers.name());
        Read<List<BigDecimal>> percents =
                fields.required("percents", Readers.list(Readers.anyText().map(BigDecimal::new)));
        return fields.build(() -> {
            into.put(name.get(), percents.get());
            return name.get();
        });
    }
}
