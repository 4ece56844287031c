package dayglass.shelf;

import dayglass.books.export.EntryColumns;
import dayglass.books.export.Layout;
import dayglass.sheet.FormulaGuard;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** A layout's facts. */
public final class LayoutJson {
    private LayoutJson() {}

    public static Reader<Layout> reader() {
        return Fields.object(fields -> {
            Read<String> name = fields.required("name", Readers.name());
            Read<List<Layout.Column>> columns =
                    fields.required("columns", Readers.notEmpty(Readers.list(LayoutJson.column())));
            Read<Map<String, String>> codes = fields.optional("codes", Readers.words(Readers.name()), Map.of());
            if (columns.isGood()) {
                onceEach(fields, columns.get());
            }
            return fields.build(() -> new Layout(name.get(), columns.get(), codes.get()));
        });
    }

    private static Reader<Layout.Column> column() {
        return Fields.object(fields -> {
            Read<String> column = fields.required("column", LayoutJson::known);
            Read<String> heading = fields.optional(
                    "heading", LayoutJson::heading, column.found().orElse(""));
            return fields.build(() -> new Layout.Column(column.get(), heading.get()));
        });
    }

    private static Read<String> known(Json json, Place place) {
        Read<String> name = Readers.name().read(json, place);
        return name.isGood() && !EntryColumns.NAMES.contains(name.get())
                ? place.fault("\"" + name.get() + "\" is no column of an export: choose one that is")
                : name;
    }

    /** A program that opens a CSV must find words at its head and nothing to run. */
    private static Read<String> heading(Json json, Place place) {
        Read<String> heading = Readers.name().read(json, place);
        return heading.isGood() && !FormulaGuard.harmless(heading.get()).equals(heading.get())
                ? place.fault("\"" + heading.get() + "\" is what a spreadsheet would run: begin it with a letter")
                : heading;
    }

    private static void onceEach(Fields fields, List<Layout.Column> columns) {
        Set<String> headings = new HashSet<>();
        for (int at = 0; at < columns.size(); at++) {
            if (!headings.add(columns.get(at).heading())) {
                fields.place()
                        .member("columns")
                        .entry(at)
                        .member("heading")
                        .fault("\"" + columns.get(at).heading() + "\" heads an earlier column: name this one apart");
            }
        }
    }

    public static void write(Json.Members members, Layout layout) {
        members.put("name", layout.name())
                .put(
                        "columns",
                        Json.list(layout.columns().stream()
                                .map(each -> Json.object()
                                        .put("column", each.column())
                                        .put("heading", each.heading())
                                        .build())
                                .toList()));
        if (!layout.codes().isEmpty()) {
            Json.Members codes = Json.object();
            new TreeMap<>(layout.codes()).forEach(codes::put);
            members.put("codes", codes.build());
        }
    }
}
