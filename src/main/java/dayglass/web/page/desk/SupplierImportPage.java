package dayglass.web.page.desk;

import dayglass.base.Fault;
import dayglass.sheet.CsvText;
import dayglass.shelf.table.SupplierTables;
import dayglass.web.error.Refusal;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** A table of suppliers: looked at first, and brought in by a button of its own. */
final class SupplierImportPage {
    private static final String PAGE = "supplierimport.jte";

    private final SupplierTables tables;
    private final Html html;

    SupplierImportPage(SupplierTables tables, Html html) {
        this.tables = tables;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/import/suppliers", ctx -> html.render(ctx, PAGE, Map.of("form", Form.EMPTY)));
        routes.post("/desk/import/suppliers", this::take);
    }

    private void take(Context ctx) {
        Form sent = Requests.form(ctx);
        byte[] bytes = Requests.fileOrText(ctx, sent, "file", "text");
        Form form = sent.with("text", new String(bytes, StandardCharsets.UTF_8));
        CsvText.read(bytes)
                .fold(
                        text -> {
                            taken(ctx, form, text);
                            return text;
                        },
                        problem -> {
                            List<Fault> faults = problem.faults().stream()
                                    .map(fault -> new Fault("text", fault.message()))
                                    .toList();
                            html.renderFaulty(ctx, PAGE, Map.of("form", form.with(faults)));
                            return problem;
                        });
    }

    /** What was made wrong since it was looked at is looked at again. */
    private void taken(Context ctx, Form form, CsvText text) {
        boolean make = form.value("do").equals("make");
        if (make && tables.bringIn(text).fold(report -> true, problem -> false)) {
            Requests.see(ctx, "/desk");
        } else {
            SupplierTables.Report report = Refusal.require(tables.preview(text));
            html.render(ctx, PAGE, Map.of("form", form, "report", report));
        }
    }
}
