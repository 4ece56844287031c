package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import dayglass.web.api.desk.DeskHouse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What the desk let and the bench did, brought into the books of a job that holds units 1 and 3; figures are worked by hand
 * from the card of {@link DeskHouse}.
 */
class BringInTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private DeskHouse house;

    private String job = "";

    @BeforeEach
    void open() {
        house = new DeskHouse(folder);
        long id = house.served
                .post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        job = "/api/jobs/" + id;
        gear(1, "2027-01-01");
        gear(3, "2027-01-01");
    }

    @AfterEach
    void close() {
        house.close();
    }

    private void gear(int unit, String inService) {
        house.made(
                job + "/gear",
                "{\"unitId\": " + unit + ", \"price\": \"4000.00\", \"inService\": \"" + inService
                        + "\", \"depreciation\": {\"method\": \"straight line\", \"years\": 5}}");
    }

    /** The pier for three days: 500.00 is cheapest as a set at 180.00 a day; here a week's 500.00 caps 540.00. */
    private void let() {
        Reply rental = house.confirmed("3 days from mon", "{\"set\": 1}");
        assertEquals(201, rental.status(), rental.text());
        house.clock.set("2027-04-04T15:00:00Z");
        rental = house.rental(rental, "handover", DeskHouse.units(1, 3));
        house.clock.set("2027-04-08T09:00:00Z");
        rental = house.rental(rental, "return", DeskHouse.units(1, 3));
        assertEquals(0, missing("2027-12-31").size(), "not earned before it is settled");
        assertEquals(200, house.rental(rental, "settle", "{\"keep\": \"0.00\"}").status());
    }

    /** A visit on one day, finished, that cost something. */
    private long bench(int unit, String cost) {
        Reply visits = house.made(
                "/api/bench-visits",
                "{\"unitIds\": [" + unit + "], \"firstDay\": \"2027-04-01\", \"lastDay\": \"2027-04-01\","
                        + " \"subject\": \"stiff focus\"}");
        long id = visits.json().at("/items/0/id").asLong();
        house.clock.set("2027-04-05T09:00:00Z");
        Reply visit = house.served.get("/api/bench-visits/" + id);
        Reply done = house.served.put(
                "/api/bench-visits/" + id,
                "{\"out\": " + visit.json().get("out") + ", \"back\": "
                        + visit.json().get("back")
                        + ", \"subject\": \"stiff focus\", \"bench\": {\"work\": \"cleaned\", \"cost\": {\"amount\": \""
                        + cost + "\", \"currency\": \"EUR\"}, \"done\": true}}",
                "If-Match",
                visit.etag());
        assertEquals(200, done.status(), done.text());
        return id;
    }

    private JsonNode missing(String through) {
        Reply reply = house.served.get(job + "/gear/to-bring-in?through=" + through);
        assertEquals(200, reply.status(), reply.text());
        return reply.json().get("items");
    }

    private Reply bringIn(String through) {
        return house.served.post(job + "/gear/to-bring-in", "{\"through\": \"" + through + "\"}");
    }

    private String gearSum(int id, String what) {
        return house.served.get("/api/gear/" + id).json().get(what).asString();
    }

    /** 500.00 by 4000.00 and 4000.00 is 250.00 each. */
    @Test
    void aSettledRentalIsBroughtInOnceAndWhatIsTakenBackIsMadeGood() {
        let();
        JsonNode items = missing("2027-04-30");
        assertEquals(2, items.size(), items.toString());
        assertEquals("-250.00", items.get(0).get("net").asString());
        assertEquals("rental", items.get(0).get("from").asString());
        assertEquals("2027-04-08", items.get(0).get("day").asString());
        assertEquals(0, missing("2027-04-07").size(), "it was settled on the day after");
        Reply posted = bringIn("2027-04-30");
        assertEquals(201, posted.status(), posted.text());
        JsonNode first = posted.json().at("/items/0");
        assertEquals("2027-04-30", first.get("date").asString());
        assertEquals("2027-04-08", first.get("serviceFrom").asString());
        assertEquals(
                "H40-1, let on rental 1, Nell Orrin", first.get("description").asString());
        assertEquals("250.00", gearSum(1, "let"));
        assertEquals("250.00", gearSum(2, "let"));
        assertEquals(
                1,
                house.served.get("/api/gear/1").json().at("/entries/0/number").asInt());
        assertEquals(422, bringIn("2027-04-30").status(), "never twice");
        house.made(
                "/api/book-entries/" + first.get("id").asLong() + "/reversal",
                "{\"date\": \"2027-04-30\", \"reason\": \"too early\"}");
        assertEquals("0.00", gearSum(1, "let"));
        Reply again = bringIn("2027-05-31");
        assertEquals(1, again.json().get("items").size(), again.text());
        assertEquals("250.00", gearSum(1, "let"));
        assertEquals(
                "-500.00",
                house.served
                        .get(job + "/cost-report")
                        .json()
                        .at("/total/actual")
                        .asString());
    }

    /** A value of 4000.00 and one of 12000.00 share 500.00 as 125.00 and 375.00. */
    @Test
    void whatIsSharedOtherwiseSinceIsPostedAsTheDifference() {
        let();
        bringIn("2027-04-30");
        Reply unit = house.served.get("/api/units/3");
        assertEquals(
                200,
                house.served
                        .put(
                                "/api/units/3",
                                "{\"tag\": \"H75-1\", \"modelId\": 2, \"value\": {\"amount\": \"12000.00\","
                                        + " \"currency\": \"EUR\", \"setOn\": \"2027-05-01\"}}",
                                "If-Match",
                                unit.etag())
                        .status());
        assertEquals("125.00", missing("2027-05-31").get(0).get("net").asString());
        assertEquals("-125.00", missing("2027-05-31").get(1).get("net").asString());
        assertEquals(201, bringIn("2027-05-31").status());
        assertEquals("125.00", gearSum(1, "let"));
        assertEquals("375.00", gearSum(2, "let"));
        assertEquals(0, missing("2027-05-31").size());
    }

    @Test
    void aFinishedVisitIsAServiceCostFromTheFirstDayOfServiceOn() {
        long visit = bench(1, "85.50");
        house.clock.set("2027-03-31T09:00:00Z");
        bench(2, "40.00");
        JsonNode items = missing("2027-04-30");
        assertEquals(1, items.size(), "unit 2 is not in these books");
        assertEquals("bench", items.get(0).get("from").asString());
        assertEquals(visit, items.get(0).get("number").asLong());
        assertEquals("85.50", items.get(0).get("net").asString());
        gear(2, "2027-04-02");
        assertEquals(1, missing("2027-04-30").size(), "that was before its first day of service");
        String page = "/books/" + job.substring("/api/jobs/".length()) + "/bring-in?/through=2027-04-30";
        assertTrue(house.served.page(page).text().contains("bench: stiff focus"));
        String posting = page.substring(0, page.indexOf('?'));
        assertEquals(
                303, house.served.form(posting, "%2Fthrough=2027-04-30&once=b1").status());
        assertEquals("85.50", gearSum(1, "serviced"));
        assertTrue(house.served.page(page).text().contains("Nothing is missing up to that day."));
    }

    @Test
    void whatIsGoneFromTheBooksIsLeftAlone() {
        let();
        house.made(
                "/api/gear/1/disposal", "{\"date\": \"2027-04-20\", \"net\": \"100.00\", \"description\": \"sold\"}");
        assertEquals(1, missing("2027-04-30").size());
        assertEquals(400, house.served.get(job + "/gear/to-bring-in").status());
    }
}
