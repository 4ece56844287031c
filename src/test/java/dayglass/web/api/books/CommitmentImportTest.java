package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import org.junit.jupiter.api.Test;

/** Orders from before the books began come in as a table, all of them or none. */
class CommitmentImportTest extends FreshBooks {
    private static final String GOOD = "date;supplier;purchase order;description;cost code;net;currency;exchange rate;"
            + "exchange source\\r\\n2027-04-01;Quay House;PO-1;'=40 mm;2340;1440.00;;;\\r\\n"
            + "2027-04-02;Far Freight;PO-2;a crate;2350;10000;JPY;0.0062;the bank's list\\r\\n";

    private Reply bring(String text, boolean preview) {
        return served.post(job + "/commitments/import", "{\"text\": \"" + text + "\", \"preview\": " + preview + "}");
    }

    private int orders() {
        return served.get(job + "/commitments").json().get("items").size();
    }

    @Test
    void aPreviewPostsNothingAndTheImportAllOfIt() {
        Reply preview = bring(GOOD, true);
        assertEquals(200, preview.status(), preview.text());
        assertEquals("62.00", preview.json().at("/items/1/baseNet").asString());
        assertEquals(0, orders());
        Reply done = bring(GOOD, false);
        assertEquals(201, done.status(), done.text());
        assertEquals(2, orders());
        assertEquals("=40 mm", done.json().at("/items/0/description").asString(), "the guard is taken away");
    }

    /** The key keeps the answer in the transaction that the preview takes back. */
    @Test
    void aPreviewPostsNothingWhereTheRequestBearsAKeyToo() {
        Reply preview = served.post(
                job + "/commitments/import",
                "{\"text\": \"" + GOOD + "\", \"preview\": true}",
                "Idempotency-Key",
                "previewed-once");
        assertEquals(200, preview.status(), preview.text());
        assertEquals(0, orders());
    }

    @Test
    void anAmountThatTheBooksDoNotHoldIsToldWithItsLine() {
        Reply refused = bring(
                "date,supplier,description,net,tax\\n2027-04-01,Quay House,good,1.00,0.20\\n"
                        + "2027-04-01,Quay House,too much,99999999999.00,\\n"
                        + "2027-04-01,Quay House,too much,1.00,99999999999.00\\n",
                true);
        assertEquals(400, refused.status(), refused.text());
        assertTrue(refused.text().contains("Line 3, net: is more than the books hold"), refused.text());
        assertTrue(refused.text().contains("Line 4, tax: is more than the books hold"), refused.text());
        assertEquals("/text", refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void halfACharacterIsRefusedAndNotKeptAsAnother() {
        Reply refused = bring("date,supplier,description,net\\n2027-04-01,Quay House,\\ud800,1.00\\n", true);
        assertEquals(400, refused.status(), refused.text());
        assertEquals("/text", refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void everyBadRowIsToldWithLineAndColumnAndNothingIsHalfDone() {
        assertEquals(
                200,
                served.put(job + "/cost-chart", "{\"text\": \"code\\r\\n2340\\r\\n\"}", "If-Match", "\"0\"")
                        .status());
        Reply refused = bring(
                "date,supplier,description,cost code,net\\n2027-04-01,Quay House,good,2340,1.00\\n"
                        + "soon,Quay House,bad date,2340,1.00\\n2027-04-01,Quay House,no code,99,1.00\\n"
                        + "2027-04-01,,nobody,2340,x\\n",
                false);
        assertEquals(400, refused.status(), refused.text());
        assertTrue(refused.text().contains("Line 3, date: "), refused.text());
        assertTrue(refused.text().contains("Line 5, net: "), refused.text());
        assertEquals(0, orders());
        Reply coded = bring(
                "date,supplier,description,cost code,net\\n2027-04-01,Quay House,good,2340,1.00\\n"
                        + "2027-04-01,Quay House,no code,99,1.00\\n2027-04-01,,nobody,2340,1.00\\n",
                false);
        assertTrue(coded.text().contains("Line 3, cost code: \\\"99\\\" is not in the job's chart"), coded.text());
        assertTrue(coded.text().contains("Line 4, supplier: is missing"), coded.text());
        assertEquals(0, orders());
        // RFC 4180, section 2, rule 4: each line has as many fields as the others.
        Reply uneven = bring(
                "date,supplier,description,net\\n2027-04-01,Quay House,good,1.00\\n2027-04-01,Quay House,too few\\n"
                        + "2027-04-01,Quay House,a comma, in it,1.00\\n",
                false);
        assertEquals(400, uneven.status(), uneven.text());
        assertTrue(uneven.text().contains("Line 3: it has 3 fields where there are 4 headings"), uneven.text());
        assertTrue(uneven.text().contains("Line 4: it has 5 fields where there are 4 headings"), uneven.text());
        assertEquals(2, uneven.json().get("faults").size(), "each line once");
        assertEquals(0, orders());
        assertTrue(bring("date,colour\\n2027-04-01,red\\n", true).text().contains("\\\"colour\\\" is not known"));
        assertTrue(bring("date,date\\n2027-04-01,2027-04-01\\n", true).text().contains("stands there twice"));
    }
}
