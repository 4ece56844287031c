package dayglass.web.api;

import dayglass.base.Fault;
import dayglass.sheet.CsvText;
import dayglass.shelf.table.ImportReport;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What addresses that bring in a table read and answer alike. */
public final class TableRequests {
    private TableRequests() {}

    /** Whether the query asks for a preview alone. */
    public static boolean preview(Context ctx) {
        List<String> given = ctx.queryParams("preview");
        if (given.isEmpty()) {
            return false;
        }
        if (given.size() > 1 || !List.of("true", "false").contains(given.get(0))) {
            throw Requests.badParameter("preview", "it must be given once, as true or false");
        }
        return given.get(0).equals("true");
    }

    /** CSV as a text of JSON. */
    public static Reader<CsvText> csv() {
        return (json, place) -> {
            Read<String> text = Readers.wholeText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            return CsvText.read(text.get().getBytes(StandardCharsets.UTF_8))
                    .fold(
                            Read::good,
                            problem -> place.fault(problem.faults().stream()
                                    .map(Fault::message)
                                    .findFirst()
                                    .orElse(problem.detail())));
        };
    }

    public static Json columns(List<ImportReport.Column> columns) {
        return Json.list(columns.stream().map(TableRequests::column).toList());
    }

    public static Json faulty(List<ImportReport.Bad> faulty) {
        return Json.list(faulty.stream().map(TableRequests::bad).toList());
    }

    private static Json column(ImportReport.Column column) {
        Json.Members members = Json.object().put("number", column.number()).put("heading", column.heading());
        column.field().ifPresent(field -> members.put("field", field));
        return members.build();
    }

    private static Json bad(ImportReport.Bad bad) {
        return Json.object()
                .put("line", bad.line())
                .put("column", bad.column())
                .put("heading", bad.heading())
                .put("message", bad.message())
                .build();
    }
}
