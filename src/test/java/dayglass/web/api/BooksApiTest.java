package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import dayglass.support.Served;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The books by REST, each answer held to the contract: from a plan to its last payment, and what is refused. */
class BooksApiTest extends OneServer {
    private static final AtomicInteger KEYS = new AtomicInteger();

    private String job = "";

    @BeforeEach
    void importJob() {
        job = "/api/jobs/"
                + served.post("/api/jobs/import", Served.example("01-three-day-week"))
                        .id();
    }

    private static Reply post(String address, String body) {
        return served.post(address, body, "Idempotency-Key", "books-" + KEYS.incrementAndGet());
    }

    private static void assertStatus(int status, Reply reply) {
        assertEquals(status, reply.status(), reply.text());
    }

    private Reply entry(String more) {
        return post(
                job + "/book-entries",
                "{\"kind\": \"actual\", \"date\": \"2027-04-06\", \"description\": \"freight\", \"net\": \"100.00\""
                        + more + "}");
    }

    private String total(String figure) {
        return served.get(job + "/cost-report").json().at("/total/" + figure).asString();
    }

    @Test
    void aPlanBecomesOrdersAndAnInvoiceMakesThemActual() {
        long costing = served.post(job + "/costings", "{}").id();
        String accept = "{\"costingId\": " + costing + ", \"date\": \"2027-04-01\"}";
        Reply accepted = served.post(job + "/accepted-plans", accept, "Idempotency-Key", "plan-" + costing);
        assertStatus(201, accepted);
        Reply again = served.post(job + "/accepted-plans", accept, "Idempotency-Key", "plan-" + costing);
        assertEquals(accepted.text(), again.text());
        assertStatus(
                422,
                served.post(
                        job + "/accepted-plans",
                        accept.replace("04-01", "04-02"),
                        "Idempotency-Key",
                        "plan-" + costing));
        assertStatus(422, post(job + "/accepted-plans", accept));
        assertStatus(409, served.delete("/api/costings/" + costing, "If-Match", "*"));
        assertStatus(201, post(job + "/accepted-plans", accept.replace("}", ", \"as\": \"estimate\"}")));
        String committed = total("committed");
        assertEquals(committed, total("estimate"));
        assertEquals("0.00", total("variance"));

        Reply orders = served.get(job + "/commitments");
        String supplier = orders.json().at("/items/0/supplier").asString();
        String order = orders.json().at("/items/0/purchaseOrder").asString();
        assertEquals("PO-" + costing + "-1", order);
        String net = orders.json().at("/items/0/openNet").asString();
        String invoice = "{\"supplier\": \"" + supplier + "\", \"number\": \"A-1\", \"date\": \"2027-04-20\", \"text\":"
                + " \"purchase order,net,tax,tax code,explanation\\r\\n" + order + ",NET,19.00,V19,\\r\\n\"}";
        Reply beside = served.post(job + "/invoices/match", invoice.replace("NET", net));
        assertStatus(200, beside);
        assertEquals("0.00", beside.json().at("/lines/0/difference").asString());
        Reply dearer = post(job + "/invoices", invoice.replace("NET", "99999.00"));
        assertStatus(400, dearer);
        assertEquals(
                "/lines/0/explanation", dearer.json().at("/faults/0/pointer").asString());
        Reply posted = post(job + "/invoices", invoice.replace("NET", net));
        assertStatus(201, posted);
        assertStatus(
                409,
                post(
                        job + "/invoices",
                        invoice.replace(order, "")
                                .replace("purchase order,", "description,")
                                .replace("\\r\\n,", "\\r\\nx,")
                                .replace("NET", net)));
        assertEquals(net, total("actual"));
        assertStatus(200, served.get(job + "/invoices"));
        String address = "/api/invoices/" + posted.id();
        String owed = served.get(address).json().get("owed").asString();
        Reply paid = post(address + "/payments", "{\"date\": \"2027-05-20\", \"amount\": \"" + owed + "\"}");
        assertStatus(201, paid);
        assertEquals("0.00", paid.json().get("owed").asString());
        assertStatus(422, post(address + "/payments", "{\"date\": \"2027-05-20\", \"amount\": \"1.00\"}"));
        assertStatus(404, served.get("/api/invoices/99999"));
    }

    @Test
    void anEntryIsPostedSplitListedAndTakenBack() {
        Reply split = entry(", \"tax\": \"19.00\", \"parts\": [{\"costCode\": \"a\", \"weight\": 1}, {\"costCode\":"
                + " \"b\", \"episode\": \"2\", \"weight\": 2}]");
        assertStatus(201, split);
        assertEquals("33.33", split.json().at("/items/0/net").asString());
        assertEquals("66.67", split.json().at("/items/1/net").asString());
        assertStatus(201, entry(", \"currency\": \"USD\", \"exchange\": {\"rate\": \"0.915\", \"source\": \"list\"}"));
        Reply page = served.get(job + "/book-entries?limit=2&kind=actual");
        assertStatus(200, page);
        Reply next = served.get(page.json().get("next").asString());
        assertEquals("91.50", next.json().at("/items/0/baseNet").asString());
        assertEquals(
                0,
                served.get(job + "/book-entries?costCode=none")
                        .json()
                        .get("items")
                        .size());
        String first = "/api/book-entries/" + split.json().at("/items/0/id").asLong();
        assertStatus(200, served.get(first));
        Reply back =
                post(first + "/reversal", "{\"date\": \"2027-04-07\", \"reason\": \"twice\", \"wholePosting\": true}");
        assertStatus(201, back);
        assertEquals(2, back.json().get("items").size());
        assertStatus(422, post(first + "/reversal", "{\"date\": \"2027-04-07\", \"reason\": \"again\"}"));
        assertStatus(404, served.get("/api/book-entries/999999"));
        assertEquals("91.50", total("actual"));
    }

    @ParameterizedTest
    @CsvSource({
        "'', 'currency\": \"USD', /exchange",
        "'', 'net\": \"1.005', /net",
        "'', 'kind\": \"accrual', /kind",
        "'', 'serviceTo\": \"2027-04-01\", \"serviceFrom\": \"2027-04-02', /serviceTo"
    })
    void aFaultIsToldAtItsField(String unused, String member, String pointer) {
        String name = member.substring(0, member.indexOf('"'));
        String body =
                "{\"kind\": \"actual\", \"date\": \"2027-04-06\", \"description\": \"freight\", \"net\": \"100.00\"}";
        String changed = body.contains("\"" + name + "\"")
                ? body.replaceFirst("\"" + name + "\": \"[^\"]*\"", "\"" + member + "\"")
                : body.replace("}", ", \"" + member + "\"}");
        Reply refused = post(job + "/book-entries", changed);
        assertStatus(400, refused);
        assertEquals(pointer, refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void aChartComesInWholeOrNotAtAll() {
        Reply none = served.get(job + "/cost-chart");
        assertEquals("\"0\"", none.etag());
        Reply bad = served.put(
                job + "/cost-chart",
                "{\"text\": \"code,name\\r\\n1,one\\r\\n,two\\r\\n1,three\\r\\n\"}",
                "If-Match",
                "\"0\"");
        assertStatus(400, bad);
        assertEquals(2, bad.json().get("faults").size());
        assertEquals(0, served.get(job + "/cost-chart").json().get("codes").size());
        Reply good = served.put(job + "/cost-chart", "{\"text\": \"Code;Name\\n2340;Lenses\\n\"}", "If-Match", "\"0\"");
        assertStatus(200, good);
        assertStatus(412, served.put(job + "/cost-chart", "{\"text\": \"code\\n1\\n\"}", "If-Match", "\"0\""));
        assertStatus(428, served.put(job + "/cost-chart", "{\"text\": \"code\\n1\\n\"}"));
        assertStatus(400, entry(", \"costCode\": \"2341\""));
        assertStatus(201, entry(", \"costCode\": \"2340\""));
        assertEquals(
                "Lenses",
                served.get(job + "/cost-report").json().at("/rows/0/title").asString());
        assertStatus(400, served.put(job + "/cost-chart", "{\"text\": \"code\\n1\\n\"}", "If-Match", "\"1\""));
    }

    @Test
    void periodsCloseInOrderAndOpenAgainWithAReason() {
        assertStatus(200, served.get(job + "/book-calendar"));
        assertStatus(
                400,
                served.put(
                        job + "/book-calendar",
                        "{\"firstDay\": \"2027-04-01\", \"ends\": [\"2027-03-01\"]}",
                        "If-Match",
                        "\"0\""));
        assertStatus(
                200,
                served.put(
                        job + "/book-calendar",
                        "{\"firstDay\": \"2027-04-01\", \"ends\": [\"2027-04-30\", \"2027-05-31\"]}",
                        "If-Match",
                        "\"0\""));
        entry("");
        assertStatus(422, post(job + "/periods/close", "{\"lastDay\": \"2027-05-31\"}"));
        assertStatus(200, post(job + "/periods/close", "{\"lastDay\": \"2027-04-30\"}"));
        assertStatus(422, entry(""));
        Reply periods = served.get(job + "/periods");
        assertEquals("2027-04-30", periods.json().get("closedThrough").asString());
        assertStatus(400, post(job + "/periods/reopen", "{\"reason\": \" \"}"));
        assertStatus(200, post(job + "/periods/reopen", "{\"reason\": \"late\"}"));
        assertStatus(201, entry(""));
        assertStatus(409, served.delete(job, "If-Match", "*"));
    }

    @Test
    void theReportTellsWhatChangedAndEachRowLeadsToItsEntries() {
        entry(", \"costCode\": \"=cmd\", \"episode\": \"E 1&2\", \"supplier\": \"Quay\"");
        Reply report = served.get(job + "/cost-report?by=episode&basis=gross&since=2027-04-05&until=2027-04-30");
        assertStatus(200, report);
        assertEquals("100.00", report.json().at("/changes/0/now/actual").asString());
        Reply entries = served.get(report.json().at("/rows/0/entries").asString());
        assertEquals(1, entries.json().get("items").size());
        assertStatus(400, served.get(job + "/cost-report?by=day"));
    }

    @Test
    void exportsHoldWhatTheirControlTotalsSay() {
        entry(", \"costCode\": \"=1+2\"");
        Reply csv = served.get(job + "/book-entries.csv?kind=actual");
        assertTrue(csv.text().contains(",'=1+2,"), csv.text());
        Reply control = served.get(job + "/book-entries-control.json?kind=actual");
        assertEquals(1, control.json().get("rows").asInt());
        assertEquals("100.00", control.json().at("/baseByKind/actual/gross").asString());
        Reply json = served.get(job + "/book-entries.json?kind=actual");
        assertEquals("=1+2", json.json().at("/entries/0/cost code").asString());
        assertEquals(control.json().get("csvSha256"), json.json().at("/control/csvSha256"));
        assertStatus(200, served.get(job + "/book-entries.xlsx"));
        assertStatus(404, served.get("/api/jobs/99999/book-entries.csv"));
    }
}
