package dayglass.web.page.books;

import dayglass.base.Stored;
import dayglass.books.export.EntryColumns;
import dayglass.books.export.Layout;
import dayglass.books.export.Layouts;
import dayglass.shelf.LayoutJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.shelf.RecordPages;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Layouts for exports: a list, and a form in which a column or a code is a line of text. */
public final class LayoutPages extends RecordPages<Layout.Id, Layout> {
    private static final String BECOMES = " = ";

    private final Layouts layouts;
    private final Html html;

    LayoutPages(Layouts layouts, Html html) {
        super(
                html,
                new Kind<>("/books/layouts", "/books/layouts", "books", layouts, Layout.Id::new, LayoutJson.reader()));
        this.layouts = layouts;
        this.html = html;
    }

    /** A layout in the list. */
    public record Row(long id, String name, String columns) {}

    @Override
    public void route(RoutesConfig routes) {
        routes.get(
                "/books/layouts",
                ctx -> html.render(
                        ctx,
                        "layouts.jte",
                        Map.of(
                                "rows",
                                Requests.all(layouts).stream()
                                        .map(LayoutPages::row)
                                        .toList())));
        super.route(routes);
    }

    private static Row row(Stored<Layout.Id, Layout> layout) {
        return new Row(
                layout.id().number(),
                layout.facts().name(),
                layout.facts().columns().stream().map(Layout.Column::heading).collect(Collectors.joining(", ")));
    }

    @Override
    protected String template() {
        return "layout.jte";
    }

    @Override
    protected String name(Layout facts) {
        return "the layout " + facts.name();
    }

    @Override
    protected Json json(Form form) {
        List<Json> columns = lines(form, "/columns").map(LayoutPages::column).toList();
        Json.Members codes = Json.object();
        Map<String, String> byCode = new TreeMap<>();
        lines(form, "/codes").forEach(line -> byCode.put(before(line), after(line)));
        byCode.forEach(codes::put);
        return Json.object()
                .put("name", form.value("/name").strip())
                .put("columns", Json.list(columns))
                .put("codes", codes.build())
                .build();
    }

    private static Stream<String> lines(Form form, String field) {
        return form.value(field).lines().map(String::strip).filter(line -> !line.isEmpty());
    }

    private static Json column(String line) {
        Json.Members column = Json.object().put("column", before(line));
        if (line.contains("=")) {
            column.put("heading", after(line));
        }
        return column.build();
    }

    private static String before(String line) {
        return line.split("=", 2)[0].strip();
    }

    private static String after(String line) {
        return line.contains("=") ? line.split("=", 2)[1].strip() : "";
    }

    @Override
    protected Form form(Layout facts) {
        return Form.EMPTY
                .with("/name", facts.name())
                .with(
                        "/columns",
                        facts.columns().stream()
                                .map(each -> each.heading().equals(each.column())
                                        ? each.column()
                                        : each.column() + BECOMES + each.heading())
                                .collect(Collectors.joining("\n")))
                .with(
                        "/codes",
                        new TreeMap<>(facts.codes())
                                .entrySet().stream()
                                        .map(code -> code.getKey() + BECOMES + code.getValue())
                                        .collect(Collectors.joining("\n")));
    }

    @Override
    protected Map<String, Object> model(Optional<Stored<Layout.Id, Layout>> stored, Form form) {
        return Map.of(
                "id",
                stored.map(layout -> layout.id().number()).orElse(0L),
                "title",
                stored.map(layout -> layout.facts().name()).orElse("A new layout"),
                "names",
                EntryColumns.NAMES,
                "form",
                form);
    }
}
