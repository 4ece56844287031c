package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Requests and jobs are costed over HTTP as the examples say, and what was answered is kept as it was. */
class CostingApiTest extends OneServer {
    private static final JsonMapper JSON = JsonMapper.shared();

    private static ObjectNode request(String name) {
        return (ObjectNode) JSON.readTree(Served.example(name));
    }

    private static JsonNode expected(String name) {
        return JSON.readTree(Served.example(name + ".expected"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "00-sample",
                "01-three-day-week",
                "02-eighth-and-ninth-day",
                "03-weekend-collected-on-friday",
                "04-hold-or-return-through-a-dark-gap",
                "05-set-against-singles",
                "06-long-hire-reached-on-a-dark-day",
                "07-minimum-and-add-ons",
                "08-buy-beats-rent",
                "09-cash-limit-forces-rent"
            })
    void anExampleHasItsTotals(String name) {
        Reply reply = served.post("/api/costings", Served.example(name));
        assertEquals(201, reply.status(), reply.text());
        assertEquals(expected(name).get("total"), reply.json().get("total"));
        assertEquals(expected(name).get("comparison"), reply.json().get("comparison"));
        assertEquals("/api/costings/" + reply.id(), reply.header("Location").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bad-01-several-at-once",
                "bad-02-numbers",
                "bad-03-dates",
                "bad-04-names",
                "bad-05-limits-and-empty",
                "bad-06-not-json"
            })
    void aFaultyExampleIsToldAllItsFaults(String name) {
        Reply reply = served.post("/api/costings", Served.example(name));
        assertEquals(400, reply.status());
        Set<String> pointers = new TreeSet<>();
        reply.json()
                .get("faults")
                .forEach(fault -> pointers.add(fault.get("pointer").asString()));
        Set<String> wanted = new TreeSet<>();
        expected(name).get("pointers").forEach(pointer -> wanted.add(pointer.asString()));
        assertEquals(wanted, pointers);
    }

    @Test
    void whatCannotBeCoveredIsTold() {
        Reply reply = served.post("/api/costings", Served.example("10-infeasible"));
        assertEquals(422, reply.status());
        assertEquals("no-plan", reply.kind());
        assertEquals(expected("10-infeasible").get("uncovered"), reply.json().get("uncovered"));
    }

    @Test
    void aCostingIsKeptAsItWasAnswered() throws Exception {
        Reply made = served.post("/api/costings?timeLimit=60", Served.example("08-buy-beats-rent"));
        Reply kept = served.get("/api/costings/" + made.id());
        ObjectNode answer = (ObjectNode) made.json();
        for (String member :
                Set.of("id", "createdAt", "engineVersion", "requestSha256", "answerSha256", "timeLimitSeconds")) {
            assertEquals(answer.remove(member), kept.json().get(member), member);
        }
        assertEquals(answer, kept.json().get("answer"));
        assertEquals(
                request("08-buy-beats-rent").get("job"),
                kept.json().get("request").get("job"));
        assertEquals(60, kept.json().get("timeLimitSeconds").asInt());
        String stored = served.rooms()
                .costings()
                .find(new dayglass.planning.KeptCosting.Id(made.id()))
                .orElseThrow()
                .facts()
                .answer()
                .json();
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(stored.getBytes(StandardCharsets.UTF_8));
        assertEquals(
                HexFormat.of().formatHex(digest),
                kept.json().get("answerSha256").asString());
    }

    @Test
    void runningAgainComesToTheSameTotal() {
        Reply made = served.post("/api/costings", Served.example("05-set-against-singles"));
        Reply again = served.post("/api/costings/" + made.id() + "/run-again", "");
        assertEquals(200, again.status());
        assertTrue(again.json().get("sameTotal").asBoolean(), again.text());
        assertEquals(made.json().get("total"), again.json().get("total"));
        assertEquals(made.json().get("total"), again.json().get("earlierTotal"));
    }

    @Test
    void costingsAreListedByJobAndRemoved() {
        Reply job = served.post("/api/jobs/import", Served.example("01-three-day-week"));
        Reply one = served.post("/api/jobs/" + job.id() + "/costings", "");
        Reply other = served.post("/api/jobs/" + job.id() + "/costings?timeLimit=30", "");
        assertEquals(job.id(), one.json().get("jobId").asLong());
        JsonNode listed = served.get("/api/costings?job=" + job.id()).json().get("items");
        assertEquals(2, listed.size());
        assertEquals(one.id(), listed.get(0).get("id").asLong());
        assertEquals(other.json().get("total"), listed.get(1).get("total"));
        String next = served.get("/api/costings?limit=1&job=" + job.id())
                .json()
                .get("next")
                .asString();
        assertEquals(
                other.id(),
                served.get(next).json().get("items").get(0).get("id").asLong());

        Reply used = served.delete("/api/jobs/" + job.id(), "If-Match", job.etag());
        assertEquals(409, used.status());
        assertTrue(used.json().get("detail").asString().contains("costing " + one.id()));
        for (Reply costing : new Reply[] {one, other}) {
            String address = "/api/costings/" + costing.id();
            assertEquals(428, served.delete(address).status());
            Reply stale = served.delete(address, "If-Match", "\"2\"");
            assertEquals(412, stale.status());
            assertEquals(costing.id(), stale.json().at("/current/id").asLong());
            assertEquals(costing.etag(), stale.etag());
            assertEquals(200, served.get(address).status());
            assertEquals(204, served.delete(address, "If-Match", costing.etag()).status());
            assertEquals(404, served.get(address).status());
            assertEquals(404, served.delete(address).status());
        }
        assertEquals(
                204,
                served.delete("/api/jobs/" + job.id(), "If-Match", job.etag()).status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "00-sample",
                "02-eighth-and-ninth-day",
                "04-hold-or-return-through-a-dark-gap",
                "05-set-against-singles",
                "07-minimum-and-add-ons",
                "09-cash-limit-forces-rent"
            })
    void anImportedJobExportsAnEqualRequestAndHasTheSameTotal(String name) {
        ObjectNode request = request(name);
        // Each run of the test shares its shelf with the others: units of one tag must have one set of facts.
        request.path("owned")
                .forEach(unit -> ((ObjectNode) unit)
                        .put("id", name + " " + unit.get("id").asString()));
        Reply job = served.post("/api/jobs/import", request.toString());
        assertEquals(201, job.status(), job.text());
        Reply exported = served.get("/api/jobs/" + job.id() + "/request");
        Reply bare = served.post("/api/costings", request.toString());
        assertEquals(served.get("/api/costings/" + bare.id()).json().get("request"), exported.json());
        Reply costing = served.post("/api/jobs/" + job.id() + "/costings", "");
        assertEquals(expected(name).get("total"), costing.json().get("total"));
    }

    @Test
    void importingTwiceUsesWhatIsThere() {
        Reply one = served.post("/api/jobs/import", Served.example("08-buy-beats-rent"));
        Reply other = served.post("/api/jobs/import", Served.example("08-buy-beats-rent"));
        assertFalse(one.id() == other.id());
        for (String member : Set.of("rateCards", "purchaseOffers", "units")) {
            assertEquals(one.json().get(member), other.json().get(member), member);
        }
    }

    @Test
    void aUnitWithOtherFactsIsRefusedAndNothingIsStored() {
        ObjectNode request = request("01-three-day-week");
        request.put("job", "A job of its own");
        JsonNode units = JSON.readTree(
                "[{\"id\": \"unit-a\", \"covers\": {\"x\": 1}}, {\"id\": \"unit-b\", \"covers\": {\"x\": 1}}]");
        request.set("owned", units);
        served.post("/api/units", "{\"tag\": \"unit-b\", \"covers\": {\"x\": 2}}");
        ((ObjectNode) request.at("/rentals/0")).put("supplier", "A house of its own");
        String before = served.get("/api/suppliers?limit=200").text();
        Reply refused = served.post("/api/jobs/import", request.toString());
        assertEquals(400, refused.status());
        assertEquals("/owned/1/id", refused.json().at("/faults/0/pointer").asString());
        assertEquals(1, refused.json().get("faults").size());
        assertEquals(before, served.get("/api/suppliers?limit=200").text());
        assertFalse(served.get("/api/units?limit=200").text().contains("unit-a"));
        assertFalse(served.get("/api/jobs?limit=200").text().contains("A job of its own"));
    }

    @Test
    void aCopyIsChangedAndComparedWithoutTouchingTheFirst() {
        ObjectNode request = request("01-three-day-week");
        request.put("job", "Compared");
        Reply job = served.post("/api/jobs/import", request.toString());
        Reply before = served.post("/api/jobs/" + job.id() + "/costings", "");
        Reply copy = served.post("/api/jobs/" + job.id() + "/copy", "{\"name\": \"Compared, longer\"}");
        assertEquals(201, copy.status());
        ObjectNode facts = (ObjectNode) copy.json();
        facts.remove("id");
        facts.remove("version");
        ((ObjectNode) facts.at("/needs/0")).put("count", 1);
        int last = facts.get("schedule").size() - 1;
        ((ObjectNode) facts.get("schedule").get(last)).put("use", "wrap");
        Reply changed = served.put("/api/jobs/" + copy.id(), facts.toString(), "If-Match", copy.etag());
        assertEquals(200, changed.status(), changed.text());
        Reply after = served.post("/api/jobs/" + copy.id() + "/costings", "");
        assertEquals(201, after.status(), after.text());
        JsonNode comparison = served.get("/api/costings/" + before.id() + "/comparison?with=" + after.id())
                .json();
        assertTrue(has(comparison.get("request"), "term", "job", "Compared", "Compared, longer"));
        comparison
                .get("request")
                .forEach(change -> assertTrue(Set.of("term", "days", "need", "rental", "purchase", "owned")
                        .contains(change.get("subject").asString())));
        assertTrue(comparison.get("request").toString().contains("\"subject\":\"days\""), comparison.toString());
        assertEquals(job.json(), served.get("/api/jobs/" + job.id()).json());
    }

    @Test
    void aChangedRateIsNamedInTheComparison() {
        ObjectNode request = request("01-three-day-week");
        Reply before = served.post("/api/costings", request.toString());
        String option = request.at("/rentals/0/id").asString();
        for (JsonNode block : request.at("/rentals/0/blocks")) {
            ((ObjectNode) block).put("price", "1.00");
        }
        Reply after = served.post("/api/costings", request.toString());
        JsonNode comparison = served.get("/api/costings/" + before.id() + "/comparison?with=" + after.id())
                .json();
        String was = before.json().get("total").asString();
        String is = after.json().get("total").asString();
        assertTrue(has(comparison.get("answer"), "amount", "total", was, is), comparison.toString());
        assertEquals("rental", comparison.at("/request/0/subject").asString());
        assertEquals(option, comparison.at("/request/0/name").asString());
        assertEquals("blocks/0/price", comparison.at("/request/0/part").asString());
        assertEquals("1.00", comparison.at("/request/0/after").asString());
        JsonNode same = served.get("/api/costings/" + before.id() + "/comparison?with=" + before.id())
                .json();
        assertEquals(0, same.get("request").size() + same.get("answer").size());
        assertEquals(
                400, served.get("/api/costings/" + before.id() + "/comparison").status());
        assertEquals(
                404,
                served.get("/api/costings/" + before.id() + "/comparison?with=99999")
                        .status());
    }

    private static boolean has(JsonNode changes, String subject, String name, String before, String after) {
        for (JsonNode change : changes) {
            if (change.get("subject").asString().equals(subject)
                    && change.get("name").asString().equals(name)
                    && change.path("before").asString().equals(before)
                    && change.path("after").asString().equals(after)) {
                return true;
            }
        }
        return false;
    }
}
