package dayglass.web.api.inventory.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Units are booked, let out and taken back over HTTP; the house keeps the time of Paris. */
class BookingApiTest extends OneServer {
    private static final String HOUSE =
            "{\"name\": \"The house\", \"timeZone\": \"Europe/Paris\", \"currency\": \"EUR\","
                    + " \"outTime\": \"15:00\", \"backTime\": \"10:00\", \"turnaroundMinutes\": 120}";

    private static int units;

    @BeforeAll
    static void keepTheTimeOfParis() {
        assertEquals(200, served.put("/api/house", HOUSE, "If-Match", "*").status());
    }

    private static long unit() {
        return unit("{\"kind\": \"owned\"}");
    }

    private static long unit(String holding) {
        units++;
        Reply reply = served.post("/api/units", "{\"tag\": \"T-" + units + "\", \"holding\": " + holding + "}");
        assertEquals(201, reply.status(), reply.text());
        return reply.json().get("id").asLong();
    }

    private static Reply book(long unit, String times) {
        return served.post(
                "/api/bookings", "{\"unitIds\": [" + unit + "], " + times + ", \"subject\": \"Lantern Weir\"}");
    }

    private static Reply book(long unit, String out, String back) {
        return book(unit, "\"out\": \"" + out + "\", \"back\": \"" + back + "\"");
    }

    private static JsonNode item(Reply reply) {
        assertEquals(201, reply.status(), reply.text());
        return reply.json().get("items").get(0);
    }

    private static String faults(Reply reply) {
        StringBuilder pointers = new StringBuilder();
        reply.json()
                .get("faults")
                .forEach(fault ->
                        pointers.append(fault.get("pointer").asString()).append(' '));
        return pointers.toString().strip();
    }

    @Test
    void aUseIsBookedFromTheAfternoonBeforeToTheMorningAfter() {
        JsonNode booking = item(book(unit(), "\"firstDay\": \"2027-04-12\", \"lastDay\": \"2027-04-16\""));
        assertEquals("2027-04-11T15:00:00+02:00", booking.get("out").asString());
        assertEquals("2027-04-17T10:00:00+02:00", booking.get("back").asString());
        assertEquals("2027-04-17T12:00:00+02:00", booking.get("freeAt").asString());
        assertEquals(
                "2027-04-13T10:00:00+02:00",
                item(book(unit(), "\"firstDay\": \"2027-04-12\"")).get("back").asString());
    }

    /** Europe/Paris, IANA time zone database: clocks go forward on 28 March 2027 and back on 31 October. */
    @ParameterizedTest
    @CsvSource({
        "2027-03-28T01:59, 2027-03-28T03:00, 2027-03-28T01:59:00+01:00, 2027-03-28T03:00:00+02:00", // one minute
        "2027-10-30T15:00, 2027-10-31T10:00, 2027-10-30T15:00:00+02:00, 2027-10-31T10:00:00+01:00",
        "2027-10-31T02:30+02:00, 2027-10-31T02:30+01:00, 2027-10-31T02:30:00+02:00, 2027-10-31T02:30:00+01:00",
        "2028-02-28T15:00, 2028-02-29T10:00, 2028-02-28T15:00:00+01:00, 2028-02-29T10:00:00+01:00"
    })
    void timesAreReadOnTheHousesClock(String out, String back, String outThen, String backThen) {
        JsonNode booking = item(book(unit(), out, back));
        assertEquals(outThen, booking.get("out").asString());
        assertEquals(backThen, booking.get("back").asString());
    }

    @ParameterizedTest
    @CsvSource({
        "2027-03-28T02:30, 2027-03-29T10:00, /out",
        "2027-10-31T02:30, 2027-10-31T10:00, /out",
        "2027-02-29T10:00, 2027-03-01T10:00, /out",
        "2027-04-12T10:00, 2027-04-12T10:00, /back",
        "12 April,         2027-04-12T10:00, /out"
    })
    void aTimeThatIsNoneOrTwoIsAskedAbout(String out, String back, String pointer) {
        Reply reply = book(unit(), out, back);
        assertEquals(400, reply.status());
        assertEquals(pointer, faults(reply));
    }

    @Test
    void anHourThatOccursTwiceIsAskedAboutWithBothOffsets() {
        Reply reply = book(unit(), "2027-10-31T02:30", "2027-10-31T10:00");
        assertTrue(reply.text().contains("2027-10-31T02:30:00+02:00"), reply.text());
        assertTrue(reply.text().contains("2027-10-31T02:30:00+01:00"), reply.text());
    }

    @Test
    void aUnitIsNeverInTwoPlacesAndItIsSaidWhereItIs() {
        long unit = unit();
        item(book(unit, "2027-04-12T15:00", "2027-04-15T10:00"));
        Reply taken = book(unit, "2027-04-15T11:59", "2027-04-16T10:00");
        assertEquals(409, taken.status());
        assertEquals("taken", taken.kind());
        assertTrue(taken.text().contains("Lantern Weir"), taken.text());
        assertTrue(taken.text().contains("Thu 15 Apr 2027, 12:00"), taken.text());
        item(book(unit, "2027-04-15T12:00", "2027-04-16T10:00"));
        Reply bench = served.post(
                "/api/bench-visits",
                "{\"unitIds\": [" + unit + "], \"out\": \"2027-04-14T09:00\", \"back\": \"2027-04-14T17:00\","
                        + " \"subject\": \"collimate\"}");
        assertEquals(409, bench.status());
        Reply absence = served.post(
                "/api/absences",
                "{\"unitIds\": [" + unit + "], \"out\": \"2027-04-10T09:00\", \"back\": \"2027-04-12T15:01\","
                        + " \"subject\": \"at the maker's\"}");
        assertEquals(409, absence.status());
    }

    @Test
    void severalUnitsAreBookedTogetherOrNotAtAll() {
        long one = unit();
        long other = unit();
        item(book(other, "2027-05-03T15:00", "2027-05-05T10:00"));
        Reply both = served.post(
                "/api/bookings",
                "{\"unitIds\": [" + one + ", " + other + "], \"out\": \"2027-05-04T15:00\","
                        + " \"back\": \"2027-05-06T10:00\", \"subject\": \"Salt Lane\"}");
        assertEquals(409, both.status());
        assertEquals(
                0, served.get("/api/bookings?unit=" + one).json().get("items").size());
    }

    @Test
    void aBookingMovesOnlyOnTheVersionThatWasSeenAndFreesItsTimeWhenCancelled() {
        long unit = unit();
        JsonNode booking = item(book(unit, "2027-06-01T15:00", "2027-06-03T10:00"));
        String path = "/api/bookings/" + booking.get("id").asLong();
        String later = "{\"out\": \"2027-06-02T15:00\", \"back\": \"2027-06-04T10:00\", \"subject\": \"Salt Lane\"}";
        assertEquals(428, served.put(path, later).status());
        Reply moved = served.put(path, later, "If-Match", "\"1\"");
        assertEquals(200, moved.status(), moved.text());
        assertEquals(412, served.put(path, later, "If-Match", "\"1\"").status());
        item(book(unit, "2027-06-01T08:00", "2027-06-02T10:00"));
        assertEquals(
                409,
                served.put(
                                path,
                                "{\"out\": \"2027-06-02T09:00\", \"back\": \"2027-06-04T10:00\", \"subject\": \"x\"}",
                                "If-Match",
                                "\"2\"")
                        .status());
        Reply cancelled = served.send("POST", path + "/cancel", null, "If-Match", "\"2\"");
        assertTrue(cancelled.json().get("cancelled").asBoolean(), cancelled.text());
        item(book(unit, "2027-06-02T15:00", "2027-06-04T10:00"));
        assertEquals(
                422,
                served.send("POST", path + "/cancel", null, "If-Match", "\"3\"").status());
    }

    @Test
    void aUnitThatComesBackEarlyIsFreeForOthersAfterTheTurnaround() {
        long unit = unit();
        JsonNode booking = item(book(unit, "2027-07-01T15:00", "2027-07-10T10:00"));
        String path = "/api/bookings/" + booking.get("id").asLong();
        Reply early = served.post(path + "/return", "{\"at\": \"2027-07-05T10:00\"}", "If-Match", "*");
        assertEquals(422, early.status());
        Reply out = served.post(path + "/handover", "{\"at\": \"2027-07-01T15:10\"}", "If-Match", "*");
        assertEquals(200, out.status(), out.text());
        assertEquals(422, served.post(path + "/handover", "{}", "If-Match", "*").status());
        assertEquals(
                422,
                served.send("POST", path + "/cancel", null, "If-Match", "*").status());
        Reply back = served.post(path + "/return", "{\"at\": \"2027-07-05T10:00\"}", "If-Match", "*");
        assertEquals("2027-07-05T12:00:00+02:00", back.json().get("freeAt").asString());
        item(book(unit, "2027-07-05T12:00", "2027-07-10T10:00"));
    }

    @Test
    void aUnitThatIsNotHealthyIsNotPromisedAndGoesOutOnlyWhereSomebodySaysWhy() {
        long unit = unit();
        JsonNode booking = item(book(unit, "2027-08-01T15:00", "2027-08-03T10:00"));
        String note = "{\"part\": \"rear glass\", \"finding\": \"scratch\", \"severity\": 3}";
        assertEquals(201, served.post("/api/units/" + unit + "/notes", note).status());
        Reply promise = book(unit, "2027-09-01T15:00", "2027-09-03T10:00");
        assertEquals(422, promise.status());
        assertTrue(promise.text().contains("severity 3"), promise.text());
        String path = "/api/bookings/" + booking.get("id").asLong();
        Reply refused = served.post(path + "/handover", "{\"at\": \"2027-08-01T15:00\"}", "If-Match", "*");
        assertEquals(422, refused.status());
        Reply out = served.post(
                path + "/handover",
                "{\"at\": \"2027-08-01T15:00\", \"override\": \"used as a prop only\"}",
                "If-Match",
                "*");
        assertEquals(200, out.status(), out.text());
        assertEquals("used as a prop only", out.json().at("/overrides/0/reason").asString());
    }

    @Test
    void aUnitThatIsRentedInServesUpToWhatIsPaid() {
        long unit = unit("{\"kind\": \"rented in\", \"owner\": \"Pier House\", \"agreement\": \"A-9\","
                + " \"from\": \"2027-04-01\", \"paidUpTo\": \"2027-04-30\", \"dueBackOn\": \"2027-05-01\"}");
        item(book(unit, "2027-04-26T15:00", "2027-04-30T10:00"));
        Reply beyond = book(unit, "2027-04-30T15:00", "2027-05-03T10:00");
        assertEquals(422, beyond.status());
        assertTrue(beyond.text().contains("is held to 30 Apr 2027 only"), beyond.text());
    }

    @Test
    void availabilityTellsWhatIsFreeAndWhenTheOthersNextAre() {
        long free = unit();
        long taken = unit();
        item(book(taken, "2027-11-01T15:00", "2027-11-05T10:00"));
        item(book(taken, "2027-11-06T10:00", "2027-11-08T10:00"));
        Reply set = served.post(
                "/api/lens-sets",
                "{\"name\": \"The pair\", \"matched\": true, \"members\": [" + free + ", " + taken + "]}");
        JsonNode answer = served.get("/api/availability?out=2027-11-02T15:00&back=2027-11-04T10:00")
                .json();
        assertTrue(of(answer, free).get("free").asBoolean());
        assertFalse(of(answer, taken).get("free").asBoolean());
        // For 43 hours and a turnaround of two there is no room between the two bookings.
        assertEquals(
                "2027-11-08T12:00:00+01:00", of(answer, taken).get("nextFree").asString());
        JsonNode pair = answer.get("sets").get(0);
        assertEquals(set.json().get("id").asLong(), pair.get("setId").asLong());
        assertEquals(1, pair.get("freeMembers").asInt());
        assertEquals("2027-11-08T12:00:00+01:00", pair.get("nextFree").asString());
        assertEquals(400, served.get("/api/availability?out=2027-11-02T15:00").status());
    }

    private static JsonNode of(JsonNode answer, long unit) {
        for (JsonNode each : answer.get("units")) {
            if (each.get("unitId").asLong() == unit) {
                return each;
            }
        }
        throw new AssertionError("nothing is said of unit " + unit);
    }

    @Test
    void aBookingSentTwiceWithOneKeyIsMadeOnce() {
        long unit = unit();
        String body = "{\"unitIds\": [" + unit + "], \"firstDay\": \"2027-12-01\", \"subject\": \"Salt Lane\"}";
        Reply first = served.post("/api/bookings", body, "Idempotency-Key", "one-booking");
        Reply again = served.post("/api/bookings", body, "Idempotency-Key", "one-booking");
        assertEquals(201, again.status());
        assertEquals(first.text(), again.text());
        String other = body.replace("Salt Lane", "Lantern Weir");
        assertEquals(
                422,
                served.post("/api/bookings", other, "Idempotency-Key", "one-booking")
                        .status());
        assertEquals(
                1, served.get("/api/bookings?unit=" + unit).json().get("items").size());
    }

    @Test
    void holdsOccupyNothing() {
        long unit = unit();
        String hold = "{\"unitId\": " + unit + ", \"firstDay\": \"2028-01-10\", \"rank\": 2,"
                + " \"expires\": \"2027-12-01T18:00\", \"subject\": \"Salt Lane\"}";
        Reply held = served.post("/api/holds", hold);
        assertEquals(201, held.status(), held.text());
        item(book(unit, "\"firstDay\": \"2028-01-10\""));
        assertEquals(
                400,
                served.post("/api/holds", hold.replace("\"rank\": 2", "\"rank\": 10"))
                        .status());
        assertEquals(
                204, served.delete("/api/holds/" + held.id(), "If-Match", "*").status());
    }
}
