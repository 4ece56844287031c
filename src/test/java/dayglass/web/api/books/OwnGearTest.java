package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** A unit of the house's own from its purchase to its going. */
class OwnGearTest extends FreshBooks {
    private long unit;

    @BeforeEach
    void addUnit() {
        unit = served.post("/api/units", "{\"tag\": \"Q-1\"}").id();
    }

    private String facts() {
        return "{\"unitId\": " + unit
                + ", \"price\": \"3650.00\", \"inService\": \"2027-01-01\", \"costCode\": \"740\","
                + " \"depreciation\": {\"method\": \"straight line\", \"years\": 10}}";
    }

    private Reply act(long gear, String what, String date, String net) {
        Reply reply = served.post(
                "/api/gear/" + gear + "/" + what,
                "{\"date\": \"" + date + "\", \"net\": \"" + net + "\", \"description\": \"" + what + "\"}");
        assertEquals(201, reply.status(), reply.text());
        return reply;
    }

    private Reply writeOff(String through) {
        return served.post(job + "/gear/depreciation", "{\"through\": \"" + through + "\"}");
    }

    private JsonNode gear(long id) {
        return served.get("/api/gear/" + id).json();
    }

    @Test
    void itIsWrittenOffLetServicedAndSoldWithItsGain() {
        long id = served.post(job + "/gear", facts()).id();
        assertEquals(409, served.post(job + "/gear", facts()).status());
        Reply first = writeOff("2027-01-31");
        assertEquals(201, first.status(), first.text());
        assertEquals("31.00", first.json().at("/items/0/net").asString());
        assertEquals("2027-01-01", first.json().at("/items/0/serviceFrom").asString());
        assertEquals(422, writeOff("2027-01-31").status(), "nothing is left");
        Reply second = writeOff("2027-02-28");
        assertEquals("28.00", second.json().at("/items/0/net").asString());
        assertEquals("2027-02-01", second.json().at("/items/0/serviceFrom").asString());
        act(id, "letting", "2027-02-10", "100.00");
        act(id, "service", "2027-02-11", "40.00");
        assertEquals("3591.00", gear(id).get("bookValue").asString());
        assertEquals("100.00", gear(id).get("let").asString());
        Reply sold = act(id, "disposal", "2027-03-31", "3600.00");
        assertEquals(3, sold.json().get("items").size(), "written off up to the day, its value, what was had");
        assertEquals("3560.00", sold.json().at("/items/1/net").asString());
        assertEquals("-3600.00", sold.json().at("/items/2/net").asString());
        assertTrue(sold.json().at("/items/2/note").asString().contains("gain of"), sold.text());
        assertTrue(gear(id).get("gone").asBoolean());
        assertEquals("0.00", gear(id).get("bookValue").asString());
        assertEquals(422, writeOff("2027-04-30").status(), "what is gone is written off no more");
        // 90 written off, less 100 let, 40 service, less a gain of 40: what the job bears in all.
        assertEquals(
                "-10.00",
                served.get(job + "/cost-report").json().at("/total/actual").asString());
        assertEquals(409, served.delete("/api/gear/" + id, "If-Match", "\"1\"").status());
    }

    /** One that cannot be posted would keep all the others from being written off. */
    @Test
    void whatIsDearerThanTheBooksHoldIsRefusedAtItsPrice() {
        Reply refused = served.post(job + "/gear", facts().replace("3650.00", "99999999999.00"));
        assertEquals(400, refused.status(), refused.text());
        assertEquals("/price", refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void whatIsTakenBackIsWrittenOffAgain() {
        long id = served.post(job + "/gear", facts()).id();
        long entry = writeOff("2027-01-31").json().at("/items/0/id").asLong();
        served.post(
                "/api/book-entries/" + entry + "/reversal", "{\"date\": \"2027-02-01\", \"reason\": \"wrong price\"}");
        assertEquals("0.00", gear(id).get("depreciated").asString());
        assertEquals("59.00", writeOff("2027-02-28").json().at("/items/0/net").asString());
        act(id, "disposal", "2027-03-31", "0.00");
        assertTrue(gear(id).get("gone").asBoolean());
    }

    @Test
    void whatWasNotPostedForCanBeRemovedAndALossIsNamed() {
        long id = served.post(job + "/gear", facts()).id();
        assertEquals(204, served.delete("/api/gear/" + id, "If-Match", "\"1\"").status());
        assertEquals(404, served.get("/api/gear/" + id).status());
        long again = served.post(job + "/gear", facts()).id();
        Reply sold = act(again, "disposal", "2027-01-10", "100.00");
        assertTrue(sold.text().contains("loss of"), sold.text());
        Reply refused = served.post(
                job + "/gear",
                "{\"unitId\": " + unit + ", \"depreciation\": {\"method\": \"straight line\", \"years\": 3}}");
        assertEquals(400, refused.status(), "neither the unit nor the request says a price");
        assertFalse(refused.text().isEmpty());
        assertEquals(1, served.get(job + "/gear").json().get("items").size());
    }
}
