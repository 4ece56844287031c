package dayglass.support;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The OpenAPI document, and whether answers and bodies keep to it. */
public final class Contract {
    private static final String ADDRESS = "https://contract.test/openapi.json";
    private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch", "head", "options");

    private final JsonNode document;
    private final SchemaRegistry schemas;

    private Contract(String text) {
        this.document = JsonMapper.shared().readTree(text);
        this.schemas =
                SchemaRegistry.withDialect(Dialects.getOpenApi31(), builder -> builder.schemas(Map.of(ADDRESS, text)));
    }

    public static Contract read() {
        try {
            return new Contract(Files.readString(Path.of("openapi/openapi.json")));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    public JsonNode document() {
        return document;
    }

    /** Each as {@code GET /api/jobs/{id}}. */
    public Set<String> operations() {
        Set<String> operations = new TreeSet<>();
        for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                if (METHODS.contains(operation.getKey())) {
                    operations.add(operation.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey());
                }
            }
        }
        return operations;
    }

    /** The path of the document that an address belongs to; one without parameters goes first. */
    public Optional<String> pathOf(String address) {
        String bare = address.replaceFirst("[?#].*", "");
        List<String> paths = new ArrayList<>(document.get("paths").propertyNames());
        paths.sort((one, other) -> Boolean.compare(one.contains("{"), other.contains("{")));
        return paths.stream()
                .filter(path -> bare.matches(Pattern.quote(path).replaceAll("\\{[a-z]+}", "\\\\E[^/]+\\\\Q")))
                .findFirst();
    }

    /** What is wrong with an answer; empty where it is as the document says. */
    public List<String> faultsOf(String method, String address, Reply reply) {
        // HEAD is answered as GET is, without the body.
        boolean head = method.equals("HEAD");
        String named = head ? "get" : method.toLowerCase(Locale.ROOT);
        Optional<JsonNode> operation = pathOf(address).map(path -> document.at(pointer("paths", path, named)));
        if (operation.isEmpty() || operation.get().isMissingNode()) {
            return Set.of(400, 403, 404, 405, 414, 421, 431, 505).contains(reply.status())
                    ? problemFaults(reply)
                    : List.of(reply.status() + " from an operation that is not written down");
        }
        JsonNode response = resolve(operation.get().get("responses").path(Integer.toString(reply.status())));
        if (response.isMissingNode()) {
            return List.of("the status " + reply.status() + " is not written down");
        }
        List<String> faults = new ArrayList<>();
        for (String header : response.path("headers").propertyNames()) {
            if (reply.header(header).isEmpty()) {
                faults.add("the header " + header + " is missing");
            }
        }
        JsonNode content = response.path("content");
        if (content.isMissingNode()) {
            if (!reply.text().isEmpty()) {
                faults.add("a body is not written down");
            }
            return faults;
        }
        JsonNode media = content.path(reply.header("Content-Type").orElse("none"));
        if (media.isMissingNode()) {
            faults.add("the type " + reply.header("Content-Type") + " is not written down");
        } else if (head) {
            if (!reply.text().isEmpty()) {
                faults.add("HEAD is answered with a body");
            }
        } else if (!isBinary(reply.header("Content-Type").orElse(""))) {
            boolean plain = reply.header("Content-Type").orElse("").startsWith("text/");
            String body = plain ? JsonMapper.shared().writeValueAsString(reply.text()) : reply.text();
            faults.addAll(faultsOf(media.get("schema").get("$ref").asString(), body));
        }
        return faults;
    }

    private static boolean isBinary(String type) {
        return type.startsWith("image/")
                || type.equals("application/pdf")
                || type.startsWith("application/vnd.openxmlformats");
    }

    public List<String> problemFaults(Reply reply) {
        List<String> faults = new ArrayList<>(faultsOf("#/components/schemas/Problem", reply.text()));
        if (!reply.header("Content-Type").equals(Optional.of("application/problem+json"))) {
            faults.add("the type is " + reply.header("Content-Type"));
        }
        if (faults.isEmpty() && reply.json().get("status").asInt() != reply.status()) {
            faults.add("the document says another status");
        }
        return faults;
    }

    /** What is wrong with a text by the schema at {@code #/...}. */
    public List<String> faultsOf(String reference, String text) {
        return schemas.getSchema(SchemaLocation.of(ADDRESS + reference)).validate(text, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    public JsonNode resolve(JsonNode node) {
        return node.has("$ref") ? document.at(node.get("$ref").asString().substring(1)) : node;
    }

    private static String pointer(String... steps) {
        StringBuilder pointer = new StringBuilder();
        for (String step : steps) {
            pointer.append('/').append(step.replace("~", "~0").replace("/", "~1"));
        }
        return pointer.toString();
    }
}
