package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The life of what is asked for at the desk, over HTTP; figures are worked by hand from the card of {@link DeskHouse}. */
class DeskApiTest extends AtTheDesk {
    private static final String HERON_40 = "{\"model\": 1}";

    private static String at(Reply reply, String pointer) {
        assertTrue(reply.status() < 300, reply.text());
        return reply.json().at(pointer).asString();
    }

    private static List<String> words(Reply reply) {
        List<String> words = new ArrayList<>();
        reply.json()
                .get("alternatives")
                .forEach(each -> words.add(each.get("words").asString()));
        return words;
    }

    private static String pointer(Reply reply) {
        assertEquals(400, reply.status(), reply.text());
        return reply.json().at("/faults/0/pointer").asString();
    }

    @Test
    void aPriceIsTheCardsWithItsAddOnsCountedOnce() {
        Reply price = house.price("3 days from mon", HERON_40, "");

        assertEquals("300.00", at(price, "/hire"));
        assertEquals("30.00", at(price, "/waivers/waiver"));
        assertEquals("66.00", at(price, "/taxes/sales tax"));
        assertEquals("330.00", at(price, "/net"));
        assertEquals("396.00", at(price, "/total"));
        assertEquals("4000.00", at(price, "/replacementValue"));
        assertEquals("2027-04-05", at(price, "/lines/0/firstDay"));
    }

    /** Two days at 100.00 with a waiver of 10 % and a tax of 20 % on both; held over the dark days it would be a week. */
    @Test
    void darkDaysAreNotChargedWhereGivingBackIsCheaper() {
        Reply price = house.served.post("/api/packages/price", """
                {"schedule": [{"from": "2027-04-05", "to": "2027-04-05", "use": "shoot"},
                    {"from": "2027-04-06", "to": "2027-04-08", "use": "dark"},
                    {"from": "2027-04-09", "to": "2027-04-09", "use": "shoot"}],
                  "lines": [{"model": 1}]}""");
        assertEquals("264.00", price.json().get("total").asString(), price.text());
        Reply dark = house.served.post("/api/packages/price", """
                {"schedule": [{"from": "2027-04-05", "to": "2027-04-05", "use": "dark"}], "lines": [{"model": 1}]}""");
        assertEquals(400, dark.status(), dark.text());
    }

    @Test
    void proofOfInsuranceTakesTheWaiverOff() {
        Reply price = house.price("3 days from mon", HERON_40, ", \"insured\": true");

        assertEquals("360.00", at(price, "/total"));
        assertTrue(price.json().get("waivers").isEmpty());
    }

    @Test
    void whatIsWorthSayingIsThePriceOfWhatItProposes() {
        Reply price = house.price("3 days from mon", HERON_40, "");

        assertEquals(
                List.of("Keep it 4 days longer for nothing.", "Bring it back one day earlier and save 132.00 EUR."),
                words(price));
        assertEquals("396.00", at(house.price("7 days from mon", HERON_40, ""), "/total"));
        assertEquals("264.00", at(house.price("2 days from mon", HERON_40, ""), "/total"));
    }

    @Test
    void aSetGoesWhereItCostsLessThanItsMembers() {
        Reply both = house.price("mon", HERON_40 + ", {\"model\": 2}", "");
        assertEquals("180.00", at(both, "/hire"));
        assertEquals("[1,3]", both.json().at("/lines/0/units").toString());
        Reply one = house.price("mon", HERON_40, "");
        assertEquals("100.00", at(one, "/hire"));
        assertEquals("[2]", one.json().at("/lines/0/units").toString(), "the set stays whole");
        Reply set = house.price("mon", "{\"set\": 1}", "");
        assertEquals("180.00", at(set, "/hire"));
    }

    @Test
    void anyLensOfAFocalLengthIsTheCheapest() {
        Reply any = house.price("mon", "{\"focalMm\": \"40\", \"circleMm\": \"43.3\"}", "");
        assertEquals("90.00", at(any, "/hire"));
        assertEquals("/lines/0", pointer(house.price("mon", "{\"focalMm\": \"40\", \"circleMm\": \"50\"}", "")));
    }

    @Test
    void whatIsShortIsRentedInWithItsCostAndMargin() {
        Reply price = house.price("mon", "{\"model\": 2, \"count\": 3}", "");

        assertEquals(1, price.json().get("shorts").size());
        JsonNode rented = price.json().at("/lines/2");
        assertEquals("Quay Hire", rented.at("/rentedIn/supplier").asString());
        assertEquals("150.00", rented.at("/rentedIn/cost").asString());
        assertEquals("180.00", rented.get("hire").asString(), "20 % on 150.00");
        assertEquals("30.00", rented.at("/rentedIn/margin").asString());
        Reply none = house.price("mon", "{\"model\": 3, \"count\": 2}", "");
        assertFalse(none.json().at("/shorts/0/rentedIn").asBoolean());
        assertEquals("90.00", at(none, "/hire"));
    }

    @Test
    void whatIsFreeWithoutARateOfTheHouseIsToldApartFromWhatIsNotFree() {
        house.model("Tern 50", "50");
        house.unit("T50-1", 4);

        Reply unpriced = house.price("mon", "{\"model\": 4}", "");
        assertEquals(
                "One is free, but the house has no rate for it: give it one on a rate card of the house.",
                at(unpriced, "/shorts/0/remedy"));
        Reply taken = house.price("mon", "{\"model\": 3, \"count\": 2}", "");
        assertFalse(taken.json().get("shorts").get(0).has("remedy"), taken.text());
    }

    /** 200.01 at 0.925 is 185.00925, so 185.01 a day; two days and the trip of 10.00, 9.25, make 379.27. */
    @Test
    void aForeignCardIsConvertedPriceByPriceAtTheBudgetRate() {
        house.made("/api/suppliers", "{\"name\": \"Harbour Optics\"}");
        house.made(
                "/api/rate-cards",
                "{\"supplierId\": 3, \"name\": \"Abroad\", \"currency\": \"USD\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [{\"id\": \"a40\", \"lets\": {\"model\": 3}, \"perTrip\": \"10.00\","
                        + " \"blocks\": [{\"days\": 1, \"price\": \"200.01\"}]}]}");
        String two = "{\"model\": 3, \"count\": 2}";

        Reply without = house.price("2 days from mon", two, "");
        assertFalse(without.json().at("/shorts/0/rentedIn").asBoolean());
        assertEquals(
                "Harbour Optics lets it in USD, for which there is no budget rate: set one among the desk's rules.",
                at(without, "/shorts/0/remedy"));
        Reply usual = house.served.get("/api/desk-rules");
        String rate = "{\"currency\": \"USD\", \"rate\": \"0.925\"}";
        assertEquals(
                "/budgetRates/1",
                pointer(house.served.put(
                        "/api/desk-rules",
                        "{\"budgetRates\": [" + rate + ", " + rate + "]}",
                        "If-Match",
                        usual.etag())));
        house.served.put("/api/desk-rules", "{\"budgetRates\": [" + rate + "]}", "If-Match", usual.etag());
        assertEquals("0.925", at(house.served.get("/api/desk-rules"), "/budgetRates/0/rate"));
        Reply price = house.price("2 days from mon", two, "");

        assertTrue(price.json().at("/shorts/0/rentedIn").asBoolean());
        assertFalse(price.json().get("shorts").get(0).has("remedy"));
        assertEquals("379.27", at(price, "/lines/1/rentedIn/cost"));
        assertEquals("410.02", at(price, "/lines/1/rentedIn/foreign/cost/amount"));
        assertEquals("USD", at(price, "/lines/1/rentedIn/foreign/cost/currency"));
        assertEquals("455.12", at(price, "/lines/1/hire"), "a fifth on top: 75.854, so 75.85");
        Reply quote = house.quote("2 days from mon", two, "");
        assertEquals(
                "0.925",
                at(
                        house.served.get("/api/quotes/" + quote.id()),
                        "/revisions/0/price/lines/1/rentedIn/foreign/budgetRate"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    soon | {"model": 1}                                | /dates
                    mon  | {"model": 9}                                | /lines/0
                    mon  | {"model": 1, "unit": 1}                     | /lines/0
                    mon  | {"count": 1}                                | /lines/0
                    mon  | {"unit": 1, "count": 2}                     | /lines/0/count
                    mon  | {"model": 1, "circleMm": "40"}              | /lines/0/circleMm
                    mon  | {"model": 1, "discountPercent": "101"}      | /lines/0/discountPercent
                    2027-03-29 to 2027-04-02 | {"model": 1}            | /dates
                    """)
    void whatCannotBePricedIsSaidWithItsPlace(String dates, String line, String pointer) {
        assertEquals(pointer, pointer(house.price(dates, line, "")));
    }

    @Test
    void quotesAreNumberedWithoutGapsAndKeepTheirRevisions() {
        assertEquals(1, house.quote("mon", HERON_40, "").json().get("number").asInt());
        assertEquals("/discountReason", pointer(house.quote("mon", HERON_40, ", \"discountPercent\": \"5\"")));
        Reply second = house.quote("mon", HERON_40, ", \"discountPercent\": \"5\", \"discountReason\": \"a friend\"");
        assertEquals(2, second.json().get("number").asInt());
        assertEquals("5.00", at(second, "/revisions/0/price/discount"));
        assertEquals("125.40", at(second, "/revisions/0/price/total"), "95.00, 9.50 waiver, 20.90 tax");
        Reply revised = house.act(second, "/api/quotes", "revisions", DeskHouse.quoteBody("mon to tue", HERON_40, ""));
        assertEquals(2, revised.json().get("revisions").size());
        assertEquals("264.00", at(revised, "/revisions/1/price/total"));
        assertEquals(412, house.act(second, "/api/quotes", "decline", "{}").status(), "stale");
        Reply declined = house.act(revised, "/api/quotes", "decline", "{\"why\": \"too dear\"}");
        assertEquals("declined", at(declined, "/state"));
        assertEquals(422, house.act(declined, "/api/quotes", "confirm", "{}").status());
    }

    @Test
    void anOldQuoteKeepsItsCardAndExpires() {
        Reply quote = house.quote("thu", HERON_40, "");
        house.made(
                "/api/rate-cards",
                "{\"supplierId\": 1, \"name\": \"Ours\", \"currency\": \"EUR\", \"effectiveFrom\": \"2027-03-31\","
                        + " \"rates\": [{\"id\": \"h40\", \"lets\": {\"model\": 1},"
                        + " \"blocks\": [{\"days\": 1, \"price\": \"999.00\"}]}]}");
        assertEquals("999.00", at(house.price("thu", HERON_40, ""), "/total"));
        assertEquals("132.00", at(house.served.get("/api/quotes/1"), "/revisions/0/price/total"));
        house.clock.pass(Duration.ofDays(15));
        assertEquals("expired", at(house.served.get("/api/quotes/1"), "/state"));
        Reply late = house.act(quote, "/api/quotes", "confirm", "{}");
        assertEquals(422, late.status());
        assertTrue(late.text().contains("revise it"), late.text());
    }

    @Test
    void onlyAnOwnerGoesBelowTheFloor() {
        long clerk = house.made("/api/people", "{\"name\": \"Ivo\", \"role\": \"clerk\"}")
                .id();
        String body =
                DeskHouse.quoteBody("mon", HERON_40, ", \"discountPercent\": \"21\", \"discountReason\": \"a friend\"");
        Reply refused = house.served.post("/api/quotes", body, "Dayglass-Person", Long.toString(clerk));
        assertEquals(422, refused.status());
        assertTrue(refused.text().contains("Only an owner"), refused.text());
        assertEquals(
                201,
                house.served.post("/api/quotes", body, "Dayglass-Person", "1").status());
    }

    @Test
    void aRentalIsLetOutTakenBackLateChargedAndInvoiced() {
        Reply rental = house.confirmed("3 days from mon", HERON_40 + ", {\"model\": 2}");
        assertEquals("confirmed", at(rental, "/state"));
        assertEquals("[1,3]", rental.json().at("/promise/price/lines/0/units").toString());
        house.clock.set("2027-04-04T15:00:00Z");
        Reply stranger = house.rental(rental, "handover", DeskHouse.units(1, 2));
        assertEquals(422, stranger.status());
        assertTrue(stranger.text().contains("H40-2 is not booked on this rental"), stranger.text());
        Reply first = house.rental(rental, "handover", DeskHouse.units(1));
        assertEquals("out", at(first, "/state"));
        Reply undone = house.rental(first, "undo-handover", "{\"unitId\": 1}");
        assertEquals("confirmed", at(undone, "/state"));
        Reply out = house.rental(undone, "handover", DeskHouse.units(1, 3));
        assertEquals("front cap", at(out, "/placed/0/out/accessories/0"));
        assertEquals(422, house.rental(out, "settle", "{\"keep\": \"0.00\"}").status(), "it is out");
        Reply deposit = house.rental(out, "deposit", "{\"taken\": \"500.00\"}");
        house.clock.set("2027-04-08T09:59:00Z");
        Reply part = house.rental(deposit, "return", DeskHouse.units(1));
        assertEquals("out", at(part, "/state"));
        assertEquals(0, part.json().get("charges").size(), "it is in time");
        house.clock.set("2027-04-09T10:01:00Z");
        Reply back = house.rental(part, "return", DeskHouse.units(3));
        assertEquals("back", at(back, "/state"));
        assertEquals("396.00", at(back, "/charges/0/total"), "two days of the set at 180.00 and its waiver");
        assertEquals("2", at(back, "/charges/0/days"));
        Reply damage = house.rental(
                back, "charges", "{\"kind\": \"damage\", \"unitId\": 3, \"words\": \"dent\", \"amount\": \"80.00\"}");
        assertEquals(
                "/unitId",
                pointer(house.rental(
                        damage,
                        "charges",
                        "{\"kind\": \"damage\", \"unitId\": 2, \"words\": \"dent\", \"amount\": \"80.00\"}")),
                "another rental's unit");
        Reply reversed = house.rental(damage, "reversals", "{\"charge\": 1, \"why\": \"it was there before\"}");
        assertEquals("-80.00", at(reversed, "/charges/2/net"));
        assertEquals(
                422,
                house.rental(reversed, "reversals", "{\"charge\": 1, \"why\": \"again\"}")
                        .status());
        assertEquals("/keep", pointer(house.rental(reversed, "settle", "{\"keep\": \"500.01\"}")));
        Reply settled = house.rental(reversed, "settle", "{\"keep\": \"396.00\"}");
        assertEquals("settled", at(settled, "/state"));
        assertEquals("1", at(settled, "/ending/invoice"));
        assertEquals("104.00", at(settled, "/deposit/returned"));
        // Three days of the set as a week would be 500.00; three days are 540.00: 500 + 50 + 110 = 660, and 396 late.
        assertEquals("1056.00", at(settled, "/owed"));
        assertEquals("660.00", at(settled, "/toPay"));
        assertEquals(
                422, house.rental(settled, "deposit", "{\"taken\": \"1.00\"}").status(), "it has ended");
    }

    @Test
    void anExtensionIsPricedAsOneRentalWhereThatIsLess() {
        Reply rental = house.confirmed("4 days from mon", "{\"unit\": 2}");
        assertEquals("396.00", at(rental, "/promise/price/total"), "the week at 300.00");
        Reply within = house.rental(rental, "extend", "{\"lastDay\": \"2027-04-11\"}");
        assertEquals("0.00", at(within, "/charges/0/total"), "the week is paid already");
        Reply longer = house.rental(within, "extend", "{\"lastDay\": \"2027-04-12\"}");
        assertEquals("132.00", at(longer, "/charges/1/total"), "one day more than a week");
        assertEquals("/lastDay", pointer(house.rental(longer, "extend", "{\"lastDay\": \"2027-04-12\"}")));
        Reply free = house.served.get("/api/availability?out=2027-04-12T15:00&back=2027-04-14T10:00");
        assertFalse(free.json().get("freeUnits").toString().contains("H40-2"), "its booking is longer too");
        assertEquals("528.00", at(longer, "/owed"));
    }

    @Test
    void anExtensionOfYearsIsRefusedByItsField() {
        Reply rental = house.confirmed("4 days from mon", "{\"unit\": 2}");
        Reply longer = house.rental(rental, "extend", "{\"lastDay\": \"9999-12-31\"}");
        assertEquals("/lastDay", pointer(longer));
    }

    /** The day more at 100.00: the waiver of 10 % in its net, the tax of 20 % by its code. */
    @Test
    void anExtensionBearsItsTaxesByCode() {
        Reply rental = house.confirmed("4 days from mon", "{\"unit\": 2}");
        Reply longer = house.rental(rental, "extend", "{\"lastDay\": \"2027-04-12\"}");
        assertEquals("110.00", at(longer, "/charges/0/net"));
        assertEquals(
                "[{\"code\":\"sales tax\",\"amount\":\"22.00\"}]",
                longer.json().at("/charges/0/taxes").toString());
        Reply again = house.rental(longer, "extend", "{\"lastDay\": \"2027-04-13\"}");
        assertEquals("22.00", at(again, "/charges/1/taxes/0/amount"), "of the second day alone");
        assertEquals("132.00", at(again, "/charges/1/total"));
    }

    @Test
    void takingAnExtensionBackGivesItsDaysBack() {
        Reply rental = house.confirmed("4 days from mon", "{\"unit\": 2}");
        String promised = booked(rental);
        Reply week = house.rental(rental, "extend", "{\"lastDay\": \"2027-04-12\"}");
        String longer = booked(week);
        Reply more = house.rental(week, "extend", "{\"lastDay\": \"2027-04-14\"}");
        assertEquals(
                422,
                house.rental(more, "reversals", "{\"charge\": 0, \"why\": \"not kept\"}")
                        .status());
        Reply back = house.rental(more, "reversals", "{\"charge\": 1, \"why\": \"not kept\"}");
        assertEquals(longer, booked(back));
        back = house.rental(back, "reversals", "{\"charge\": 0, \"why\": \"not kept\"}");
        assertEquals(promised, booked(back));
        assertEquals("396.00", at(back, "/owed"));
        Reply again = house.rental(back, "extend", "{\"lastDay\": \"2027-04-12\"}");
        assertEquals("132.00", at(again, "/charges/4/total"), "the same day is for sale again");
        assertEquals(longer, booked(again));
    }

    /** Due on 9 April without it: up to that moment its days are still ahead. */
    @Test
    void daysThatHaveBeenHadAreNotTakenBack() {
        house.clock.set("2027-04-04T15:00:00Z");
        Reply out = house.rental(house.confirmed("4 days from mon", "{\"unit\": 2}"), "handover", DeskHouse.units(2));
        Reply longer = house.rental(out, "extend", "{\"lastDay\": \"2027-04-12\"}");
        house.clock.set("2027-04-10T09:00:00Z");
        Reply refused = house.rental(longer, "reversals", "{\"charge\": 0, \"why\": \"not kept\"}");
        assertEquals(422, refused.status(), refused.text());
        assertTrue(refused.text().contains("have been had"), refused.text());
        house.clock.set("2027-04-08T09:00:00Z");
        Reply back = house.rental(longer, "reversals", "{\"charge\": 0, \"why\": \"not kept\"}");
        assertEquals("2027-04-09", booked(back).substring(0, 10));
    }

    private String booked(Reply rental) {
        assertEquals(200, house.served.get("/api/rentals/" + rental.id()).status());
        return at(house.served.get("/api/bookings/" + at(rental, "/placed/0/bookingId")), "/back");
    }

    @Test
    void anotherUnitGoesInThePlaceOfOneThatDoesNotWork() {
        Reply rental = house.confirmed("mon", "{\"unit\": 2}");
        Reply swapped = house.rental(rental, "swap", "{\"unitId\": 2, \"by\": 5}");
        assertEquals("true", at(swapped, "/placed/0/replaced"));
        assertEquals("5", at(swapped, "/placed/1/unitId"));
        house.clock.set("2027-04-04T15:00:00Z");
        Reply out = house.rental(swapped, "handover", DeskHouse.units(5));
        Reply again = house.rental(out, "swap", "{\"unitId\": 5, \"by\": 2}");
        assertEquals("out", at(house.rental(again, "handover", DeskHouse.units(2)), "/state"));
    }

    @Test
    void aLostUnitLeavesTheShelfAndIsCharged() {
        house.clock.set("2027-04-04T15:00:00Z");
        Reply out = house.rental(house.confirmed("mon", "{\"unit\": 2}"), "handover", DeskHouse.units(2));
        Reply lost = house.rental(
                out, "charges", "{\"kind\": \"loss\", \"unitId\": 2, \"words\": \"sunk\", \"amount\": \"4000.00\"}");
        assertEquals("back", at(lost, "/state"));
        assertEquals("lost", at(house.served.get("/api/units/2"), "/departure/how"));
        assertEquals("settled", at(house.rental(lost, "settle", "{\"keep\": \"0.00\"}"), "/state"));
    }

    /** Nothing a week before, half up to two days before, all after that: the usual rules. */
    @ParameterizedTest
    @CsvSource({"2027-03-31, 0.00", "2027-04-12, 0.00", "2027-04-13, 110.00", "2027-04-17, 110.00", "2027-04-18, 220.00"
    })
    void aCancellationCostsByItsNotice(String day, String owed) {
        Reply rental = house.confirmed("19 to 20 apr", "{\"unit\": 2}");
        house.clock.set(day + "T09:00:00Z");
        Reply cancelled = house.rental(rental, "cancel", "{\"why\": \"rain\"}");
        assertEquals("cancelled", at(cancelled, "/state"));
        assertEquals(owed, at(cancelled, "/owed"), "of 200.00 with the waiver of 20.00");
        assertEquals(!owed.equals("0.00"), cancelled.json().at("/ending").has("invoice"));
        assertEquals(201, house.confirmed("19 apr", "{\"unit\": 2}").status(), "it is free again");
    }

    @Test
    void whoComesSecondIsToldWhoHasItAndWhatElseIsFree() {
        Reply one = house.quote("mon", "{\"unit\": 2}", "");
        Reply two = house.quote("mon", "{\"unit\": 2}", "");
        assertEquals(201, house.act(one, "/api/quotes", "confirm", "{}").status());
        Reply refused = house.act(two, "/api/quotes", "confirm", "{}");
        assertEquals(409, refused.status());
        assertTrue(refused.text().contains("Rental 1, Nell Orrin"), refused.text());
        assertTrue(refused.text().contains("Free instead: G40-1, H40-1"), refused.text());
        assertEquals("open", at(house.served.get("/api/quotes/2"), "/state"));
    }

    @Test
    void anotherOfItsModelGoesWhereNobodyAskedForThatVeryOne() {
        Reply one = house.quote("mon", HERON_40, "");
        Reply two = house.quote("mon", HERON_40, "");
        assertEquals("2", at(house.act(one, "/api/quotes", "confirm", "{}"), "/placed/0/unitId"));
        assertEquals("1", at(house.act(two, "/api/quotes", "confirm", "{}"), "/placed/0/unitId"));
        assertEquals("1", at(house.served.get("/api/rentals/1"), "/quoteId"));
        assertEquals(2, house.served.get("/api/rentals").json().get("items").size());
        assertEquals("accepted", at(house.served.get("/api/quotes"), "/items/1/state"));
    }

    @Test
    void theRulesAreTheHousesOwn() {
        Reply usual = house.served.get("/api/desk-rules");
        assertEquals("20", at(usual, "/markUpPercent"));
        String body = "{\"markUpPercent\": \"50\", \"taxes\": [{\"code\": \"sales tax\", \"percent\": \"20\"}],"
                + " \"depositPercent\": \"10\"}";
        Reply kept = house.served.put("/api/desk-rules", body, "If-Match", usual.etag());
        assertEquals("1", at(kept, "/version"));
        assertEquals(
                412,
                house.served
                        .put("/api/desk-rules", body, "If-Match", usual.etag())
                        .status());
        JsonNode rented =
                house.price("mon", "{\"model\": 2, \"count\": 3}", "").json().at("/lines/2");
        assertEquals("270.00", rented.get("total").asString(), "150.00 with half on top, and the tax");
        assertEquals("400.00", at(house.quote("mon", HERON_40, ""), "/revisions/0/deposit"));
    }

    @Test
    void aKeySentAThousandTimesHasOneEffect() {
        Reply quote = house.quote("mon", HERON_40, "");
        String first = "";
        for (int time = 0; time < 1000; time++) {
            Reply reply = house.served.post(
                    "/api/quotes/1/confirm", "{}", "If-Match", quote.etag(), "Idempotency-Key", "one");
            assertEquals(201, reply.status());
            first = first.isEmpty() ? reply.text() : first;
            assertEquals(first, reply.text());
        }
        assertEquals(1, house.served.get("/api/rentals").json().get("items").size());
        assertEquals(1, house.served.get("/api/bookings").json().get("items").size());
    }
}
