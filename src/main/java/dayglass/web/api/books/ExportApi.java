package dayglass.web.api.books;

import dayglass.books.entry.Entries;
import dayglass.books.export.EntryExport;
import dayglass.books.export.Layout;
import dayglass.books.export.Layouts;
import dayglass.web.api.Requests;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** {@code /api/jobs/{id}/book-entries.csv}, {@code .xlsx}, {@code .json} and {@code -control.json}: sent as they are read. */
public final class ExportApi {
    private final BooksContext in;
    private final Layouts layouts;

    public ExportApi(BooksContext in, Layouts layouts) {
        this.in = in;
        this.layouts = layouts;
    }

    /** The forms of an export. */
    private enum Form {
        CSV(".csv", "text/csv; charset=utf-8"),
        XLSX(".xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
        JSON(".json", "application/json"),
        CONTROL("-control.json", "application/json");

        private final String ending;
        private final String type;

        Form(String ending, String type) {
            this.ending = ending;
            this.type = type;
        }

        private void write(EntryExport export, OutputStream out) throws IOException {
            switch (this) {
                case CSV -> export.csv(out);
                case XLSX -> export.xlsx(out);
                case JSON -> export.json(out);
                default -> export.controlJson(out);
            }
        }
    }

    public void addTo(RoutesConfig routes) {
        for (Form form : Form.values()) {
            routes.get(EntryApi.OF_JOB + form.ending, ctx -> send(ctx, form));
        }
    }

    private void send(Context ctx, Form form) {
        Requests.onlyParameters(ctx, "kind", "costCode", "episode", "supplier", "from", "until", "layout");
        Entries.Which which = EntryApi.which(ctx, in.job(ctx).id());
        Optional<Layout> layout = layout(ctx);
        boolean sent = in.books().entries().reading(which, entries -> {
            EntryExport export = new EntryExport(which, entries, layout);
            ctx.contentType(form.type)
                    .header(
                            "Content-Disposition",
                            "attachment; filename=\"job-" + which.job().number() + "-entries" + form.ending + "\"");
            try {
                form.write(export, ctx.outputStream());
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
            return true;
        });
        if (!sent) {
            throw new IllegalStateException("nothing was sent");
        }
    }

    /** An empty parameter, as a form sends it, is none. */
    private Optional<Layout> layout(Context ctx) {
        if (EntryApi.once(ctx, "layout").filter(said -> !said.isEmpty()).isEmpty()) {
            return Optional.empty();
        }
        Layout.Id id =
                new Layout.Id(Requests.number(ctx, "layout", Long.MAX_VALUE).orElseThrow());
        return Optional.of(layouts.find(id)
                .orElseThrow(() -> Requests.badParameter("layout", "there is no layout with the id " + id.number()))
                .facts());
    }
}
