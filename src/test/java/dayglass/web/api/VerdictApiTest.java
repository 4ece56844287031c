package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

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
        assertEquals(3, reply.json().get("rentedByYear").size());
        BigDecimal rent = reply.json()
                .get("rentedByYear")
                .valueStream()
                .map(year -> new BigDecimal(year.asString()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertEquals(reply.json().get("costOfRenting").asString(), rent.toPlainString());
        assertEquals(
                reply.text(),
                served.post("/api/verdicts", Files.readString(EXAMPLE)).text());
    }

    @Test
    void theLinesWithTheirRoundingComeToTheCostOfOwning() throws IOException {
        JsonNode told = served.post("/api/verdicts", Files.readString(EXAMPLE)).json();
        BigDecimal sum = told.get("lines")
                .valueStream()
                .map(line -> new BigDecimal(line.get("amount").asString()))
                .reduce(new BigDecimal(told.get("rounding").asString()), BigDecimal::add);
        assertEquals(told.get("costOfOwning").asString(), sum.negate().toPlainString());
        assertEquals("0.01", told.get("rounding").asString());
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

    @Test
    void thePastIsToldInTheFormInWhichAVerdictIsAsked() {
        assertEquals(0, served.get("/api/past-jobs").json().get("jobs").size());
        Reply job = served.post("/api/jobs", """
                {"name": "Winter Quarry", "currency": "EUR", "needs": [{"slot": "40 mm", "count": 1}],
                 "schedule": [{"from": "2025-03-03", "use": "prep"}, {"from": "2025-03-04", "to": "2025-03-07", "use": "shoot"}]}""");
        assertEquals(201, job.status(), job.text());
        Reply past = served.get("/api/past-jobs");
        assertEquals("5", past.json().at("/daysSpread/values/0").asString());
        assertEquals(1, past.json().at("/jobs/0/prepDays").asInt());
        Reply page = served.page("/verdict/own");
        assertEquals(200, page.status());
        assertTrue(page.text().contains("value=\"jobs as they were\""), page.text());
        assertTrue(page.text().contains("name=\"/jobs/0/daysValues\" type=\"text\" class=\"wide\" value=\"5\""));
    }

    @Test
    void aRunIsWatchedStoppedAndTellsWhatItKnows() throws Exception {
        String slow = Files.readString(EXAMPLE)
                .replace("\"draws\": 2000", "\"draws\": 100000")
                .replace("\"days\": 12,", "\"days\": 200,")
                .replace("\"8\", \"12\", \"12\", \"15\"", "\"180\", \"200\", \"220\"");
        Reply started = served.post("/api/verdict-runs", slow);
        assertEquals(202, started.status(), started.text());
        String path = started.header("Location").orElseThrow();
        assertFalse(started.json().get("over").asBoolean());
        Reply state = served.get(path);
        for (int look = 0; state.json().get("drawsDone").asInt() == 0 && look < 600; look++) {
            Thread.sleep(50);
            state = served.get(path);
        }
        assertEquals(100_000, state.json().get("draws").asInt());
        Reply stopped = served.post(path + "/stop", "{}");
        for (int look = 0; !stopped.json().get("over").asBoolean() && look < 600; look++) {
            Thread.sleep(50);
            stopped = served.get(path);
        }
        int drawn = stopped.json().at("/verdict/uncertainty/draws").asInt();
        assertTrue(drawn > 0 && drawn < 100_000, stopped.text());
        assertEquals(100_000, stopped.json().at("/verdict/uncertainty/asked").asInt());
        assertEquals(404, served.get("/api/verdict-runs/999").status());
    }

    /** A run that ends by itself is the answer that waiting would have brought. */
    @Test
    void aRunThatEndsIsTheVerdict() throws Exception {
        String path = served.post("/api/verdict-runs", Files.readString(EXAMPLE))
                .header("Location")
                .orElseThrow();
        Reply state = served.get(path);
        for (int look = 0; !state.json().get("over").asBoolean() && look < 600; look++) {
            Thread.sleep(50);
            state = served.get(path);
        }
        assertEquals(
                served.post("/api/verdicts", Files.readString(EXAMPLE)).json(),
                state.json().get("verdict"));
        assertEquals(2_000, state.json().get("drawsDone").asInt());
    }
}
