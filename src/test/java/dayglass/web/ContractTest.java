package dayglass.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.app.ServerRoutes;
import dayglass.support.Contract;
import dayglass.support.Reply;
import dayglass.support.Served;
import dayglass.wire.costing.CostingRequestReader;
import io.javalin.Javalin;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The document is a good one, says what the server answers, and is shown for reading. */
class ContractTest {
    private static final Set<HandlerType> METHODS =
            Set.of(HandlerType.GET, HandlerType.POST, HandlerType.PUT, HandlerType.DELETE, HandlerType.PATCH);

    private final Contract contract = Contract.read();

    @TempDir
    Path folder;

    @Test
    void theDocumentListsTheRoutesOfTheInterfaceAndNoOthers() {
        Set<String> routes = new TreeSet<>();
        try (Rooms rooms = Served.roomsAt(folder, "2026-11-25")) {
            Javalin javalin =
                    Javalin.create(config -> ServerRoutes.of(rooms).forEach(each -> each.accept(config.routes)));
            javalin.unsafe.internalRouter.allHttpHandlers().stream()
                    .filter(each -> METHODS.contains(each.endpoint.method) && each.endpoint.path.startsWith("/api/"))
                    .forEach(each -> routes.add(each.endpoint.method.name() + " " + each.endpoint.path));
        }
        assertEquals(contract.operations(), routes);
    }

    /** Whoever reloads the page of a refused form asks for the address that the form was sent to. */
    @Test
    void everyAddressThatTakesAFormAnswersGet() {
        Set<String> forms = new TreeSet<>();
        try (Rooms rooms = Served.roomsAt(folder, "2026-11-25")) {
            Javalin javalin =
                    Javalin.create(config -> ServerRoutes.of(rooms).forEach(each -> each.accept(config.routes)));
            var router = javalin.unsafe.internalRouter;
            router.allHttpHandlers().stream()
                    .map(each -> each.endpoint)
                    .filter(each -> each.method.equals(HandlerType.POST) && !each.path.startsWith("/api/"))
                    .forEach(each -> forms.add(each.path));
            assertTrue(forms.size() > 20, forms.toString());
            router.allHttpHandlers().stream()
                    .map(each -> each.endpoint)
                    .filter(each -> each.method.equals(HandlerType.GET))
                    .forEach(each -> forms.remove(each.path));
        }
        assertEquals(Set.of(), forms);
    }

    @Test
    void everyExampleKeepsToItsSchema() {
        List<String> faults = new ArrayList<>();
        List<JsonNode> media = new ArrayList<>();
        collectMedia(contract.document(), media);
        int examples = 0;
        for (JsonNode each : media) {
            String schema = each.get("schema").get("$ref").asString();
            List<JsonNode> values = new ArrayList<>();
            if (each.has("example")) {
                values.add(each.get("example"));
            }
            each.path("examples").forEach(example -> values.add(example.get("value")));
            for (JsonNode value : values) {
                examples++;
                contract.faultsOf(schema, value.toString()).forEach(fault -> faults.add(schema + ": " + fault));
            }
        }
        assertEquals(List.of(), faults);
        assertTrue(examples > 60, examples + " examples");
    }

    private static void collectMedia(JsonNode node, List<JsonNode> into) {
        if (node.isObject() && node.has("schema") && (node.has("example") || node.has("examples")) && !node.has("in")) {
            into.add(node);
        }
        node.forEach(each -> collectMedia(each, into));
    }

    @Test
    void everyOperationHasASummaryAnExampleAndItsErrorAnswers() {
        for (Map.Entry<String, JsonNode> path : contract.document().get("paths").properties()) {
            for (JsonNode operation : path.getValue()) {
                String name = operation.get("operationId").asString();
                assertFalse(operation.get("summary").asString().isBlank(), name);
                assertTrue(operation.get("responses").has("421"), name);
                for (JsonNode response : operation.get("responses")) {
                    contract.resolve(response)
                            .path("content")
                            .forEach(media -> assertTrue(media.has("example") || media.has("examples"), name));
                }
            }
        }
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        List<JsonNode> references = new ArrayList<>();
        collectReferences(contract.document(), references);
        assertTrue(references.size() > 100);
        assertEquals(
                List.of(),
                references.stream()
                        .filter(reference -> contract.document()
                                .at(reference.asString().substring(1))
                                .isMissingNode())
                        .toList());
    }

    private static void collectReferences(JsonNode node, List<JsonNode> into) {
        if (node.isObject() && node.has("$ref")) {
            into.add(node.get("$ref"));
        }
        node.forEach(each -> collectReferences(each, into));
    }

    @Test
    void theExamplesOfRequestsAreReadWithoutFaults() {
        JsonNode request =
                contract.document().at("/paths/~1api~1costings/post/requestBody/content/application~1json/example");
        assertEquals(
                List.of(),
                CostingRequestReader.read(request.toString().getBytes(StandardCharsets.UTF_8))
                        .fold(question -> List.of(), faults -> faults));
    }

    @Test
    void anAnswerThatIsNotWrittenDownIsCaught() {
        Map<String, List<String>> json = Map.of("Content-Type", List.of("application/json"), "ETag", List.of("\"1\""));
        assertEquals(List.of(), contract.faultsOf("GET", "/api/suppliers/1", reply(200, json, 1)));
        assertFalse(contract.faultsOf("GET", "/api/suppliers/1", reply(202, json, 1))
                .isEmpty());
        assertFalse(contract.faultsOf("GET", "/api/suppliers/1", reply(200, json, "\"one\""))
                .isEmpty());
        assertFalse(contract.faultsOf("GET", "/api/suppliers/1", reply(200, Map.of(), 1))
                .isEmpty());
        assertFalse(
                contract.faultsOf("GET", "/api/lenses/1", reply(200, json, 1)).isEmpty());
    }

    private static Reply reply(int status, Map<String, List<String>> headers, Object id) {
        return new Reply(status, headers, "{\"id\": " + id + ", \"version\": 1, \"name\": \"Quay\"}");
    }

    @Test
    void theReferenceShowsEveryOperationWithoutScripts() throws Exception {
        try (Served served = Served.in(folder)) {
            java.net.http.HttpClient client = java.net.http.HttpClient.newHttpClient();
            String page = client.send(
                            java.net.http.HttpRequest.newBuilder(
                                            java.net.URI.create("http://127.0.0.1:" + served.port() + "/reference"))
                                    .build(),
                            java.net.http.HttpResponse.BodyHandlers.ofString())
                    .body();
            for (JsonNode path : contract.document().get("paths")) {
                path.forEach(operation -> assertTrue(
                        page.contains("<h3 id=\"" + operation.get("operationId").asString() + "\">"),
                        operation.get("operationId").asString()));
            }
            assertFalse(page.contains("<script"));
            String document = client.send(
                            java.net.http.HttpRequest.newBuilder(
                                            java.net.URI.create("http://127.0.0.1:" + served.port() + "/openapi.json"))
                                    .build(),
                            java.net.http.HttpResponse.BodyHandlers.ofString())
                    .body();
            assertEquals(
                    contract.document(),
                    tools.jackson.databind.json.JsonMapper.shared().readTree(document));
        }
    }
}
