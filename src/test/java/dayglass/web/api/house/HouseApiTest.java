package dayglass.web.api.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The house's settings, its people, who is behind a request, and the record of every change. */
class HouseApiTest {
    private static final String HOUSE = """
            {"name": "The house", "timeZone": "Europe/Lisbon", "currency": "EUR", "outTime": "15:00",
             "backTime": "10:00", "turnaroundMinutes": 120}
            """;

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

    private Reply person(String name, boolean gone, String... headers) {
        return served.post(
                "/api/people", "{\"name\": \"" + name + "\", \"role\": \"clerk\", \"gone\": " + gone + "}", headers);
    }

    private static void assertRefused(Reply reply, int status, String kind) {
        assertEquals(status, reply.status(), reply.text());
        assertEquals(kind, reply.kind());
    }

    private List<JsonNode> changes(String query) {
        List<JsonNode> changes = new ArrayList<>();
        served.get("/api/changes" + query).json().get("items").forEach(changes::add);
        return changes;
    }

    @Test
    void aNewHouseKeepsTheTradesUsualTimesInTheZoneOfItsMachine() {
        JsonNode house = served.get("/api/house").json();
        assertEquals("UTC", house.get("timeZone").asString());
        assertEquals("EUR", house.get("currency").asString());
        assertEquals("15:00", house.get("outTime").asString());
        assertEquals("10:00", house.get("backTime").asString());
        assertEquals(1, house.get("version").asInt());
    }

    @Test
    void settingsAreChangedByWhoKnowsThem() {
        assertRefused(served.put("/api/house", HOUSE), 428, "version-required");
        Reply changed = served.put("/api/house", HOUSE, "If-Match", "\"1\"");
        assertEquals(200, changed.status(), changed.text());
        assertEquals("\"2\"", changed.etag());
        Reply stale = served.put("/api/house", HOUSE, "If-Match", "\"1\"");
        assertRefused(stale, 412, "stale");
        assertEquals("Europe/Lisbon", stale.json().at("/current/timeZone").asString());
        assertEquals(
                120, served.get("/api/house").json().get("turnaroundMinutes").asInt());
    }

    @ParameterizedTest
    @CsvSource({
        "timeZone, Europe/Atlantis",
        "timeZone, +02:00",
        "timeZone, ''",
        "currency, EURO",
        "outTime, 24:00",
        "outTime, 9:00",
        "backTime, 10:60",
        "name, ' '"
    })
    void whatCannotBeASetting(String member, String value) {
        ObjectNode house = (ObjectNode) JsonMapper.shared().readTree(HOUSE);
        house.put(member, value);
        Reply reply = served.put("/api/house", house.toString(), "If-Match", "*");
        assertRefused(reply, 400, "faulty-request");
        assertEquals("/" + member, reply.json().at("/faults/0/pointer").asString());
    }

    @Test
    void thereIsAlwaysSomebody() {
        String owner = "{\"name\": \"Owner\", \"role\": \"owner\", \"gone\": true}";
        assertRefused(served.put("/api/people/1", owner, "If-Match", "*"), 422, "cannot-be-done");
        assertEquals(201, person("Ada Quill", false).status());
        assertEquals(
                200,
                served.put("/api/people/1", owner, "If-Match", "*", "Dayglass-Person", "1")
                        .status());
        assertRefused(served.delete("/api/people/2", "If-Match", "*"), 422, "cannot-be-done");
        assertEquals("false", served.get("/api/people/2").json().get("gone").toString());
    }

    @Test
    void whoeverStandsBehindARecordIsNotRemoved() {
        person("Ada Quill", false);
        served.post("/api/suppliers", "{\"name\": \"Quay\"}", "Dayglass-Person", "2");
        assertRefused(served.delete("/api/people/2", "If-Match", "*", "Dayglass-Person", "1"), 409, "still-used");
        person("Ben Slate", false, "Dayglass-Person", "1");
        assertEquals(
                204,
                served.delete("/api/people/3", "If-Match", "*", "Dayglass-Person", "1")
                        .status());
    }

    @Test
    void namesAreTheirOwn() {
        assertRefused(person("Owner", false), 409, "already-there");
    }

    @Test
    void ofSeveralPeopleOneIsNamedForEveryWrite() {
        person("Ada Quill", false);
        for (String path : List.of("/api/suppliers", "/api/people", "/api/costings")) {
            Reply reply = served.post(path, "{\"name\": \"Quay\"}");
            assertRefused(reply, 422, "nobody-named");
            assertTrue(reply.json().get("detail").asString().contains("Dayglass-Person"));
        }
        assertRefused(served.put("/api/house", HOUSE, "If-Match", "*"), 422, "nobody-named");
        assertRefused(served.delete("/api/people/2", "If-Match", "*"), 422, "nobody-named");
        assertEquals(200, served.get("/api/suppliers").status());
        assertEquals(
                201,
                served.post("/api/suppliers", "{\"name\": \"Quay\"}", "Dayglass-Person", "2")
                        .status());
        assertEquals(2, changes("?noun=supplier").get(0).get("personId").asInt());
    }

    @Test
    void oneWhoIsGoneNeedNotBeToldApart() {
        person("Ada Quill", true);
        assertEquals(201, served.post("/api/suppliers", "{\"name\": \"Quay\"}").status());
        assertEquals(1, changes("?noun=supplier").get(0).get("personId").asInt());
    }

    @ParameterizedTest
    @CsvSource({"2, 422, nobody-named", "9, 422, nobody-named", "0, 400, malformed", "Owner, 400, malformed"})
    void whoIsNotThereDoesNothing(String header, int status, String kind) {
        person("Ada Quill", true);
        assertRefused(served.post("/api/suppliers", "{\"name\": \"Quay\"}", "Dayglass-Person", header), status, kind);
        assertEquals(0, served.get("/api/suppliers").json().get("items").size());
    }

    @Test
    void theNameOfOneRequestNeverClingsToTheNext() {
        person("Ada Quill", false);
        for (int round = 0; round < 40; round++) {
            int who = 1 + round % 2;
            served.post("/api/suppliers", "{\"name\": 1}", "Dayglass-Person", String.valueOf(3 - who));
            served.post(
                    "/api/suppliers", "{\"name\": \"house " + round + "\"}", "Dayglass-Person", String.valueOf(who));
        }
        List<JsonNode> changes = changes("?noun=supplier&limit=200");
        assertEquals(40, changes.size());
        for (int round = 0; round < 40; round++) {
            assertEquals(1 + round % 2, changes.get(round).get("personId").asInt());
        }
    }

    private String example(String path) {
        return served.contract()
                .document()
                .get("paths")
                .get(path)
                .at("/post/requestBody/content/application~1json/example")
                .toString()
                // A unit that was in a set stays for the sake of the set's history.
                .replace("\"members\":[1]", "\"members\":[]");
    }

    @Test
    void everyKindOfThingIsRecordedWhenItIsAddedChangedAndRemoved() {
        Map<String, String> nouns = Map.of(
                "/api/suppliers", "supplier",
                "/api/rate-cards", "rate card",
                "/api/purchase-offers", "purchase offer",
                "/api/lens-models", "lens model",
                "/api/units", "unit",
                "/api/lens-sets", "set",
                "/api/jobs", "job");
        List<String> paths = List.of(
                "/api/suppliers",
                "/api/rate-cards",
                "/api/purchase-offers",
                "/api/lens-models",
                "/api/units",
                "/api/lens-sets",
                "/api/jobs");
        paths.forEach(path -> assertEquals(201, served.post(path, example(path)).status(), path));
        paths.forEach(path -> assertEquals(
                200, served.put(path + "/1", example(path), "If-Match", "*").status(), path));
        for (int at = paths.size() - 1; at >= 0; at--) {
            assertEquals(
                    204, served.delete(paths.get(at) + "/1", "If-Match", "*").status());
        }
        nouns.forEach((path, noun) -> {
            List<JsonNode> changes = changes("?id=1&noun=" + noun.replace(" ", "%20"));
            assertEquals(
                    List.of("added", "changed", "removed"),
                    changes.stream().map(each -> each.get("deed").asString()).toList(),
                    noun);
            assertEquals(1, changes.get(0).at("/facts/version").asInt());
            assertEquals(2, changes.get(1).at("/facts/version").asInt());
            assertFalse(changes.get(2).has("facts"));
        });
        assertEquals("[1]", changes("?noun=job").get(0).at("/facts/rate_cards").toString());
    }

    @Test
    void whatIsRefusedIsNoChange() {
        served.post("/api/suppliers", "{\"name\": \"Quay\"}");
        served.post("/api/suppliers", "{\"name\": \"Quay\"}");
        served.put("/api/suppliers/1", "{\"name\": \"Pier\"}", "If-Match", "\"7\"");
        assertEquals(1, changes("?noun=supplier").size());
    }

    @Test
    void theRecordIsCutIntoPartsThatKeepToWhatWasAsked() {
        for (int number = 1; number <= 3; number++) {
            served.post("/api/suppliers", "{\"name\": \"house " + number + "\"}");
        }
        served.post("/api/lens-models", example("/api/lens-models"));
        JsonNode first = served.get("/api/changes?noun=supplier&limit=2").json();
        JsonNode second = served.get(first.get("next").asString()).json();
        assertEquals(2, first.get("items").size());
        assertEquals(1, second.get("items").size());
        assertFalse(second.has("next"));
    }

    @Test
    void momentsAreToldInTheZoneOfTheHouse() {
        served.put("/api/house", HOUSE.replace("Europe/Lisbon", "Asia/Kathmandu"), "If-Match", "*");
        assertTrue(changes("?noun=house").get(0).get("madeAt").asString().endsWith("+05:45"));
    }
}
