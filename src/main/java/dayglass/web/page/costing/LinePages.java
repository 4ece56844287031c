package dayglass.web.page.costing;

import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.CostingLines;
import dayglass.books.file.LineExport;
import dayglass.planning.KeptCosting;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;

/** A costing's lines as files for the accountant, with the production's cost codes. */
final class LinePages {
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

    static void send(Context ctx, Stored<KeptCosting.Id, KeptCosting> costing, LineFile file, CostCodes codes) {
        CostingLines lines = CostingLines.of(costing, codes);
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
