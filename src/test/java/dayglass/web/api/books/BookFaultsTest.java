package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What the books refuse is told at the value that has to be mended; invented figures. */
class BookFaultsTest extends FreshBooks {
    private static final String ENTRY = "{\"kind\": \"actual\", \"date\": \"2027-04-05\", \"description\": \"glass\", ";
    private static final String INVOICE =
            "{\"supplier\": \"Quay House\", \"number\": \"A-1\", \"date\": \"2027-04-05\", \"lines\": [";
    private static final String TOO_MUCH = "99999999999.00";

    private List<String> faults(String path, String body) {
        Reply refused = served.post(job + path, body);
        assertEquals(400, refused.status(), refused.text());
        return refused.json()
                .get("faults")
                .valueStream()
                .map(fault -> fault.get("pointer"))
                .map(JsonNode::asString)
                .toList();
    }

    private void chart() {
        assertEquals(
                200,
                served.put(job + "/cost-chart", "{\"text\": \"code\\r\\n2340\\r\\n\"}", "If-Match", "\"0\"")
                        .status());
    }

    @Test
    void anInvoiceWithoutASupplierIsToldSo() {
        assertEquals(
                List.of("/supplier"),
                faults(
                        "/invoices",
                        INVOICE.replace("\"Quay House\"", "\" \"")
                                + "{\"description\": \"glass\", \"net\": \"1.00\", \"explanation\": \"new\"},"
                                + "{\"purchaseOrder\": \"PO-1\", \"net\": \"1.00\"}]}"));
        assertEquals(
                List.of("/supplier"),
                faults(
                        "/invoices/match",
                        "{\"number\": \"A-1\", \"date\": \"2027-04-05\", \"text\": "
                                + "\"description,net\\nglass,1.00\\n\"}"));
    }

    @Test
    void aRateIsNoMoreThanTheBooksHold() {
        assertEquals(
                List.of("/rate"),
                faults(
                        "/book-entries",
                        ENTRY + "\"net\": \"1\", \"rate\": \"999999999999999.9999\", \"currency\": \"CLF\", "
                                + "\"exchange\": {\"rate\": \"1.2\", \"source\": \"a list\"}}"));
    }

    @Test
    void tooMuchIsToldWhereItStands() {
        assertEquals(List.of("/net"), faults("/book-entries", ENTRY + "\"net\": \"" + TOO_MUCH + "\"}"));
        assertEquals(
                List.of("/tax"), faults("/book-entries", ENTRY + "\"net\": \"1.00\", \"tax\": \"" + TOO_MUCH + "\"}"));
        assertEquals(
                List.of("/exchange/rate"),
                faults(
                        "/book-entries",
                        ENTRY + "\"net\": \"999999999.00\", \"currency\": \"USD\", "
                                + "\"exchange\": {\"rate\": \"1000\", \"source\": \"a list\"}}"));
        assertEquals(
                List.of("/lines/1/net", "/lines/2/tax"),
                faults(
                        "/invoices",
                        INVOICE + "{\"description\": \"a\", \"net\": \"1.00\", \"explanation\": \"x\"},"
                                + "{\"description\": \"b\", \"net\": \"" + TOO_MUCH + "\", \"explanation\": \"x\"},"
                                + "{\"description\": \"c\", \"net\": \"1.00\", \"tax\": \"" + TOO_MUCH
                                + "\", \"explanation\": \"x\"}]}"));
    }

    @Test
    void aCodeThatTheChartLacksIsToldWhereItStands() {
        chart();
        assertEquals(List.of("/costCode"), faults("/book-entries", ENTRY + "\"net\": \"1.00\"}"));
        assertEquals(
                List.of("/parts/1/costCode"),
                faults(
                        "/book-entries",
                        ENTRY + "\"net\": \"3.00\", \"serviceFrom\": \"2027-04-01\", \"serviceTo\": \"2027-04-09\", "
                                + "\"overPeriods\": true, \"parts\": [{\"costCode\": \"2340\", \"weight\": 1}, "
                                + "{\"costCode\": \"99\", \"weight\": 2}]}"));
        assertEquals(
                List.of("/lines/1/costCode"),
                faults(
                        "/invoices",
                        INVOICE
                                + "{\"description\": \"a\", \"costCode\": \"2340\", \"net\": \"1.00\", "
                                + "\"explanation\": \"x\"}, {\"description\": \"b\", \"costCode\": \"99\", "
                                + "\"net\": \"1.00\", \"explanation\": \"x\"}]}"));
    }

    @Test
    void anExchangeThatIsNotNeededIsSaidToBeSo() {
        Reply refused = served.post(
                job + "/book-entries",
                ENTRY + "\"net\": \"1.00\", \"exchange\": {\"rate\": \"1.2\", \"source\": \"a list\"}}");
        assertEquals(400, refused.status(), refused.text());
        assertEquals("/exchange", refused.json().at("/faults/0/pointer").asString());
        assertTrue(refused.text().contains("is not needed"), refused.text());
        assertEquals(
                List.of("/currency"),
                faults(
                        "/book-entries",
                        ENTRY + "\"net\": \"1.00\", \"currency\": \"XXX\", "
                                + "\"exchange\": {\"rate\": \"1.2\", \"source\": \"a list\"}}"),
                "an exchange is not blamed for an unknown currency");
    }

    @Test
    void oneRequestMakesNoMoreEntriesThanCanBeGoneThrough() {
        String parts = String.join(", ", java.util.Collections.nCopies(200, "{\"weight\": 1}"));
        assertEquals(
                List.of("/parts"),
                faults(
                        "/book-entries",
                        ENTRY + "\"net\": \"20000.00\", \"serviceFrom\": \"2027-04-05\", "
                                + "\"serviceTo\": \"2047-04-05\", \"overPeriods\": true, \"parts\": [" + parts
                                + "]}"));
    }

    @Test
    void aTableThatIsNoTableIsToldAtItsText() {
        for (String text : List.of("", "code\\n\\\"2340")) {
            Reply refused = served.put(job + "/cost-chart", "{\"text\": \"" + text + "\"}", "If-Match", "\"0\"");
            assertEquals(400, refused.status(), refused.text());
            assertEquals("/text", refused.json().at("/faults/0/pointer").asString());
        }
    }
}
