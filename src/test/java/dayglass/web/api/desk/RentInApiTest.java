package dayglass.web.api.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * What is rented in for a customer is ordered, got, and put into the books of a job, in the house of {@link DeskHouse}. The
 * third line of three Heron 75 comes from Quay Hire at 150.00.
 */
class RentInApiTest extends AtTheDesk {
    private static final String LINE = "{\"line\": 2}";
    private static final String ORDER = "{\"line\": 2, \"number\": \"PO-12\", \"words\": \"we collect it\"}";

    @SuppressWarnings("NullAway.Init") // set before each test
    private Reply rental;

    @BeforeEach
    void confirm() {
        rental = house.confirmed("mon", "{\"model\": 2, \"count\": 3}");
        assertEquals(201, rental.status(), rental.text());
        assertEquals(
                "Quay Hire",
                rental.json().at("/promise/price/lines/2/rentedIn/supplier").asString());
    }

    /** Does it and shows the rental as it is then. */
    private void done(String deed, String body) {
        rental = house.rental(rental, deed, body);
        assertEquals(200, rental.status(), rental.text());
        assertEquals(house.served.get("/api/rentals/" + rental.id()).json(), rental.json());
    }

    private void refused(int status, String words, String deed, String body) {
        Reply reply = house.rental(rental, deed, body);
        assertEquals(status, reply.status(), reply.text());
        assertTrue(reply.text().contains(words), reply.text());
        assertEquals(
                rental.json(), house.served.get("/api/rentals/" + rental.id()).json(), "a refusal changes nothing");
    }

    private JsonNode toGet() {
        return house.served
                .get("/api/today?date=2027-04-01")
                .json()
                .path("short")
                .path(0)
                .path("toGet");
    }

    private String today() {
        return house.served.page("/desk/today?date=2027-04-01").text();
    }

    private long job(String currency) {
        return house.made(
                        "/api/jobs",
                        "{\"name\": \"Winter Quarry\", \"currency\": \"" + currency
                                + "\", \"schedule\": [{\"from\": \"2027-04-05\", \"use\": \"shoot\"}],"
                                + " \"needs\": [{\"slot\": \"75 mm\", \"count\": 1}]}")
                .id();
    }

    private Reply commit(long job, int line, String more, String... headers) {
        return house.served.post(
                "/api/rentals/" + rental.id() + "/commitments",
                "{\"line\": " + line + ", \"jobId\": " + job + ", \"date\": \"2027-04-01\"" + more + "}",
                headers);
    }

    private void reverse(long entry) {
        assertEquals(
                201,
                house.served
                        .post(
                                "/api/book-entries/" + entry + "/reversal",
                                "{\"date\": \"2027-04-01\", \"reason\": \"not wanted\"}")
                        .status());
        rental = house.served.get("/api/rentals/" + rental.id());
    }

    @Test
    void anOrderAndWhatWasGotAreRecordedAndTakenBack() {
        assertFalse(toGet().get(0).has("ordered"), "to get, and not ordered");
        assertTrue(today().contains("not ordered yet"), today());
        refused(422, "It was not ordered yet", "got", LINE);
        refused(400, "must be a line that is rented in", "order", "{\"line\": 0, \"number\": \"PO-1\"}");
        refused(400, "must be a line that is rented in", "order", "{\"line\": 3, \"number\": \"PO-1\"}");
        refused(400, "/number", "order", LINE);

        done("order", ORDER);
        JsonNode order = rental.json().at("/orders/0");
        assertEquals("PO-12", order.get("number").asString());
        assertEquals("we collect it", order.get("words").asString());
        assertEquals("2027-03-31T09:00:00Z", order.at("/ordered/at").asString());
        assertEquals(1, order.at("/ordered/by").asInt());
        assertEquals("PO-12", toGet().at("/0/ordered/number").asString());
        assertTrue(today().contains("ordered as PO-12"), today());
        refused(422, "It was ordered already, as PO-12.", "order", ORDER);
        refused(422, "It is not in the house.", "undo-got", LINE);

        done("got", LINE);
        assertTrue(rental.json().at("/orders/0").has("got"));
        assertEquals(0, toGet().size(), "it is in the house");
        refused(422, "It is in the house already.", "got", LINE);
        refused(422, "take that back first", "undo-order", LINE);

        done("undo-got", LINE);
        assertEquals(1, toGet().size());
        done("undo-order", LINE);
        assertFalse(rental.json().has("orders"));
        done("order", ORDER.replace("12", "13"));
        done("cancel", "{}");
        refused(422, "The rental has ended.", "got", LINE);
        refused(422, "The rental has ended.", "undo-order", LINE);
        assertEquals("PO-13", rental.json().at("/orders/0/number").asString(), "what was done stays told");
    }

    @Test
    void anOrderSentTwiceIsOneAndAStaleOneIsRefused() {
        String address = "/api/rentals/" + rental.id() + "/order";
        Reply first = house.served.post(address, ORDER, "If-Match", rental.etag(), "Idempotency-Key", "po-12");
        Reply again = house.served.post(address, ORDER, "If-Match", rental.etag(), "Idempotency-Key", "po-12");
        assertEquals(200, again.status(), again.text());
        assertEquals(first.text(), again.text());
        assertEquals(
                412,
                house.served.post(address, ORDER, "If-Match", rental.etag()).status());
        assertEquals(428, house.served.post(address, ORDER).status());
    }

    @Test
    void anOrderStandsInTheBooksOnceAndKeepsTheDeskFromTakingItBack() {
        long job = job("EUR");
        Reply early = commit(job, 2, "");
        assertEquals(400, early.status(), early.text());
        assertTrue(early.text().contains("was not ordered"), early.text());
        done("order", ORDER);

        Reply preview = commit(job, 2, ", \"preview\": true");
        assertEquals(200, preview.status(), preview.text());
        assertEquals(0, commitments(job));
        Reply made = commit(job, 2, "", "Idempotency-Key", "into");
        assertEquals(201, made.status(), made.text());
        assertEquals(made.text(), commit(job, 2, "", "Idempotency-Key", "into").text());
        JsonNode entry = house.served.get(made.header("Location").orElseThrow()).json();
        assertEquals("commitment", entry.get("kind").asString());
        assertEquals("Quay Hire", entry.get("supplier").asString());
        assertEquals("PO-12", entry.get("purchaseOrder").asString());
        assertEquals("2027-04-05", entry.get("serviceFrom").asString());
        assertEquals("2027-04-05", entry.get("serviceTo").asString());
        assertEquals("150.00", entry.get("net").asString());
        assertEquals("rental 1", entry.get("note").asString());

        rental = house.served.get("/api/rentals/" + rental.id());
        assertEquals(entry.get("id"), rental.json().at("/inBooks/0/commitment"));
        assertEquals(422, commit(job, 2, "").status(), "once");
        assertEquals(422, commit(job("EUR"), 2, "").status(), "in one job");
        refused(422, "reverse that entry first", "undo-order", LINE);
        refused(422, "reverse that entry first", "cancel", "{}");

        reverse(entry.get("id").asLong());
        assertFalse(rental.json().has("inBooks"));
        Reply anew = commit(job, 2, "");
        assertEquals(201, anew.status(), "what was reversed is put there again");
        reverse(anew.json().at("/items/0/commitment").asLong());
        done("undo-order", LINE);
        done("order", ORDER);
        done("cancel", "{}");
        assertTrue(commit(job, 2, "").text().contains("The rental was cancelled"));
    }

    @Test
    void whatTheBooksRefuseIsToldWithItsMend() {
        long job = job("EUR");
        done("order", ORDER);
        assertEquals(400, commit(99, 2, "").status());
        assertTrue(commit(99, 2, "").text().contains("/jobId"));
        assertEquals(404, house.served.post("/api/rentals/99/commitments", "{}").status());
        assertTrue(commit(job, 2, ", \"exchange\": {\"rate\": \"2\", \"source\": \"x\"}")
                .text()
                .contains("is not needed"));
        house.served.put(
                "/api/jobs/" + job + "/cost-chart", "{\"text\": \"code\\r\\n2340\\r\\n\"}", "If-Match", "\"0\"");
        assertTrue(commit(job, 2, "").text().contains("is missing: give it a code of the chart"));
        assertTrue(commit(job, 2, ", \"costCode\": \"99\"").text().contains("is not in the job's chart"));
        assertEquals(
                200,
                commit(job, 2, ", \"costCode\": \"2340\", \"preview\": true").status());
        house.made(
                "/api/jobs/" + job + "/book-entries",
                "{\"kind\": \"estimate\", \"date\": \"2027-04-01\", \"costCode\": \"2340\", \"description\": \"glass\","
                        + " \"net\": \"900.00\"}");
        Reply closed = house.served.post("/api/jobs/" + job + "/periods/close", "{\"lastDay\": \"2027-04-04\"}");
        assertEquals(200, closed.status(), closed.text());
        Reply late = commit(job, 2, ", \"costCode\": \"2340\"");
        assertEquals(422, late.status(), late.text());
        assertTrue(late.text().contains("is closed and takes no entry: give it a later date"), late.text());
        assertFalse(house.served.get("/api/rentals/" + rental.id()).json().has("inBooks"));
    }

    /**
     * By hand: two days at 200.01 and a trip of 10.00 are 410.02, the tax of a tenth 41.00. At 0.925 that is 379.2685 and
     * 37.925, so 379.27 and 37.93; at 0.8 it is 328.016 and 32.8.
     */
    @Test
    void aForeignOrderKeepsItsAmountsItsTaxAndTheBudgetRate() {
        house.made("/api/suppliers", "{\"name\": \"Harbour Optics\"}");
        house.made(
                "/api/rate-cards",
                "{\"supplierId\": 3, \"name\": \"Abroad\", \"currency\": \"USD\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [{\"id\": \"a40\", \"lets\": {\"model\": 3}, \"perTrip\": \"10.00\","
                        + " \"blocks\": [{\"days\": 1, \"price\": \"200.01\"}],"
                        + " \"addOns\": [{\"name\": \"state tax\", \"percent\": \"10\", \"on\": [\"hire\", \"trip\"]}],"
                        + " \"marks\": {\"state tax\": \"tax\"}}]}");
        house.served.put(
                "/api/desk-rules",
                "{\"budgetRates\": [{\"currency\": \"USD\", \"rate\": \"0.925\"}]}",
                "If-Match",
                house.served.get("/api/desk-rules").etag());
        rental = house.confirmed("2 days from mon", "{\"model\": 3, \"count\": 2}");
        JsonNode from = rental.json().at("/promise/price/lines/1/rentedIn");
        assertEquals("451.02", from.at("/foreign/cost/amount").asString());
        assertEquals("41.00", from.at("/foreign/taxes/state tax").asString());
        done("order", "{\"line\": 1, \"number\": \"HO-7\"}");

        JsonNode euros = commit(job("EUR"), 1, ", \"preview\": true").json().at("/items/0");
        assertEquals("410.02", euros.get("net").asString());
        assertEquals("41.00", euros.get("tax").asString());
        assertEquals("state tax", euros.get("taxCode").asString());
        assertEquals("USD", euros.get("currency").asString());
        assertEquals("0.925", euros.at("/exchange/rate").asString());
        assertEquals("the desk's budget rate", euros.at("/exchange/source").asString());
        assertEquals("2027-03-31", euros.at("/exchange/date").asString(), "the day of the price");
        assertEquals("379.27", euros.get("baseNet").asString());

        JsonNode dollars = commit(job("USD"), 1, ", \"taxCode\": \"S1\", \"preview\": true")
                .json()
                .at("/items/0");
        assertEquals("410.02", dollars.get("baseNet").asString());
        assertEquals("S1", dollars.get("taxCode").asString());

        long pounds = job("GBP");
        Reply without = commit(pounds, 1, "");
        assertEquals(400, without.status(), without.text());
        assertTrue(without.text().contains("say the rate and where it was read"), without.text());
        Reply made = commit(pounds, 1, ", \"exchange\": {\"rate\": \"0.8\", \"source\": \"a bank's list\"}");
        assertEquals(201, made.status(), made.text());
        JsonNode entry = house.served.get(made.header("Location").orElseThrow()).json();
        assertEquals("328.02", entry.get("baseNet").asString());
        assertEquals("32.80", entry.get("baseTax").asString());
        assertEquals("GBP", entry.get("baseCurrency").asString());
    }

    @Test
    void thePagesDoTheSame() {
        long job = job("EUR");
        String here = "/desk/rentals/" + rental.id();
        assertTrue(house.served.page(here).text().contains("Not ordered yet."));
        String version = "version=" + rental.json().get("version").asInt() + "&%2Fline=2";
        Reply faulty = house.served.form(here + "/order", version + "&%2Fnumber=");
        assertEquals(422, faulty.status(), faulty.text());
        assertTrue(faulty.text().contains("order-number-2-fault"), faulty.text());
        assertEquals(
                303,
                house.served.form(here + "/order", version + "&%2Fnumber=PO-12").status());
        assertTrue(house.served.page(here).text().contains("Ordered as <strong>PO-12</strong>"));

        String into = here + "/commitments/3";
        assertEquals(404, house.served.page(here + "/commitments/1").status(), "not rented in");
        assertEquals(404, house.served.page(here + "/commitments/0").status());
        assertEquals(404, house.served.page(here + "/commitments/9").status());
        assertTrue(house.served.page(into).text().contains("Take this job"));
        String asked = "%2FjobId=" + job + "&%2Fdate=2027-04-01&once=once-12";
        Reply looked = house.served.form(into, asked + "&do=look");
        assertEquals(200, looked.status(), looked.text());
        assertTrue(looked.text().contains("Put it into the books"), looked.text());
        assertTrue(looked.text().contains("id=\"looked\""), looked.text());
        assertEquals(
                422,
                house.served
                        .form(into, asked.replace("2027-04-01", "soon") + "&do=look")
                        .status());
        assertEquals(303, house.served.form(into, asked + "&do=post").status());
        assertEquals(303, house.served.form(into, asked + "&do=post").status(), "sent twice");
        assertTrue(house.served.page(here).text().contains("In the books: <a href=\"/books/entries/1\">"));
        assertTrue(house.served.page(into).text().contains("The order stands in the books as"));
        assertEquals(1, commitments(job));
        String now = "version="
                + house.served
                        .get("/api/rentals/" + rental.id())
                        .json()
                        .get("version")
                        .asInt() + "&%2Fline=2";
        Reply kept = house.served.form(here + "/undo-order", now);
        assertEquals(422, kept.status());
        assertTrue(kept.text().contains("reverse that entry first"), kept.text());
        assertEquals(303, house.served.form(here + "/got", now).status());
        assertTrue(house.served.page(here).text().contains("In the house <span"));
    }

    private int commitments(long job) {
        return house.served
                .get("/api/jobs/" + job + "/commitments")
                .json()
                .get("items")
                .size();
    }
}
