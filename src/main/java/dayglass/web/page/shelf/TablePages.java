package dayglass.web.page.shelf;

import dayglass.base.Outcome;
import dayglass.sheet.CsvText;
import dayglass.shelf.table.ImportReport;
import dayglass.shelf.table.ShelfImport;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Tables that come in and go out. A table is looked at first, as often as the columns are said otherwise; its rows are
 * brought in only by a button of its own.
 */
final class TablePages {
    private static final String SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private static final String CSV = "text/csv; charset=utf-8";
    private static final String COLUMN = "column/";

    private final ShelfImport tables;
    private final Html html;

    TablePages(ShelfImport tables, Html html) {
        this.tables = tables;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get("/shelf/import", ctx -> html.render(ctx, "shelfimport.jte", Map.of("form", Form.EMPTY)));
        routes.post("/shelf/import", this::look);
        for (Map.Entry<String, ShelfImport.What> each : Map.of(
                        "units", ShelfImport.What.UNITS, "models", ShelfImport.What.LENS_MODELS)
                .entrySet()) {
            String path = "/shelf/" + each.getKey();
            routes.get(path + ".csv", ctx -> send(ctx, CSV, tables.csv(each.getValue())));
            routes.get(path + ".xlsx", ctx -> send(ctx, SPREADSHEET, tables.xlsx(each.getValue())));
        }
    }

    private static void send(Context ctx, String type, byte[] file) {
        String name = ctx.path().substring(ctx.path().lastIndexOf('/') + 1);
        ctx.contentType(type)
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(file);
    }

    private void look(Context ctx) {
        Form form = Requests.form(ctx);
        byte[] bytes = Requests.fileOrText(ctx, form, "file", "text");
        Form typed = form.with("text", new String(bytes, StandardCharsets.UTF_8));
        CsvText.read(bytes)
                .fold(
                        text -> {
                            look(ctx, typed, text);
                            return text;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "shelfimport.jte", Map.of("form", typed.with(problem)));
                            return problem;
                        });
    }

    private void look(Context ctx, Form form, CsvText text) {
        ShelfImport.What what = ShelfImport.What.of(form.value("what")).orElse(ShelfImport.What.UNITS);
        boolean said = form.values().keySet().stream().anyMatch(name -> name.startsWith(COLUMN));
        Map<Integer, String> columns = said ? columns(form, text) : tables.guess(what, text);
        boolean changes = form.has("applyChanges");
        ShelfImport.Table table = new ShelfImport.Table(what, text, Optional.of(columns), changes);
        Outcome<ImportReport> outcome =
                form.value("do").equals("bring") ? tables.bringIn(table) : tables.preview(table);
        Form shown = withColumns(form.with("what", what.word()), text, columns);
        outcome.fold(
                report -> {
                    html.render(ctx, "shelfimport.jte", model(what, shown, text, Optional.of(report)));
                    return report;
                },
                problem -> {
                    html.renderFaulty(ctx, "shelfimport.jte", model(what, shown.with(problem), text, Optional.empty()));
                    return problem;
                });
    }

    private static Map<Integer, String> columns(Form form, CsvText text) {
        Map<Integer, String> columns = new LinkedHashMap<>();
        for (int number = 1; number <= text.heading().cells().size(); number++) {
            if (form.has(COLUMN + number)) {
                columns.put(number, form.value(COLUMN + number));
            }
        }
        return columns;
    }

    private static Form withColumns(Form form, CsvText text, Map<Integer, String> columns) {
        Form shown = form;
        for (int number = 1; number <= text.heading().cells().size(); number++) {
            shown = shown.with(COLUMN + number, columns.getOrDefault(number, ""));
        }
        return shown;
    }

    private Map<String, Object> model(ShelfImport.What what, Form form, CsvText text, Optional<ImportReport> report) {
        List<Choice> fields = Stream.concat(
                        Stream.of(new Choice("", "leave it out")),
                        tables.fields(what).stream().map(name -> new Choice(name, name)))
                .toList();
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("form", form);
        model.put("headings", text.heading().cells());
        model.put("samples", samples(text));
        model.put("fields", fields);
        report.ifPresent(each -> model.put("report", each));
        return model;
    }

    /** What stands in the first row below each heading. */
    private static List<String> samples(CsvText text) {
        List<String> samples = new ArrayList<>();
        for (int at = 0; at < text.heading().cells().size(); at++) {
            int column = at;
            samples.add(text.rows().stream()
                    .filter(row -> row.cells().size() > column)
                    .map(row -> row.cells().get(column))
                    .filter(cell -> !cell.isBlank())
                    .findFirst()
                    .orElse(""));
        }
        return samples;
    }
}
