package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a job considers is priced in the job's currency, from the first write on. */
class OtherCurrencyTest extends OneServer {
    private static int names;

    private static long made(String path, String facts) {
        Reply reply = served.post(path, facts);
        assertEquals(201, reply.status(), reply.text());
        return reply.id();
    }

    private static long supplier() {
        return made("/api/suppliers", "{\"name\": \"House " + ++names + "\"}");
    }

    private static String card(long supplier, String currency, String from) {
        return "{\"supplierId\": " + supplier + ", \"name\": \"Primes\", \"currency\": \"" + currency
                + "\", \"effectiveFrom\": \"" + from + "\", \"rates\": [{\"id\": \"pier prime\", \"covers\":"
                + " {\"35 mm\": 1}, \"blocks\": [{\"days\": 1, \"price\": \"100\"}]}]}";
    }

    private static String offer(long supplier, String currency) {
        return "{\"supplierId\": " + supplier + ", \"currency\": \"" + currency + "\", \"offer\": {\"id\": \"buy 35\","
                + " \"covers\": {\"35 mm\": 1}, \"price\": \"900\", \"termMonths\": 12,"
                + " \"resale\": {\"lossPercentPerYear\": \"9\"}}}";
    }

    private static String job(String currency, String cards, String offers) {
        return "{\"name\": \"Long Pier\", \"currency\": \"" + currency + "\", \"schedule\": [{\"from\": \"2027-06-07\","
                + " \"use\": \"shoot\"}], \"needs\": [{\"slot\": \"35 mm\", \"count\": 1}], \"rateCards\": [" + cards
                + "], \"purchaseOffers\": [" + offers + "]}";
    }

    private static List<String> faults(Reply reply) {
        assertEquals(400, reply.status(), reply.text());
        List<String> pointers = new ArrayList<>();
        reply.json()
                .get("faults")
                .forEach(fault -> pointers.add(fault.get("pointer").asString()));
        return pointers;
    }

    private static String firstMessage(Reply reply) {
        return reply.json().at("/faults/0/message").asString();
    }

    @Test
    void aJobTakesNoForeignCardOrOffer() {
        long house = supplier();
        long other = supplier();
        long home = made("/api/rate-cards", card(house, "EUR", "2027-01-01"));
        long foreign = made("/api/rate-cards", card(other, "USD", "2027-01-01"));
        long offer = made("/api/purchase-offers", offer(house, "JPY"));
        Reply refused = served.post("/api/jobs", job("EUR", home + ", " + foreign, String.valueOf(offer)));
        assertEquals(List.of("/rateCards/1", "/purchaseOffers/0"), faults(refused));
        assertTrue(firstMessage(refused).contains("rate card " + foreign + " (Primes)"), refused.text());
        assertTrue(firstMessage(refused).contains("USD"), refused.text());

        Reply job = served.post("/api/jobs", job("EUR", String.valueOf(home), ""));
        assertEquals(201, job.status());
        String address = "/api/jobs/" + job.id();
        Reply dearer = served.put(address, job("USD", String.valueOf(home), ""), "If-Match", job.etag());
        assertEquals(List.of("/rateCards/0"), faults(dearer));
        Reply more = served.put(address, job("EUR", "", String.valueOf(offer)), "If-Match", job.etag());
        assertEquals(List.of("/purchaseOffers/0"), faults(more));
    }

    @Test
    void aCardInUseKeepsItsCurrency() {
        long house = supplier();
        long card = made("/api/rate-cards", card(house, "EUR", "2027-01-01"));
        long job = made("/api/jobs", job("EUR", String.valueOf(card), ""));
        Reply refused = served.put("/api/rate-cards/" + card, card(house, "USD", "2027-01-01"), "If-Match", "\"1\"");
        assertEquals(List.of("/currency"), faults(refused));
        assertTrue(firstMessage(refused).contains("job " + job), refused.text());

        long free = made("/api/rate-cards", card(supplier(), "EUR", "2027-01-01"));
        Reply changed =
                served.put("/api/rate-cards/" + free, card(supplier(), "USD", "2027-01-01"), "If-Match", "\"1\"");
        assertEquals(200, changed.status(), changed.text());
    }

    @Test
    void anOfferInUseKeepsItsCurrency() {
        long house = supplier();
        long offer = made("/api/purchase-offers", offer(house, "EUR"));
        long job = made("/api/jobs", job("EUR", "", String.valueOf(offer)));
        Reply refused = served.put("/api/purchase-offers/" + offer, offer(house, "USD"), "If-Match", "\"1\"");
        assertEquals(List.of("/currency"), faults(refused));
        assertTrue(firstMessage(refused).contains("job " + job), refused.text());
    }

    /** Otherwise a job would come to another currency by beginning later. */
    @Test
    void cardsThatSucceedEachOtherShareACurrency() {
        long house = supplier();
        long first = made("/api/rate-cards", card(house, "EUR", "2027-01-01"));
        Reply refused = served.post("/api/rate-cards", card(house, "USD", "2027-06-01"));
        assertEquals(List.of("/currency"), faults(refused));
        assertTrue(firstMessage(refused).contains("rate card " + first), refused.text());
        made("/api/rate-cards", card(house, "EUR", "2027-06-01"));
    }
}
