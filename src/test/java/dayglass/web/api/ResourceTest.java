package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Each resource is created, read, changed, listed and removed, and changes never overtake each other. */
class ResourceTest {
    @TempDir
    Path folder;

    private Served served;

    @BeforeEach
    void start() {
        served = Served.in(folder);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    /** The facts that the contract gives as an example. */
    private String example(String path) {
        return served.contract()
                .document()
                .get("paths")
                .get(path)
                .at("/post/requestBody/content/application~1json/example")
                .toString();
    }

    private void createAll() {
        for (String path : List.of(
                "/api/suppliers",
                "/api/rate-cards",
                "/api/purchase-offers",
                "/api/lens-models",
                "/api/units",
                "/api/lens-sets",
                "/api/jobs")) {
            Reply created = served.post(path, example(path));
            assertEquals(201, created.status(), created.text());
            assertEquals(path + "/1", created.header("Location").orElseThrow());
            assertEquals("\"1\"", created.etag());
        }
    }

    @Test
    void whatIsCreatedIsReadBackAsItWasSent() {
        createAll();
        for (String path : List.of(
                "/api/rate-cards",
                "/api/purchase-offers",
                "/api/lens-models",
                "/api/units",
                "/api/lens-sets",
                "/api/jobs")) {
            JsonNode sent = tools.jackson.databind.json.JsonMapper.shared().readTree(example(path));
            JsonNode read = served.get(path + "/1").json();
            sent.properties().forEach(member -> assertEquals(member.getValue(), read.get(member.getKey()), path));
            JsonNode listed = served.get(path).json().get("items");
            assertEquals(1, listed.size());
            assertEquals(read, listed.get(0));
        }
    }

    @Test
    void whatIsChangedCarriesANewVersion() {
        createAll();
        for (String path : List.of(
                "/api/rate-cards",
                "/api/purchase-offers",
                "/api/lens-models",
                "/api/units",
                "/api/lens-sets",
                "/api/jobs")) {
            Reply changed = served.put(path + "/1", example(path), "If-Match", "\"1\"");
            assertEquals(200, changed.status(), changed.text());
            assertEquals("\"2\"", changed.etag());
            assertEquals(2, changed.json().get("version").asInt());
            assertEquals("\"2\"", served.get(path + "/1").etag());
        }
    }

    @Test
    void whatIsUsedIsNotRemovedAndSaysByWhat() {
        createAll();
        assertRefused(served.delete("/api/suppliers/1", "If-Match", "*"), 409, "still-used", "rate card 1");
        assertRefused(served.delete("/api/rate-cards/1", "If-Match", "*"), 409, "still-used", "job 1");
        assertRefused(served.delete("/api/purchase-offers/1", "If-Match", "*"), 409, "still-used", "job 1");
        assertRefused(served.delete("/api/units/1", "If-Match", "*"), 409, "still-used", "job 1");
        assertRefused(served.delete("/api/units/1", "If-Match", "*"), 409, "still-used", "set Heron set");
        assertRefused(served.delete("/api/lens-models/1", "If-Match", "*"), 409, "still-used", "unit 1");
        assertRefused(served.delete("/api/lens-sets/1", "If-Match", "*"), 409, "still-used", "history");
        for (String path : List.of("jobs", "purchase-offers", "rate-cards", "suppliers")) {
            assertEquals(
                    204,
                    served.delete("/api/" + path + "/1", "If-Match", "\"1\"").status());
            assertEquals(404, served.get("/api/" + path + "/1").status());
        }
    }

    private static void assertRefused(Reply reply, int status, String kind, String says) {
        assertEquals(status, reply.status(), reply.text());
        assertEquals(kind, reply.kind());
        assertTrue(reply.json().get("detail").asString().contains(says), reply.text());
    }

    @Test
    void idsAreNeverUsedAgain() {
        served.post("/api/suppliers", "{\"name\": \"a\"}");
        served.delete("/api/suppliers/1", "If-Match", "\"1\"");
        assertEquals(2, served.post("/api/suppliers", "{\"name\": \"a\"}").id());
    }

    @Test
    void aChangeNamesItsVersion() {
        served.post("/api/suppliers", "{\"name\": \"a\"}");
        assertEquals(428, served.put("/api/suppliers/1", "{\"name\": \"b\"}").status());
        assertEquals(428, served.delete("/api/suppliers/1").status());
        assertEquals("a", served.get("/api/suppliers/1").json().get("name").asString());
    }

    @Test
    void aStaleChangeIsShownTheNewerVersion() {
        served.post("/api/suppliers", "{\"name\": \"a\"}");
        served.put("/api/suppliers/1", "{\"name\": \"b\"}", "If-Match", "\"1\"");
        Reply stale = served.put("/api/suppliers/1", "{\"name\": \"c\"}", "If-Match", "\"1\"");
        assertRefused(stale, 412, "stale", "version 2");
        assertEquals("b", stale.json().get("current").get("name").asString());
        assertEquals("\"2\"", stale.etag());
        assertEquals(412, served.delete("/api/suppliers/1", "If-Match", "\"1\"").status());
        assertEquals("b", served.get("/api/suppliers/1").json().get("name").asString());
    }

    /** RFC 9110, sections 8.8.3.2 and 13.1.1; the supplier is at version 1. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '\'',
            delimiter = '|',
            value = {
                "\"1\"                | 200",
                "*                    | 200",
                "\"7\", \"1\"         | 200",
                "\"7\",\"1\" , \"8\"  | 200",
                "W/\"7\", \"1\"       | 200",
                "W/\"1\"              | 412",
                "\"2\"                | 412",
                "\"01\"               | 412",
                "\"\"                 | 412",
                "1                    | 400",
                "\"1                  | 400",
                "\"1\" \"2\"          | 400",
                "w/\"1\"              | 400",
                "*, \"1\"             | 400"
            })
    void whatIfMatchMayBe(String header, int status) {
        served.post("/api/suppliers", "{\"name\": \"a\"}");
        assertEquals(
                status,
                served.put("/api/suppliers/1", "{\"name\": \"b\"}", "If-Match", header)
                        .status());
    }

    @Test
    void ofTwoWritersOnOneVersionExactlyOneWins() throws Exception {
        served.post("/api/suppliers", "{\"name\": \"a\"}");
        int writers = 8;
        ExecutorService pool = Executors.newFixedThreadPool(writers);
        try {
            List<Callable<Integer>> changes = new ArrayList<>();
            for (int writer = 0; writer < writers; writer++) {
                String body = "{\"name\": \"writer " + writer + "\"}";
                changes.add(() -> served.put("/api/suppliers/1", body, "If-Match", "\"1\"")
                        .status());
            }
            List<Integer> statuses = new ArrayList<>();
            for (Future<Integer> change : pool.invokeAll(changes)) {
                statuses.add(change.get());
            }
            assertEquals(1, statuses.stream().filter(status -> status == 200).count(), statuses.toString());
            assertEquals(
                    writers - 1,
                    statuses.stream().filter(status -> status == 412).count());
        } finally {
            pool.shutdownNow();
        }
        assertEquals("\"2\"", served.get("/api/suppliers/1").etag());
    }

    @Test
    void whatMustBeItsOwnIsItsOwn() {
        createAll();
        assertRefused(served.post("/api/suppliers", example("/api/suppliers")), 409, "already-there", "Supplier 1");
        assertRefused(served.post("/api/rate-cards", example("/api/rate-cards")), 409, "already-there", "2027-01-01");
        assertRefused(served.post("/api/units", example("/api/units")), 409, "already-there", "unit-0007");
        served.post("/api/suppliers", "{\"name\": \"b\"}");
        assertEquals(
                409,
                served.put("/api/suppliers/2", example("/api/suppliers"), "If-Match", "\"1\"")
                        .status());
    }

    @Test
    void whatIsPointedToMustBeThere() {
        Reply card = served.post("/api/rate-cards", example("/api/rate-cards"));
        assertEquals(400, card.status());
        assertEquals("/supplierId", card.json().at("/faults/0/pointer").asString());
        Reply job = served.post("/api/jobs", example("/api/jobs"));
        assertEquals("/rateCards/0", job.json().at("/faults/0/pointer").asString());
        assertEquals(0, served.get("/api/jobs").json().get("items").size());
    }

    @Test
    void everyFaultOfABodyIsTold() {
        Reply reply = served.post(
                "/api/jobs",
                "{\"name\": \" \", \"currency\": \"XYZ\", \"cashLimit\": \"1.005\", \"schedule\": [{\"from\": "
                        + "\"2027-02-30\", \"use\": \"nap\"}], \"needs\": [], \"rateCards\": [1, 1, \"x\", 0],"
                        + " \"leftOut\": [\"a\", \"a\"], \"colour\": 1}");
        List<String> pointers = new ArrayList<>();
        reply.json()
                .get("faults")
                .forEach(fault -> pointers.add(fault.get("pointer").asString()));
        assertEquals(
                List.of(
                        "/colour",
                        "/currency",
                        "/leftOut/1",
                        "/name",
                        "/needs",
                        "/rateCards/1",
                        "/rateCards/2",
                        "/rateCards/3",
                        "/schedule/0/from",
                        "/schedule/0/use"),
                pointers.stream().sorted().toList());
    }

    @Test
    void listsAreCutIntoPartsThatFollowOnEachOther() {
        for (int number = 1; number <= 7; number++) {
            served.post("/api/suppliers", "{\"name\": \"house " + number + "\"}");
        }
        List<Long> ids = new ArrayList<>();
        String next = "/api/suppliers?limit=3";
        int parts = 0;
        while (next != null) {
            JsonNode part = served.get(next).json();
            assertTrue(part.get("items").size() <= 3);
            part.get("items").forEach(item -> ids.add(item.get("id").asLong()));
            next = part.has("next") ? part.get("next").asString() : null;
            parts++;
        }
        assertEquals(List.of(1L, 2L, 3L, 4L, 5L, 6L, 7L), ids);
        assertEquals(3, parts);
        assertFalse(served.get("/api/suppliers?limit=7").json().has("next"));
    }
}
