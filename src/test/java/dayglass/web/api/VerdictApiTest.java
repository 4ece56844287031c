package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A choice is weighed over HTTP; every answer is held to the contract. */
class VerdictApiTest extends OneServer {
    private static final Path EXAMPLE =
            Path.of("src/test/resources/dayglass/cost/verdict/anamorphic-set-for-commercials.json");

    @Test
    void aChoiceIsWeighedTheSameWayTwice() throws IOException {
        Reply reply = served.post("/api/verdicts", Files.readString(EXAMPLE));
        assertEquals(200, reply.status(), reply.text());
        assertEquals("buy", reply.json().get("verdict").asString());
        assertEquals(37, reply.json().get("months").size());
        assertEquals(2_000, reply.json().get("uncertainty").get("draws").asInt());
        assertEquals(
                reply.text(),
                served.post("/api/verdicts", Files.readString(EXAMPLE)).text());
    }

    /** The lines of the months add up to what is told; a fixed purchase alone has the rule's guarantee. */
    @Test
    void theSmallestRequestHasItsDefaults() {
        Reply reply = served.post("/api/verdicts", """
                {"currency": "JPY", "purchase": {"price": "100000", "termMonths": 12, "resale": {"points": [{"months": 12, "value": "0"}]}},
                 "jobs": [{"name": "all", "perYear": "10", "days": 1}],
                 "rates": [{"blocks": [{"days": 1, "price": "9000"}]}],
                 "history": [{"date": "2026-05-01", "rent": "60000"}, {"date": "2026-06-01", "rent": "60000"}]}""");
        assertEquals(200, reply.status(), reply.text());
        assertEquals("rent", reply.json().get("verdict").asString());
        assertEquals("100000", reply.json().get("costOfOwning").asString());
        assertEquals("90000", reply.json().get("costOfRenting").asString());
        assertEquals("2026-06-01", reply.json().get("rule").get("buysOn").asString());
        assertEquals("160000", reply.json().get("rule").get("cost").asString());
        assertTrue(reply.json().get("rule").get("guaranteed").asBoolean());
        assertEquals(
                "11.111",
                reply.json()
                        .get("breakEven")
                        .get("daysPerYear")
                        .get("crossings")
                        .get(0)
                        .get("at")
                        .asString());
    }

    @Test
    void aFaultyRequestIsToldItsFaults() {
        Reply reply = served.post("/api/verdicts", "{\"currency\": \"EUR\", \"jobs\": []}");
        assertEquals(400, reply.status());
        for (String pointer : new String[] {"/purchase", "/jobs", "/rates"}) {
            assertTrue(reply.text().contains("\"" + pointer + "\""), reply.text());
        }
        assertEquals(405, served.get("/api/verdicts").status());
    }
}
