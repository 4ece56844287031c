package dayglass.web.reference;

import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An OpenAPI document as one page of HTML, without scripts. */
final class ReferenceHtml {
    private static final String STYLE = """
            body { font: 16px/1.5 system-ui, sans-serif; max-width: 62rem; margin: 0 auto; padding: 1rem; color: #222; }
            h2 { border-bottom: 1px solid #999; margin-top: 3rem; } h3 { margin: 2.5rem 0 .5rem; }
            code, pre { font: 14px/1.4 ui-monospace, monospace; } pre { background: #f4f2ee; padding: .75rem; overflow: auto; }
            table { border-collapse: collapse; width: 100%; display: block; overflow-x: auto; } td, th { text-align: left; vertical-align: top;
            padding: .25rem .75rem .25rem 0; border-bottom: 1px solid #ddd; } .method { font-weight: 700; }
            nav li { list-style: none; } nav ul { padding: 0; } a { color: #224b7a; }
            @media print { nav { display: none; } h3 { break-after: avoid; } pre { white-space: pre-wrap; } }
            """;

    private final Json.Obj document;
    private final StringBuilder html = new StringBuilder();

    ReferenceHtml(Json.Obj document) {
        this.document = document;
    }

    String page() {
        Json.Obj info = object(document, "info");
        html.append("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\">")
                .append("<meta name=\"viewport\" content=\"width=device-width\"><title>")
                .append(escape(text(info, "title")))
                .append("</title><style>")
                .append(STYLE)
                .append("</style></head><body><h1>")
                .append(escape(text(info, "title")))
                .append("</h1>");
        paragraphs(text(info, "description"));
        html.append("<p>The same for programs: <a href=\"/openapi.json\">/openapi.json</a>.</p><nav><ul>");
        eachOperation((method, path, operation) -> html.append("<li><a href=\"#")
                .append(escape(text(operation, "operationId")))
                .append("\">")
                .append(signature(method, path))
                .append("</a> ")
                .append(escape(text(operation, "summary")))
                .append("</li>"));
        html.append("</ul></nav><h2>Operations</h2>");
        eachOperation(this::operation);
        html.append("<h2>What is sent and answered</h2>");
        object(object(document, "components"), "schemas").members().forEach(this::schema);
        return html.append("</body></html>").toString();
    }

    private interface OperationVisitor {
        void visit(String method, String path, Json.Obj operation);
    }

    private void eachOperation(OperationVisitor visitor) {
        object(document, "paths")
                .members()
                .forEach((path, item) -> ((Json.Obj) item).members().forEach((method, each) -> {
                    if (each instanceof Json.Obj operation) {
                        visitor.visit(method.toUpperCase(Locale.ROOT), path, operation);
                    }
                }));
    }

    private void operation(String method, String path, Json.Obj operation) {
        html.append("<h3 id=\"")
                .append(escape(text(operation, "operationId")))
                .append("\">")
                .append(signature(method, path))
                .append("</h3><p>")
                .append(escape(text(operation, "summary")))
                .append(".</p>");
        paragraphs(text(operation, "description"));
        parameters(list(operation, "parameters"));
        if (operation.members().get("requestBody") instanceof Json.Obj body) {
            html.append("<p>Body:</p>");
            content(resolve(body));
        }
        object(operation, "responses").members().forEach((status, response) -> {
            Json.Obj resolved = resolve((Json.Obj) response);
            html.append("<p><strong>")
                    .append(escape(status))
                    .append("</strong> ")
                    .append(escape(text(resolved, "description")))
                    .append("</p>");
            content(resolved);
        });
    }

    private void parameters(List<Json> parameters) {
        if (parameters.isEmpty()) {
            return;
        }
        html.append("<table><tr><th>Parameter</th><th>Where</th><th>What</th></tr>");
        for (Json parameter : parameters) {
            Json.Obj resolved = resolve((Json.Obj) parameter);
            row(code(text(resolved, "name")), escape(text(resolved, "in")), escape(text(resolved, "description")));
        }
        html.append("</table>");
    }

    private void content(Json.Obj holder) {
        object(holder, "content").members().forEach((type, media) -> {
            Json.Obj mediaType = (Json.Obj) media;
            html.append("<p>")
                    .append(code(type))
                    .append(", ")
                    .append(type(object(mediaType, "schema")))
                    .append("</p>");
            Optional.ofNullable(mediaType.members().get("example")).ifPresent(this::example);
            object(mediaType, "examples").members().values().forEach(each -> {
                Json.Obj example = resolve((Json.Obj) each);
                Optional.ofNullable(example.members().get("value")).ifPresent(this::example);
            });
        });
    }

    private void example(Json value) {
        html.append("<pre>").append(escape(JsonPrint.pretty(value).strip())).append("</pre>");
    }

    private void schema(String name, Json json) {
        Json.Obj schema = (Json.Obj) json;
        html.append("<h3 id=\"schema-")
                .append(escape(name))
                .append("\">")
                .append(escape(name))
                .append("</h3>");
        paragraphs(text(schema, "description"));
        Json.Obj properties = object(schema, "properties");
        if (properties.members().isEmpty()) {
            html.append("<p>").append(type(schema)).append("</p>");
            return;
        }
        List<Json> required = list(schema, "required");
        html.append("<table><tr><th>Member</th><th>Form</th><th>What</th></tr>");
        properties
                .members()
                .forEach((member, value) -> row(
                        code(member) + (required.contains(Json.text(member)) ? "" : " (optional)"),
                        type((Json.Obj) value),
                        escape(text((Json.Obj) value, "description"))));
        html.append("</table>");
    }

    /** The form of a value in a word, linked where it is described. */
    private static String type(Json.Obj schema) {
        String reference = text(schema, "$ref");
        if (!reference.isEmpty()) {
            String name = reference.substring(reference.lastIndexOf('/') + 1);
            return "<a href=\"#schema-" + escape(name) + "\">" + escape(name) + "</a>";
        }
        List<String> words = new ArrayList<>();
        for (String choice : List.of("oneOf", "anyOf", "allOf")) {
            list(schema, choice).forEach(each -> words.add(type((Json.Obj) each)));
        }
        if (!words.isEmpty()) {
            return String.join(" or ", words);
        }
        if (schema.members().get("items") instanceof Json.Obj items) {
            return "list of " + type(items);
        }
        return escape(text(schema, "type"))
                + (text(schema, "pattern").isEmpty() ? "" : " " + code(text(schema, "pattern")));
    }

    private Json.Obj resolve(Json.Obj json) {
        String reference = text(json, "$ref");
        Json.Obj found = reference.isEmpty() ? json : document;
        if (!reference.isEmpty()) {
            for (String step : List.of(reference.substring(2).split("/", -1))) {
                found = object(found, step);
            }
        }
        return found;
    }

    private void paragraphs(String text) {
        for (String paragraph : List.of(text.split("\n\n", -1))) {
            if (!paragraph.isBlank()) {
                html.append("<p>").append(escape(paragraph)).append("</p>");
            }
        }
    }

    private void row(String... cells) {
        html.append("<tr>");
        for (String cell : cells) {
            html.append("<td>").append(cell).append("</td>");
        }
        html.append("</tr>");
    }

    private static String signature(String method, String path) {
        return "<span class=\"method\">" + escape(method) + "</span> " + code(path);
    }

    private static String code(String text) {
        return "<code>" + escape(text) + "</code>";
    }

    private static Json.Obj object(Json.Obj json, String name) {
        return json.members().get(name) instanceof Json.Obj found
                ? found
                : Json.object().build();
    }

    private static List<Json> list(Json.Obj json, String name) {
        return json.members().get(name) instanceof Json.Arr found ? found.entries() : List.of();
    }

    private static String text(Json.Obj json, String name) {
        Json value = json.members().get(name);
        if (value instanceof Json.Arr list) {
            return String.join(
                    " or ",
                    list.entries().stream()
                            .map(each -> ((Json.Text) each).value())
                            .toList());
        }
        return value instanceof Json.Text text ? text.value() : "";
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
