package dayglass.web.page;

import dayglass.base.Fault;
import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.CostingLines;
import dayglass.books.CostingReference;
import dayglass.books.file.LineExport;
import dayglass.planning.KeptCosting;
import dayglass.web.page.form.Form;
import dayglass.wire.costing.AnswerReader;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A costing's lines as files for the accountant, with the cost codes typed on the page. */
final class LinePages {
    /** Before the id of the option in the name of the field of its cost code. */
    static final String CODE = "code/";

    private LinePages() {}

    /** The files, by their names behind {@code /costings/N/}. */
    enum LineFile {
        PAYABLE_CSV("lines.csv", "text/csv; charset=utf-8"),
        WEIGHED_CSV("weighed.csv", "text/csv; charset=utf-8"),
        XLSX("lines.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
        CONTROL_JSON("lines-control.json", "application/json");

        final String path;
        final String type;

        LineFile(String path, String type) {
            this.path = path;
            this.type = type;
        }

        private void write(LineExport export, OutputStream out) throws IOException {
            switch (this) {
                case PAYABLE_CSV -> export.csv(out);
                case WEIGHED_CSV -> export.weighedCsv(out);
                case XLSX -> export.xlsx(out);
                default -> export.controlJson(out);
            }
        }
    }

    static Form form(Context ctx) {
        return Form.sent(ctx.queryParamMap());
    }

    private static CostCodes codes(Form form) {
        Map<String, String> codes = new LinkedHashMap<>();
        form.values().forEach((name, value) -> {
            if (name.startsWith(CODE)) {
                codes.put(name.substring(CODE.length()), value);
            }
        });
        return new CostCodes(codes);
    }

    /** What is wrong with the codes typed, each at its field. */
    static List<Fault> faults(Form form, KeptCosting costing) {
        CostCodes codes = codes(form);
        return codes.faults(costing.question(), "").stream()
                .map(fault -> new Fault(
                        CODE + fault.pointer().substring(1).replace("~1", "/").replace("~0", "~"), fault.message()))
                .toList();
    }

    static void send(Context ctx, Stored<KeptCosting.Id, KeptCosting> costing, LineFile file, Form form) {
        KeptCosting facts = costing.facts();
        CostingReference reference = new CostingReference(
                String.valueOf(costing.id().number()),
                facts.summary().createdAt(),
                facts.request().sha256(),
                facts.answer().sha256());
        CostingLines lines = CostingLines.of(
                reference, facts.question(), AnswerReader.read(facts.answer().json()), codes(form));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            file.write(new LineExport(lines), out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory took no more", e);
        }
        ctx.contentType(file.type)
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"costing-" + costing.id().number() + "-" + file.path + "\"")
                .result(out.toByteArray());
    }
}
