package dayglass.web.api.catalogue;

import dayglass.sheet.CsvText;
import dayglass.shelf.SupplierJson;
import dayglass.shelf.table.SupplierTables;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.TableRequests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;

/** {@code /api/suppliers/import}. */
public final class SupplierTableApi {
    private final SupplierTables tables;

    public SupplierTableApi(SupplierTables tables) {
        this.tables = tables;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/suppliers/import", this::bringIn);
    }

    private void bringIn(Context ctx) {
        Requests.onlyParameters(ctx, "preview");
        boolean preview = TableRequests.preview(ctx);
        CsvText text = Requests.body(ctx, Fields.object(fields -> {
            Read<CsvText> read = fields.required("text", TableRequests.csv());
            return fields.build(read::get);
        }));
        Replies.json(ctx, json(preview, Refusal.require(preview ? tables.preview(text) : tables.bringIn(text))));
    }

    private static Json json(boolean preview, SupplierTables.Report report) {
        List<Json> suppliers = new ArrayList<>();
        report.suppliers()
                .forEach((line, supplier) -> suppliers.add(Json.object()
                        .put("line", line)
                        .put("supplier", SupplierJson.write(supplier))
                        .build()));
        return Json.object()
                .put("preview", preview)
                .put("separator", String.valueOf(report.separator()))
                .put("columns", TableRequests.columns(report.columns()))
                .put("suppliers", Json.list(suppliers))
                .put("faulty", TableRequests.faulty(report.faulty()))
                .build();
    }
}
