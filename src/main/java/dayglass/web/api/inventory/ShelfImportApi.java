package dayglass.web.api.inventory;

import dayglass.sheet.CsvText;
import dayglass.shelf.table.ImportReport;
import dayglass.shelf.table.ShelfImport;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.TableRequests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code /api/shelf/import}. */
public final class ShelfImportApi {
    private static final int MOST_COLUMNS = 1_000;

    private final ShelfImport tables;

    public ShelfImportApi(ShelfImport tables) {
        this.tables = tables;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/shelf/import", this::bringIn);
    }

    private void bringIn(Context ctx) {
        Requests.onlyParameters(ctx, "preview");
        boolean preview = TableRequests.preview(ctx);
        ShelfImport.Table table = Requests.body(ctx, Fields.object(ShelfImportApi::table));
        ImportReport report = Refusal.require(preview ? tables.preview(table) : tables.bringIn(table));
        Replies.json(ctx, json(table.what(), report));
    }

    private static Read<ShelfImport.Table> table(Fields fields) {
        Map<String, ShelfImport.What> kinds = new LinkedHashMap<>();
        for (ShelfImport.What what : ShelfImport.What.values()) {
            kinds.put(what.word(), what);
        }
        Read<ShelfImport.What> what = fields.required("what", Readers.word(kinds));
        Read<CsvText> text = fields.required("text", TableRequests.csv());
        Read<Optional<Map<Integer, String>>> columns = fields.optional("columns", columns());
        Read<Boolean> applyChanges = fields.optional("applyChanges", Readers.yesOrNo(), false);
        return fields.build(() -> new ShelfImport.Table(what.get(), text.get(), columns.get(), applyChanges.get()));
    }

    private static Reader<Map<Integer, String>> columns() {
        Reader<Map.Entry<Integer, String>> column = Fields.object(fields -> {
            Read<Integer> number = fields.required("number", Readers.whole(1, MOST_COLUMNS));
            Read<String> field = fields.required("field", Readers.name());
            return fields.build(() -> Map.entry(number.get(), field.get()));
        });
        return (json, place) -> {
            Read<List<Map.Entry<Integer, String>>> entries =
                    Readers.list(column).read(json, place);
            if (!entries.isGood()) {
                return Read.bad();
            }
            Map<Integer, String> columns = new LinkedHashMap<>();
            for (int at = 0; at < entries.get().size(); at++) {
                Map.Entry<Integer, String> entry = entries.get().get(at);
                if (columns.putIfAbsent(entry.getKey(), entry.getValue()) != null) {
                    return place.entry(at).member("number").fault("is given twice: keep one");
                }
            }
            return Read.good(columns);
        };
    }

    private static Json json(ShelfImport.What what, ImportReport report) {
        return Json.object()
                .put("preview", report.preview())
                .put("what", what.word())
                .put("separator", String.valueOf(report.separator()))
                .put("columns", TableRequests.columns(report.columns()))
                .put(
                        "added",
                        Json.list(report.added().stream()
                                .map(ShelfImportApi::added)
                                .toList()))
                .put(
                        "changed",
                        Json.list(report.changed().stream()
                                .map(ShelfImportApi::changed)
                                .toList()))
                .put("unchanged", report.unchanged())
                .put("faulty", TableRequests.faulty(report.faulty()))
                .put(
                        "done",
                        Json.object()
                                .put("added", report.done().added())
                                .put("changed", report.done().changed())
                                .build())
                .build();
    }

    private static Json added(ImportReport.Added added) {
        return Json.object().put("line", added.line()).put("name", added.name()).build();
    }

    private static Json changed(ImportReport.Changed changed) {
        return Json.object()
                .put("line", changed.line())
                .put("name", changed.name())
                .put(
                        "fields",
                        Json.list(changed.fields().stream()
                                .map(each -> Json.object()
                                        .put("field", each.field())
                                        .put("before", each.before())
                                        .put("after", each.after())
                                        .build())
                                .toList()))
                .build();
    }
}
