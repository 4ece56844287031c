package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** A day at the desk over HTTP, in the house of {@link DeskHouse}; out at 15:00 the day before, back at 10:00 the day after. */
class TodayApiTest extends AtTheDesk {
    private static final String UNIT_2 = "{\"unit\": 2}";

    private JsonNode today(String date) {
        Reply reply = house.served.get("/api/today" + (date.isEmpty() ? "" : "?date=" + date));
        assertEquals(200, reply.status(), reply.text());
        return reply.json();
    }

    private String page(String date) {
        Reply reply = house.served.page("/desk/today" + (date.isEmpty() ? "" : "?date=" + date));
        assertEquals(200, reply.status());
        return reply.text();
    }

    private static List<String> texts(JsonNode list, String member) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.get(member).asString()));
        return texts;
    }

    /** The house in a zone of its own. */
    private void in(String zone) {
        Reply now = house.served.get("/api/house");
        String body = "{\"name\": \"Gannet Yard\", \"timeZone\": \"" + zone + "\", \"currency\": \"EUR\","
                + " \"outTime\": \"15:00\", \"backTime\": \"10:00\", \"turnaroundMinutes\": 0}";
        Reply kept = house.served.put("/api/house", body, "If-Match", now.etag());
        assertEquals(200, kept.status(), kept.text());
    }

    private Reply booked(int unit, String out, String back, String subject) {
        Reply made = house.made(
                "/api/bookings",
                "{\"unitIds\": [" + unit + "], \"out\": \"" + out + "\", \"back\": \"" + back + "\", \"subject\": \""
                        + subject + "\"}");
        return house.served.get("/api/bookings/" + made.json().at("/items/0/id").asLong());
    }

    private void noted(int unit, String more) {
        house.made(
                "/api/units/" + unit + "/notes",
                "{\"part\": \"whole\", \"finding\": \"dust\", \"severity\": 0" + more + "}");
    }

    @Test
    void anEmptyDayIsEmptyAndSaysSoInWords() {
        JsonNode day = today("");
        assertEquals(DeskHouse.TODAY, day.get("date").asString());
        for (String part : List.of("out", "back", "late", "giveBack", "short", "testing")) {
            assertEquals(0, day.get(part).size(), part);
        }
        String page = page("");
        for (String words : List.of(
                "Nothing goes out on this day.",
                "Nothing comes back on this day.",
                "Nothing is late, and nothing has to go back to its owner.",
                "All that goes out is here and can go.",
                "Everything that came back was looked at.")) {
            assertTrue(page.contains(words), words);
        }
        assertEquals(400, house.served.get("/api/today?date=2027-02-30").status());
        assertEquals(400, house.served.page("/desk/today?date=tomorrow").status());
    }

    /** 5 to 7 April is out on the 4th at 15:00 and back on the 8th at 10:00. */
    @Test
    void whatPassesTheDoorIsToldByTheHourTogetherAndStaysWhenItIsDone() {
        Reply rental = house.confirmed("mon to wed", "{\"set\": 1}, " + UNIT_2);
        booked(5, "2027-04-04T09:30", "2027-04-04T18:00", "Salt Lane");
        JsonNode day = today("2027-04-04");
        assertEquals(List.of("2027-04-04T09:30:00Z", "2027-04-04T15:00:00Z"), texts(day.get("out"), "at"));
        JsonNode own = day.at("/out/1");
        assertEquals(rental.id(), own.at("/rental/id").asLong());
        assertEquals("Nell Orrin", own.at("/rental/customer/name").asString());
        assertEquals(List.of("H40-1", "H40-2", "H75-1"), texts(own.get("units"), "tag"));
        assertEquals("Marrow Heron 40", own.at("/units/0/model").asString());
        assertFalse(own.get("done").asBoolean());
        assertEquals("Salt Lane", day.at("/out/0/subject").asString());
        assertFalse(day.at("/out/0").has("rental"));
        assertEquals("2027-04-04T18:00:00Z", day.at("/back/0/at").asString());
        assertEquals(
                "2027-04-08T10:00:00Z", today("2027-04-08").at("/back/0/at").asString());

        house.clock.set("2027-04-04T14:20:30Z");
        rental = house.rental(rental, "handover", DeskHouse.units(1, 3));
        day = today("");
        assertEquals(3, day.get("out").size(), day.toString());
        assertEquals("2027-04-04T14:20:30Z", day.at("/out/1/at").asString());
        assertTrue(day.at("/out/1/done").asBoolean());
        assertEquals(List.of("H40-1", "H75-1"), texts(day.at("/out/1/units"), "tag"));
        assertFalse(day.at("/out/2/done").asBoolean());
        String page = page("");
        assertTrue(page.contains("href=\"/desk/rentals/" + rental.id() + "\""), page);
        assertTrue(page.contains("href=\"/shelf/units/2\""), page);
        assertTrue(page.contains("went out"), page);

        house.clock.set("2027-04-05T08:00:00Z");
        day = today("");
        assertEquals(List.of("2027-04-04T15:00:00Z"), texts(day.get("out"), "at"), "not fetched yet");
        assertTrue(page("").contains("not fetched since Sun 4 Apr 2027"));
        house.rental(rental, "return", DeskHouse.units(1, 3));
        JsonNode back = today("").get("back");
        assertTrue(back.at("/0/done").asBoolean());
        assertEquals(List.of("H40-1", "H75-1"), texts(back.at("/0/units"), "tag"));
    }

    /** Two days begun at 100.00 with a waiver of 10 %, and the tax of the rules. */
    @Test
    void whatIsLateSaysByHowLongAndWhatItCostsByTheRules() {
        Reply rules = house.served.get("/api/desk-rules");
        house.served.put(
                "/api/desk-rules",
                "{\"markUpPercent\": \"20\", \"taxes\": [{\"code\": \"sales tax\", \"percent\": \"20\"}]}",
                "If-Match",
                rules.etag());
        Reply rental = house.confirmed("mon to wed", UNIT_2);
        house.clock.set("2027-04-04T15:00:00Z");
        rental = house.rental(rental, "handover", DeskHouse.units(2));
        house.clock.set("2027-04-08T10:00:00Z");
        assertEquals(0, today("").get("late").size(), "due at this very moment");
        house.clock.set("2027-04-09T12:30:00Z");
        JsonNode late = today("").at("/late/0");
        assertEquals("2027-04-08T10:00:00Z", late.get("due").asString());
        assertEquals(2, late.get("daysBegun").asInt());
        assertEquals("220.00", late.at("/costs/0/net/amount").asString());
        assertEquals("264.00", late.at("/cost/amount").asString());
        String page = page("");
        assertTrue(page.contains("1 day 2 hours"), page);
        assertTrue(page.contains("If it all came back now: <strong>264.00"), page);
        Reply back = house.rental(rental, "return", DeskHouse.units(2));
        assertEquals("264.00", back.json().at("/charges/0/total").asString(), "as it was told");
        assertEquals(0, today("").get("late").size());
    }

    @Test
    void whatBelongsToOthersIsToldOnTheDayItIsDue() {
        house.made(
                "/api/units",
                "{\"tag\": \"RI-1\", \"holding\": {\"kind\": \"rented in\", \"owner\": \"Pier House\", \"agreement\":"
                        + " \"A-9\", \"from\": \"2027-03-01\", \"paidUpTo\": \"2027-04-01\", \"dueBackOn\":"
                        + " \"2027-04-02\", \"lateDay\": {\"amount\": \"45.50\", \"currency\": \"EUR\"}}}");
        assertEquals(0, today("2027-04-01").get("giveBack").size());
        assertEquals("RI-1", today("2027-04-02").at("/giveBack/0/tag").asString());
        house.clock.set("2027-04-05T09:00:00Z");
        JsonNode late = today("").at("/giveBack/0");
        assertEquals("136.50", late.at("/lateCost/amount").asString());
        assertTrue(page("").contains("to Pier House, agreement A-9; late so far <strong>136.50"));
    }

    /** Three of the 75 where the house has two, and of the Gannet two where nobody has another. */
    @Test
    void whatIsShortSaysWhatToGetFromWhomAndWhatCannotGo() {
        Reply rental = house.confirmed("mon", "{\"model\": 2, \"count\": 3}, {\"model\": 3, \"count\": 2}");
        assertEquals(0, today("2027-03-28").get("short").size(), "eight days before");
        JsonNode all = today("2027-04-04").get("short");
        assertEquals(1, all.size(), all.toString());
        JsonNode ofRental = all.get(0);
        assertEquals("2027-04-04T15:00:00Z", ofRental.get("at").asString());
        assertEquals(rental.id(), ofRental.at("/rental/id").asLong());
        assertEquals("Quay Hire", ofRental.at("/toGet/0/supplier").asString());
        assertEquals("150.00", ofRental.at("/toGet/0/cost/amount").asString());
        assertEquals(1, ofRental.get("missing").size(), ofRental.toString());
        assertEquals(0, ofRental.get("hindered").size());
        assertEquals(0, today("2027-04-05").get("short").size(), "its hour is over");

        noted(3, ", \"quarantine\": true");
        house.made("/api/service-plans", "{\"unitId\": 4, \"everyMonths\": 1, \"lastDoneOn\": \"2027-03-01\"}");
        long booking = rental.json().at("/placed/2/bookingId").asLong();
        Reply shown = house.served.get("/api/bookings/" + booking);
        assertEquals(
                200,
                house.served
                        .post("/api/bookings/" + booking + "/cancel", "{}", "If-Match", shown.etag())
                        .status());
        JsonNode hindered = today("2027-04-01").at("/short/0/hindered");
        assertEquals(List.of("G40-1", "H75-1", "H75-2"), texts(hindered, "tag"), hindered.toString());
        assertEquals("Its booking was cancelled.", hindered.at("/0/why/0").asString());
        assertEquals("It is in quarantine.", hindered.at("/1/why/0").asString());
        assertTrue(hindered.at("/2/why/0").asString().contains("due for service"), hindered.toString());
        String page = page("2027-04-01");
        assertTrue(page.contains("from Quay Hire at 150.00"), page);
        assertTrue(page.contains("neither free nor on a supplier"), page);
    }

    @Test
    void aUnitThatIsLateElsewhereCannotGo() {
        Reply first = booked(5, "2027-03-31T09:00", "2027-04-01T09:00", "Salt Lane");
        booked(5, "2027-04-02T09:00", "2027-04-03T09:00", "Lantern Weir");
        house.served.post("/api/bookings/" + first.id() + "/handover", "{}", "If-Match", first.etag());
        assertEquals(0, today("").get("short").size(), "it is due in time");
        house.clock.set("2027-04-01T09:00:01Z");
        JsonNode late = today("").at("/short/0");
        assertEquals("Lantern Weir", late.get("subject").asString());
        assertEquals(
                "It is still out on another booking.",
                late.at("/hindered/0/why/0").asString());
        assertEquals("Salt Lane", today("").at("/late/0/subject").asString());
        assertEquals(0, today("").at("/late/0/costs").size());
    }

    @Test
    void whatCameBackIsLookedAtBeforeItGoesAgain() {
        Reply rental = house.confirmed("tomorrow", "{\"set\": 1}, " + UNIT_2);
        house.clock.set("2027-03-31T15:00:00Z");
        rental = house.rental(rental, "handover", DeskHouse.units(1, 2, 3));
        assertEquals(0, today("").get("testing").size());
        house.clock.set("2027-04-02T10:00:00Z");
        house.rental(rental, "return", DeskHouse.units(1, 2, 3));
        booked(3, "2027-04-05T09:00", "2027-04-06T09:00", "Salt Lane");
        booked(2, "2027-04-09T09:00", "2027-04-10T09:00", "Salt Lane");
        JsonNode testing = today("").get("testing");
        assertEquals(List.of("H75-1", "H40-2", "H40-1"), texts(testing, "tag"));
        assertEquals("2027-04-02T10:00:00Z", testing.at("/0/cameBack").asString());
        assertEquals("Salt Lane", testing.at("/0/next/subject").asString());
        assertFalse(testing.get(2).has("next"));

        noted(3, "");
        String look = "\"out\": \"2027-04-02T11:00\", \"back\": \"2027-04-02T12:00\", \"subject\": \"look\"";
        long id = house.made("/api/bench-visits", "{\"unitIds\": [1], " + look + "}")
                .json()
                .at("/items/0/id")
                .asLong();
        Reply visit = house.served.get("/api/bench-visits/" + id);
        assertEquals(List.of("H40-2", "H40-1"), texts(today("").get("testing"), "tag"));
        house.clock.set("2027-04-02T13:00:00Z");
        Reply done = house.served.put(
                "/api/bench-visits/" + id, "{" + look + ", \"bench\": {\"done\": true}}", "If-Match", visit.etag());
        assertEquals(200, done.status(), done.text());
        assertEquals(List.of("H40-2"), texts(today("").get("testing"), "tag"));
        assertTrue(page("").contains("not looked at since"));
    }

    @Test
    void aWarningIsLookedAtOnTheDayThatItGoesOut() {
        booked(4, "2027-04-02T09:00", "2027-04-03T09:00", "Salt Lane");
        house.made("/api/units/4/notes", "{\"part\": \"iris\", \"finding\": \"oil\", \"severity\": 1}");
        assertEquals(0, today("2027-04-01").get("testing").size());
        JsonNode warned = today("2027-04-02").at("/testing/0");
        assertTrue(warned.get("warning").asBoolean());
        assertFalse(warned.has("cameBack"));
        assertEquals("2027-04-02T09:00:00Z", warned.at("/next/out").asString());
    }

    /**
     * In Berlin the clocks of 2027 go forward on 28 March at 02:00 and back on 31 October at 03:00 (Directive 2000/84/EC:
     * the last Sundays at 01:00 UTC).
     */
    @Test
    void aDayIsAsLongAsTheClocksMakeIt() {
        in("Europe/Berlin");
        house.clock.set("2027-10-20T09:00:00Z");
        booked(1, "2027-10-30T23:30", "2027-10-31T01:30", "the night before");
        house.made(
                "/api/bookings",
                "{\"unitIds\": [2], \"out\": \"2027-10-31T02:30:00+02:00\", \"back\": \"2027-10-31T02:30:00+01:00\","
                        + " \"subject\": \"the hour that occurs twice\"}");
        booked(3, "2027-10-31T23:59", "2027-11-01T00:00", "the last minute");
        JsonNode day = today("2027-10-31");
        assertEquals(List.of("2027-10-31T02:30:00+02:00", "2027-10-31T23:59:00+01:00"), texts(day.get("out"), "at"));
        assertEquals(List.of("2027-10-31T01:30:00+02:00", "2027-10-31T02:30:00+01:00"), texts(day.get("back"), "at"));
        assertEquals(
                "2027-11-01T00:00:00+01:00",
                today("2027-11-01").at("/back/0/at").asString());
        String page = page("2027-10-31");
        assertTrue(page.contains("it has 25 hours"), page);
        assertTrue(page.contains("02:30 (UTC+02:00)") && page.contains("02:30 (UTC+01:00)"), page);
        assertTrue(page("2027-03-28").contains("it has 23 hours"));
        assertFalse(page("2027-10-30").contains("The clocks change"));
    }

    /** One event for going and one for coming, the same whenever it is told; what belongs to no rental stays as it was. */
    @Test
    void theCalendarTellsARentalOnceAWay() {
        Reply rental = house.confirmed("mon to wed", "{\"set\": 1}, " + UNIT_2);
        booked(5, "2027-04-04T15:00", "2027-04-05T18:00", "Salt Lane");
        List<String> summaries = properties("SUMMARY");
        assertEquals(
                List.of(
                        "Back for \"Salt Lane\": G40-1",
                        "Back: rental 1\\, Nell Orrin\\, 3 units",
                        "Out for \"Salt Lane\": G40-1",
                        "Out: rental 1\\, Nell Orrin\\, 3 units"),
                summaries.stream().sorted().toList());
        assertTrue(
                properties("DESCRIPTION").contains("Winter Quarry\\nH40-1\\nH40-2\\nH75-1"),
                properties("DESCRIPTION").toString());
        List<String> uids = properties("UID");
        assertEquals(4, uids.stream().distinct().count());
        assertEquals(uids, properties("UID"));
        house.clock.set("2027-04-04T14:20:30Z");
        rental = house.rental(rental, "handover", DeskHouse.units(1, 3));
        assertEquals(uids, properties("UID"), "one that goes early is the same event");
        assertTrue(
                properties("DESCRIPTION").contains("Winter Quarry\\n14:20 H40-1\\n14:20 H75-1\\n15:00 H40-2"),
                properties("DESCRIPTION").toString());
        house.rental(rental, "handover", DeskHouse.units(2));
        house.clock.set("2027-04-08T10:00:00Z");
        Reply back = house.rental(house.served.get("/api/rentals/1"), "return", DeskHouse.units(1, 2, 3));
        assertEquals(200, house.rental(back, "settle", "{\"keep\": \"0.00\"}").status());
        assertEquals(uids, properties("UID"), "what has ended was all the same");
    }

    /** The values of a property over the whole feed, unfolded (RFC 5545, 3.1). */
    private List<String> properties(String name) {
        String text = house.served.get("/api/calendar.ics").text().replace("\r\n ", "");
        return text.lines()
                .filter(line -> line.startsWith(name + ":"))
                .map(line -> line.substring(name.length() + 1))
                .toList();
    }
}
