package dayglass.web.api.inventory.agenda;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What must be given back, and the calendar, over HTTP; days are told from today. */
class AgendaApiTest extends OneServer {
    private static LocalDate today() {
        return LocalDate.now(ZoneOffset.UTC);
    }

    private static long rentedIn(String tag, LocalDate dueBack) {
        Reply unit = served.post(
                "/api/units",
                "{\"tag\": \"" + tag + "\", \"holding\": {\"kind\": \"rented in\", \"owner\": \"Pier House\","
                        + " \"agreement\": \"A-9\", \"from\": \"" + dueBack.minusDays(90) + "\", \"paidUpTo\": \""
                        + dueBack.plusDays(60) + "\", \"dueBackOn\": \"" + dueBack
                        + "\", \"lateDay\": {\"amount\": \"45.50\", \"currency\": \"EUR\"}}}");
        assertEquals(201, unit.status(), unit.text());
        return unit.id();
    }

    private static JsonNode row(String query, String tag) {
        for (JsonNode each : served.get("/api/due-back" + query).json().get("items")) {
            if (each.get("tag").asString().equals(tag)) {
                return each;
            }
        }
        throw new AssertionError(tag + " is not told");
    }

    @Test
    void whatIsLateCostsByTheDayAndWhatIsBookedBeyondIsTold() {
        long unit = rentedIn("RI-1", today().minusDays(3));
        served.post(
                "/api/bookings",
                "{\"unitIds\": [" + unit + "], \"firstDay\": \"" + today().plusDays(2)
                        + "\", \"subject\": \"Lantern Weir\"}");
        JsonNode late = row("", "RI-1");
        assertEquals(3, late.get("daysLate").asInt());
        assertEquals("136.50", late.at("/lateCost/amount").asString());
        assertEquals("Lantern Weir", late.at("/bookedBeyond/subject").asString());
    }

    @Test
    void theListEndsWithTheWeekUnlessADayIsNamed() {
        LocalDate sunday = today().with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        rentedIn("RI-2", sunday);
        rentedIn("RI-3", sunday.plusDays(1));
        assertEquals(0, row("", "RI-2").get("daysLate").asInt());
        String week = served.get("/api/due-back").text();
        assertFalse(week.contains("RI-3"), week);
        assertEquals(
                "RI-3", row("?until=" + sunday.plusDays(1), "RI-3").get("tag").asString());
        assertEquals(400, served.get("/api/due-back?until=2027-02-30").status());
        assertEquals(
                400,
                served.get("/api/due-back?until=2027-02-03&until=2027-02-04").status());
    }

    @Test
    void theCalendarTellsWhatGoesOutComesBackIsServicedAndGivenBack() {
        rentedIn("RI-4", today().plusDays(9));
        long one = served.post("/api/units", "{\"tag\": \"C-1\", \"holding\": {\"kind\": \"owned\"}}")
                .id();
        long two = served.post("/api/units", "{\"tag\": \"C-2\", \"holding\": {\"kind\": \"owned\"}}")
                .id();
        served.post(
                "/api/bookings",
                "{\"unitIds\": [" + one + ", " + two + "], \"firstDay\": \"" + today().plusDays(4)
                        + "\", \"subject\": \"Salt; Lane\"}");
        served.post(
                "/api/service-plans",
                "{\"unitId\": " + one + ", \"everyMonths\": 1, \"lastDoneOn\": \"" + today() + "\"}");
        served.post(
                "/api/bench-visits",
                "{\"unitIds\": [" + two + "], \"out\": \"" + today().plusDays(20) + "T00:00\", \"back\": \""
                        + today().plusDays(21) + "T00:00\", \"subject\": \"clean\"}");
        Reply reply = served.get("/api/calendar.ics");
        assertEquals(
                "text/calendar; charset=utf-8", reply.header("Content-Type").orElse(""));
        String text = reply.text().replace("\r\n ", "");
        assertTrue(text.contains("SUMMARY:Out for \"Salt\\; Lane\": 2 units\r\nDESCRIPTION:C-1\\nC-2\r\n"), text);
        assertTrue(text.contains("SUMMARY:Back for \"Salt\\; Lane\": 2 units"), text);
        assertTrue(text.contains("SUMMARY:Give back RI-4 to Pier House"), text);
        assertTrue(
                text.contains("DTSTART;VALUE=DATE:" + basic(today().plusMonths(1)) + "\r\nDTEND;VALUE=DATE:"
                        + basic(today().plusMonths(1).plusDays(1)) + "\r\nSUMMARY:Service due: C-1"),
                text);
        // It ends at midnight, so the day that begins then is not part of it.
        assertTrue(
                text.contains("DTSTART;VALUE=DATE:" + basic(today().plusDays(20)) + "\r\nDTEND;VALUE=DATE:"
                        + basic(today().plusDays(21)) + "\r\nSUMMARY:C-2 on the bench: clean"),
                text);
        assertEquals(uids(text), uids(served.get("/api/calendar.ics").text().replace("\r\n ", "")));
    }

    private static String basic(LocalDate day) {
        return DateTimeFormatter.BASIC_ISO_DATE.format(day);
    }

    private static String uids(String text) {
        StringBuilder uids = new StringBuilder();
        text.lines().filter(line -> line.startsWith("UID:")).forEach(uids::append);
        assertFalse(uids.isEmpty());
        return uids.toString();
    }
}
