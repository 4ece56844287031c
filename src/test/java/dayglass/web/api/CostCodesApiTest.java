package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import dayglass.support.Served;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cost codes of a job are kept with it, change by version, and go with it. */
class CostCodesApiTest extends OneServer {
    private String address = "";
    private long job;

    @BeforeEach
    void importJob() {
        Reply imported = served.post("/api/jobs/import", Served.example("01-three-day-week"));
        job = imported.id();
        address = "/api/jobs/" + job + "/cost-codes";
    }

    private static String codes(String option, String code) {
        return "{\"codes\": {\"" + option + "\": \"" + code + "\"}}";
    }

    @Test
    void thereAreNoneAtFirst() {
        Reply none = served.get(address);
        assertEquals(200, none.status());
        assertEquals("\"0\"", none.etag());
        assertEquals(0, none.json().get("codes").size());
        assertEquals(404, served.get("/api/jobs/99999/cost-codes").status());
    }

    @Test
    void theyAreKeptByVersion() {
        assertEquals(428, served.put(address, codes("a", "1")).status());
        Reply first = served.put(address, codes("a", " 4410 "), "If-Match", "\"0\"");
        assertEquals(200, first.status(), first.text());
        assertEquals("\"1\"", first.etag());
        assertEquals("4410", first.json().at("/codes/a").asString());
        Reply late = served.put(address, codes("a", "5"), "If-Match", "\"0\"");
        assertEquals(412, late.status());
        assertEquals("4410", late.json().at("/current/codes/a").asString());
        Reply second = served.put(address, codes("b", "77"), "If-Match", late.etag());
        assertEquals(200, second.status(), second.text());
        assertEquals("{\"b\":\"77\"}", served.get(address).json().get("codes").toString());
    }

    @ParameterizedTest
    @CsvSource({
        "'{\"codes\": {\"a\": 4410}}', /codes/a",
        "'{\"codes\": {\"a\": \" \"}}', /codes/a",
        "'{\"codes\": {\"a/b\": \"1\\n2\"}}', /codes/a~1b",
        "'{\"codes\": {\"\": \"4410\"}}', /codes/",
        "'{\"codes\": {\"a\": \"1\", \"a\": \"2\"}}', /codes/a",
        "'{\"codes\": []}', /codes",
        "{}, /codes"
    })
    void whatIsNoCodeIsAFaultAtItsOption(String body, String pointer) {
        Reply refused = served.put(address, body, "If-Match", "\"0\"");
        assertEquals(400, refused.status());
        assertEquals(pointer, refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void whoChangedThemIsKept() {
        served.put(address, codes("a", "4410"), "If-Match", "\"0\"");
        String changes =
                served.get("/api/changes?noun=set+of+cost+codes&id=" + job).text();
        assertTrue(changes.contains("4410"), changes);
    }

    @Test
    void theyGoWithTheirJob() {
        served.put(address, codes("a", "4410"), "If-Match", "\"0\"");
        assertEquals(204, served.delete("/api/jobs/" + job, "If-Match", "\"1\"").status());
        assertEquals(404, served.get(address).status());
    }
}
