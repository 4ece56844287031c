package dayglass.web.api.inventory.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Service plans, what falls due and what an overdue unit may not, over HTTP; days are told from today. */
class ServiceApiTest extends OneServer {
    private static int units;

    private static LocalDate today() {
        return LocalDate.now(ZoneOffset.UTC);
    }

    private static long unit() {
        units++;
        return served.post("/api/units", "{\"tag\": \"S-" + units + "\", \"holding\": {\"kind\": \"owned\"}}")
                .id();
    }

    private static Reply plan(long unit, String rest) {
        return served.post("/api/service-plans", "{\"unitId\": " + unit + ", " + rest + "}");
    }

    private static Reply overduePlan(long unit) {
        Reply plan = plan(unit, "\"everyMonths\": 12, \"lastDoneOn\": \"" + today().minusMonths(13) + "\"");
        assertEquals(201, plan.status(), plan.text());
        return plan;
    }

    private static JsonNode due(long unit, String query) {
        for (JsonNode each : served.get("/api/due" + query).json().get("items")) {
            if (each.get("unitId").asLong() == unit) {
                return each;
            }
        }
        throw new AssertionError("nothing is due of unit " + unit);
    }

    private static long book(long unit, LocalDate first) {
        Reply booked = served.post(
                "/api/bookings",
                "{\"unitIds\": [" + unit + "], \"firstDay\": \"" + first + "\", \"subject\": \"Lantern Weir\"}");
        assertEquals(201, booked.status(), booked.text());
        return booked.json().at("/items/0/id").asLong();
    }

    private static Reply visit(long unit, LocalDate day, boolean done) {
        return served.post(
                "/api/bench-visits",
                "{\"unitIds\": [" + unit + "], \"out\": \"" + day + "T00:10\", \"back\": \"" + day
                        + "T00:20\", \"subject\": \"clean and adjust\", \"bench\": {\"work\": \"helicoid greased\","
                        + " \"done\": " + done + "}}");
    }

    @ParameterizedTest
    @CsvSource({
        "'\"lastDoneOn\": \"2027-01-15\"', 400, /everyMonths",
        "'\"everyMonths\": 0, \"lastDoneOn\": \"2027-01-15\"', 400, /everyMonths",
        "'\"everyDaysOut\": 10001, \"lastDoneOn\": \"2027-01-15\"', 400, /everyDaysOut",
        "'\"everyMonths\": 6', 400, /lastDoneOn",
        "'\"everyMonths\": 6, \"lastDoneOn\": \"2027-02-29\"', 400, /lastDoneOn"
    })
    void aFaultyPlanIsRefusedAtItsField(String facts, int status, String pointer) {
        Reply reply = plan(unit(), facts);
        assertEquals(status, reply.status(), reply.text());
        assertEquals(pointer, reply.json().at("/faults/0/pointer").asString());
    }

    @Test
    void aUnitHasOnePlanThatIsReadChangedAndRemoved() {
        long unit = unit();
        Reply plan = plan(unit, "\"everyDaysOut\": 60, \"lastDoneOn\": \"2027-01-15\"");
        assertEquals(201, plan.status(), plan.text());
        Reply second = plan(unit, "\"everyMonths\": 12, \"lastDoneOn\": \"2027-01-15\"");
        assertEquals(409, second.status());
        assertTrue(second.text().contains("already has a service plan"), second.text());
        assertEquals(
                400,
                plan(999_999, "\"everyMonths\": 12, \"lastDoneOn\": \"2027-01-15\"")
                        .status());
        String path = "/api/service-plans/" + plan.id();
        String changed = "{\"unitId\": " + unit + ", \"everyMonths\": 24, \"lastDoneOn\": \"2027-02-15\"}";
        assertEquals(428, served.put(path, changed).status());
        assertEquals(200, served.put(path, changed, "If-Match", "\"1\"").status());
        assertEquals(24, served.get(path).json().get("everyMonths").asInt());
        assertFalse(served.get(path).json().has("everyDaysOut"));
        assertTrue(served.get("/api/service-plans").text().contains("2027-02-15"));
        assertEquals(204, served.delete(path, "If-Match", "\"2\"").status());
        assertEquals(404, served.get(path).status());
    }

    @Test
    void anOverdueUnitIsHandedOverOnlyWhereSomebodySaysWhyAndThatIsKept() {
        long unit = unit();
        overduePlan(unit);
        String path = "/api/bookings/" + book(unit, today().plusDays(1));
        Reply refused = served.post(path + "/handover", "{}", "If-Match", "*");
        assertEquals(422, refused.status());
        assertTrue(
                refused.text()
                        .contains("was due for service on "
                                + today().minusMonths(13).plusMonths(12)),
                refused.text());
        Reply out = served.post(path + "/handover", "{\"override\": \"checked on the projector\"}", "If-Match", "*");
        assertEquals(200, out.status(), out.text());
        assertTrue(out.json().at("/overrides/0/obstacles").asString().contains("due for service"), out.text());
    }

    @Test
    void aFinishedVisitLetsTheUnitOutAgainAndSetsTheNext() {
        long unit = unit();
        overduePlan(unit);
        assertTrue(due(unit, "").get("overdue").asBoolean());
        LocalDate day = today().minusDays(2);
        Reply visit = visit(unit, day, false);
        assertEquals(201, visit.status(), visit.text());
        assertTrue(due(unit, "").get("overdue").asBoolean());
        assertEquals("clean and adjust", due(unit, "").at("/visit/subject").asString());
        String path = "/api/bench-visits/" + visit.json().at("/items/0/id").asLong();
        Reply done = served.put(
                path,
                "{\"out\": \"" + day + "T00:10\", \"back\": \"" + day + "T00:20\", \"subject\": \"clean and adjust\","
                        + " \"bench\": {\"done\": true}}",
                "If-Match",
                "*");
        assertEquals(200, done.status(), done.text());
        assertFalse(due(unit, "").get("overdue").asBoolean());
        assertEquals(day.plusMonths(12).toString(), due(unit, "").get("dueOn").asString());
        assertFalse(due(unit, "").has("visit"));
        assertEquals(201, visit(unit, today().minusMonths(20), true).status());
        assertEquals(day.toString(), due(unit, "").get("lastDoneOn").asString());
        String booking = "/api/bookings/" + book(unit, today().plusDays(1));
        assertEquals(
                200, served.post(booking + "/handover", "{}", "If-Match", "*").status());
    }

    @Test
    void workIsNotDoneBeforeTheVisitIsOver() {
        Reply ahead = visit(unit(), today().plusDays(3), true);
        assertEquals(400, ahead.status(), ahead.text());
        assertEquals("/back", ahead.json().at("/faults/0/pointer").asString());
    }

    @Test
    void theListIsCutAtADayAndEndsWithWhatHasNone() {
        long overdue = unit();
        overduePlan(overdue);
        long open = unit();
        assertEquals(
                201,
                plan(open, "\"everyDaysOut\": 3, \"lastDoneOn\": \"" + today() + "\"")
                        .status());
        assertFalse(due(open, "").has("dueOn"));
        assertEquals(overdue, due(overdue, "?until=" + today()).get("unitId").asLong());
        assertFalse(served.get("/api/due?until=" + today()).text().contains("\"unitId\": " + open + ","));
        for (int each = 1; each <= 3; each++) {
            book(open, today().plusDays(each * 10L));
        }
        assertEquals(
                today().plusDays(30).toString(),
                due(open, "").get("byDaysOutOn").asString());
        assertEquals(400, served.get("/api/due?until=soon").status());
        assertEquals(
                400, served.get("/api/due?until=2027-01-01&until=2027-01-02").status());
        assertEquals(400, served.get("/api/due?when=2027-01-01").status());
    }

    @Test
    void aUnitThatLeftForGoodIsNotDue() {
        long unit = unit();
        overduePlan(unit);
        Reply kept = served.get("/api/units/" + unit);
        Reply gone = served.put(
                "/api/units/" + unit,
                "{\"tag\": \"" + kept.json().get("tag").asString()
                        + "\", \"holding\": {\"kind\": \"owned\"}, \"departure\": {\"how\": \"sold\", \"on\": \""
                        + today().minusDays(1) + "\"}}",
                "If-Match",
                "*");
        assertEquals(200, gone.status(), gone.text());
        assertFalse(served.get("/api/due")
                .text()
                .contains("\"" + kept.json().get("tag").asString() + "\""));
    }
}
