package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.FreshServer;
import dayglass.support.Reply;
import dayglass.support.Served;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** Models, units, sets and tables over HTTP; every answer is held to the contract by {@link Served}. */
class ShelfApiTest extends FreshServer {
    private static final String MODEL = "{\"maker\": \"Marrow & Pike\", \"name\": \"Heron\", \"kind\": \"%s\"%s}";

    private static String pointers(Reply reply) {
        assertEquals(400, reply.status(), reply.text());
        return String.join(
                " ",
                StreamSupport.stream(reply.json().get("faults").spliterator(), false)
                        .map(fault -> fault.get("pointer").asString())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            spherical prime | , "focal": "0" | /focal
            spherical prime | , "minFocal": "20", "maxFocal": "40" | /minFocal
            spherical zoom | , "focal": "20" | /focal
            spherical zoom | , "focal": "20", "maxFocal": "40" | /focal
            spherical zoom | , "minFocal": "20" | /maxFocal
            spherical zoom | , "minFocal": "40", "maxFocal": "40" | /maxFocal
            anamorphic prime | , "squeeze": "3.1" | /squeeze
            anamorphic prime | , "mounts": ["PL", "PL"] | /mounts/1
            mount adapter | , "weightG": 0 | /weightG
            effect filter | , "look": {"flare": 6, "testedOn": "2026-02-30"} | /look/flare /look/testedOn
            fisheye | , "focusScale": "inches" | /kind /focusScale
            """)
    void faultsOfAModelAreToldAtTheirPlace(String kind, String more, String pointers) {
        assertEquals(pointers, pointers(served.post("/api/lens-models", MODEL.formatted(kind, more))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "modelId": 7 | /modelId
            "holding": {"kind": "borrowed"} | /holding/kind
            "holding": {"kind": "owned", "owner": "x"} | /holding/owner
            "holding": {"kind": "rented in", "owner": "x"} | /holding/from /holding/paidUpTo /holding/dueBackOn
            "holding": {"kind": "consigned", "owner": "x", "from": "2027-01-02", "until": "2027-01-01"} | /holding/until
            "value": {"amount": "1.001", "currency": "EUR", "setOn": "2027-01-01"} | /value/amount
            "departure": {"on": "2027-01-01", "how": "eaten"} | /departure/how
            "covers": {} | /covers
            "accessories": ["cap", "cap"] | /accessories/1
            "colour": "red" | /colour
            """)
    void faultsOfAUnitAreToldAtTheirPlace(String member, String pointers) {
        assertEquals(pointers, pointers(served.post("/api/units", "{\"tag\": \"q-1\", " + member + "}")));
    }

    @Test
    void aUnitIsLookedUpByItsTag() {
        served.post("/api/units", "{\"tag\": \"q-1\"}");
        served.post("/api/units", "{\"tag\": \"q 2&3\"}");
        Reply found = served.get("/api/units?tag=q%202%263");
        assertEquals(1, found.json().get("items").size());
        assertEquals(2, found.json().at("/items/0/id").asInt());
        assertEquals(0, served.get("/api/units?tag=q-9").json().get("items").size());
        assertEquals(400, served.get("/api/units?tag=q-1&tag=q-2").status());
        assertEquals(400, served.get("/api/units?tag=q-1&limit=2").status());
    }

    @Test
    void aSetKeepsItsHistoryAndAUnitIsInOneAtMost() {
        served.post("/api/units", "{\"tag\": \"q-1\"}");
        served.post("/api/units", "{\"tag\": \"q-2\"}");
        assertEquals(
                201,
                served.post("/api/lens-sets", "{\"name\": \"pier\", \"members\": [2, 1]}")
                        .status());
        Reply taken = served.post("/api/lens-sets", "{\"name\": \"quay\", \"members\": [1]}");
        assertEquals("/members/0", pointers(taken));
        assertTrue(taken.text().contains("the set pier"), taken.text());
        assertEquals(
                "/members/1", pointers(served.post("/api/lens-sets", "{\"name\": \"quay\", \"members\": [1, 1]}")));
        served.put("/api/lens-sets/1", "{\"name\": \"pier\", \"members\": [1]}", "If-Match", "\"1\"");
        Reply history = served.get("/api/lens-sets/1/history");
        assertEquals(2, history.json().get("memberships").size());
        assertEquals(2, history.json().at("/memberships/0/unitId").asInt());
        assertTrue(history.json().at("/memberships/0").has("leftAt"));
        assertTrue(!history.json().at("/memberships/1").has("leftAt"));
        assertEquals(404, served.get("/api/lens-sets/9/history").status());
    }

    private static String table(String text, String more) {
        return JsonMapper.shared()
                .createObjectNode()
                .put("what", "units")
                .put("text", text)
                .toString()
                .replaceFirst("}$", more + "}");
    }

    @Test
    void aTableIsPreviewedThenBroughtInAndDoublesNothing() {
        String text = "Tag,Shelf,Colour\r\nq-1,B2,grey\r\n,B3,grey\r\n";
        Reply preview = served.post("/api/shelf/import?preview=true", table(text, ""));
        assertEquals(200, preview.status(), preview.text());
        assertEquals(3, preview.json().at("/faulty/0/line").asInt());
        assertEquals(0, served.get("/api/units").json().get("items").size());
        Reply done = served.post("/api/shelf/import", table(text, ""));
        assertEquals(1, done.json().at("/done/added").asInt());
        assertEquals("B2", served.get("/api/units/1").json().get("homeShelf").asString());
        assertEquals(
                1,
                served.post("/api/shelf/import", table(text, ""))
                        .json()
                        .get("unchanged")
                        .asInt());
        String moved = text.replace("B2", "C1");
        assertEquals(
                "C1",
                served.post("/api/shelf/import", table(moved, ""))
                        .json()
                        .at("/changed/0/fields/0/after")
                        .asString());
        assertEquals("\"1\"", served.get("/api/units/1").etag());
        served.post("/api/shelf/import", table(moved, ", \"applyChanges\": true"));
        assertEquals("\"2\"", served.get("/api/units/1").etag());
    }

    @Test
    void whatCannotBeReadAsATableIsRefusedAtItsPlace() {
        for (List<String> each : List.of(
                List.of("", "", "/text"),
                List.of("tag\r\n\"q", "", "/text"),
                List.of("Nummer\r\nq-1", "", "/columns"),
                List.of("tag\r\nq-1", ", \"columns\": [{\"number\": 2, \"field\": \"tag\"}]", "/columns/0/number"),
                List.of(
                        "tag,x\r\nq-1,1",
                        ", \"columns\": [{\"number\": 1, \"field\": \"tag\"}, {\"number\": 2, \"field\": \"x\"}]",
                        "/columns/1/field"))) {
            assertEquals(each.get(2), pointers(served.post("/api/shelf/import", table(each.get(0), each.get(1)))));
        }
        assertEquals(
                400,
                served.post("/api/shelf/import?preview=yes", table("tag\r\n", ""))
                        .status());
    }
}
