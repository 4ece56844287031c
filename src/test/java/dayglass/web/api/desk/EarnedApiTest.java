package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What units earn by being let, over HTTP; figures are worked by hand from the card of {@link DeskHouse}. */
class EarnedApiTest extends AtTheDesk {
    private JsonNode worth(String tag) {
        for (JsonNode each : house.served.get("/api/my-glass").json().get("units")) {
            if (each.get("tag").asString().equals(tag)) {
                return each;
            }
        }
        throw new AssertionError(tag + " is not told");
    }

    /** Earned and promised, in that order. */
    private String money(String tag) {
        JsonNode worth = worth(tag);
        return worth.at("/earnedSum/0/amount").asString("-") + " "
                + worth.at("/promisedSum/0/amount").asString("-");
    }

    private void valued(int unit, String value) {
        Reply now = house.served.get("/api/units/" + unit);
        JsonNode facts = now.json();
        String body = "{\"tag\": " + facts.get("tag") + ", \"modelId\": " + facts.get("modelId")
                + ", \"value\": {\"amount\": \"" + value + "\", \"currency\": \"EUR\", \"setOn\": \"2027-01-01\"}}";
        assertEquals(
                200,
                house.served
                        .put("/api/units/" + unit, body, "If-Match", now.etag())
                        .status());
    }

    /**
     * Three days of the set: 500.00 less 10 % is 450.00, by 4000 and 8000 at 150.00 and 300.00. Two days late add 396.00
     * at 132.00 and 264.00. The waiver and the tax are nobody's.
     */
    @Test
    void aLineIsSharedByValueAndEarnedOnceItIsSettled() {
        valued(3, "8000.00");
        assertFalse(
                house.served.get("/api/my-glass").json().get("lettingRecorded").asBoolean());
        Reply quote = house.quote(
                "3 days from mon",
                "{\"model\": 1}, {\"model\": 2}",
                ", \"discountPercent\": \"10\", \"discountReason\": \"a regular\"");
        Reply rental = house.act(quote, "/api/quotes", "confirm", "{}");
        assertEquals(201, rental.status(), rental.text());
        assertEquals(
                "450.00", sum(rental, "hire").subtract(sum(rental, "discount")).toPlainString());
        assertTrue(
                house.served.get("/api/my-glass").json().get("lettingRecorded").asBoolean());
        assertEquals("- 150.00", money("H40-1"));
        assertEquals("- 300.00", money("H75-1"));
        assertEquals("- -", money("H40-2"));
        assertEquals("2027-04-07", worth("H40-1").at("/promised/0/on").asString());
        house.clock.set("2027-04-04T15:00:00Z");
        rental = house.rental(rental, "handover", DeskHouse.units(1, 3));
        house.clock.set("2027-04-09T10:01:00Z");
        rental = house.rental(rental, "return", DeskHouse.units(1, 3));
        assertEquals("- 282.00", money("H40-1"));
        assertTrue(house.served.page("/shelf/units/1").text().contains("282.00\u00a0EUR</strong> <span"), "promised");
        assertEquals(200, house.rental(rental, "settle", "{\"keep\": \"0.00\"}").status());
        assertEquals("282.00 -", money("H40-1"));
        assertEquals("564.00 -", money("H75-1"));
        assertEquals(
                "let on rental 1, Nell Orrin",
                worth("H40-1").at("/earned/0/for").asString());
        assertEquals("2027-04-09", worth("H40-1").at("/earned/0/on").asString());
        assertEquals(
                "846.00",
                house.served
                        .get("/api/my-glass")
                        .json()
                        .at("/sets/0/earnedSum/0/amount")
                        .asString());
        String page = house.served.page("/shelf/units/3").text();
        assertTrue(page.contains("let on rental 1, Nell Orrin"), page);
        assertTrue(page.contains("on rental 1, Nell Orrin: 564.00 EUR earned"), page);
        assertTrue(house.served.page("/shelf/my-glass").text().contains("let on rental 1, Nell Orrin, 9 Apr 2027"));
    }

    private static java.math.BigDecimal sum(Reply rental, String what) {
        java.math.BigDecimal sum = java.math.BigDecimal.ZERO;
        for (JsonNode line : rental.json().at("/promise/price/lines")) {
            sum = sum.add(new java.math.BigDecimal(line.get(what).asString()));
        }
        return sum;
    }

    /** 180.00 by 1000 and 5000 is 30.00 and 150.00; by what does not divide the cent goes where the larger part is cut off. */
    @Test
    void whatDoesNotDivideGoesToTheLargestRemainder() {
        valued(1, "1000.00");
        valued(3, "5000.00");
        house.confirmed("tomorrow", "{\"set\": 1}");
        assertEquals("- 30.00", money("H40-1"));
        assertEquals("- 150.00", money("H75-1"));
        valued(3, "6000.01");
        // 180.00 by 100000 and 600001 minor units: 25.714248... and 154.285751...
        assertEquals("- 25.71", money("H40-1"));
        assertEquals("- 154.29", money("H75-1"));
    }

    @Test
    void withoutAllValuesALineIsSharedEvenlyTheOddCentToTheFirst() {
        Reply now = house.served.get("/api/units/1");
        assertEquals(
                200,
                house.served
                        .put("/api/units/1", "{\"tag\": \"H40-1\", \"modelId\": 1}", "If-Match", now.etag())
                        .status());
        house.quote("tomorrow", "{\"set\": 1}", "");
        Reply quote = house.quote(
                "tomorrow", "{\"set\": 1}", ", \"discountPercent\": \"0.01\", \"discountReason\": \"a trifle\"");
        house.act(quote, "/api/quotes", "confirm", "{}");
        // 180.00 less 0.02.
        assertEquals("- 89.99", money("H40-1"));
        assertEquals("- 89.99", money("H75-1"));
    }

    /** The week at 300.00, one day more at 100.00, taken back, then two days more. */
    @Test
    void anExtensionBringsItsHireAndNotItsWaiverAndTax() {
        Reply rental = house.confirmed("4 days from mon", "{\"unit\": 2}");
        assertEquals("- 300.00", money("H40-2"));
        rental = house.rental(rental, "extend", "{\"lastDay\": \"2027-04-12\"}");
        assertEquals("132.00", rental.json().at("/charges/0/total").asString());
        assertEquals("110.00", rental.json().at("/charges/0/net").asString());
        assertEquals("- 400.00", money("H40-2"));
        rental = house.rental(rental, "reversals", "{\"charge\": 0, \"why\": \"not kept\"}");
        assertEquals("- 300.00", money("H40-2"));
        rental = house.rental(rental, "extend", "{\"lastDay\": \"2027-04-13\"}");
        assertEquals("264.00", rental.json().at("/charges/2/total").asString());
        assertEquals("- 500.00", money("H40-2"));
    }

    @Test
    void whatIsCancelledRentedInOrGaveWayEarnsNothing() {
        Reply cancelled = house.confirmed("tomorrow", "{\"unit\": 5}");
        assertEquals("- 90.00", money("G40-1"));
        cancelled = house.rental(cancelled, "cancel", "{}");
        assertEquals("cancelled", cancelled.json().get("state").asString());
        assertEquals("- -", money("G40-1"));
        house.confirmed("mon", "{\"model\": 2, \"count\": 3}");
        assertEquals("- 120.00", money("H75-1"));
        assertEquals("- 120.00", money("H75-2"));
        Reply swapped = house.confirmed("mon", "{\"unit\": 2}");
        house.rental(swapped, "swap", "{\"unitId\": 2, \"by\": 1}");
        assertEquals("- -", money("H40-2"));
        assertEquals("- 100.00", money("H40-1"));
    }
}
