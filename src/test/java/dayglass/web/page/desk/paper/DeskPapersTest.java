package dayglass.web.page.desk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.PaperRead;
import dayglass.support.Reply;
import dayglass.web.api.desk.DeskHouse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** The papers read back out of their PDF, against the data they come from and against figures worked by hand. */
class DeskPapersTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private DeskHouse house;

    @BeforeEach
    void open() {
        house = new DeskHouse(folder);
        String tag = house.served.get("/api/desk-rules").etag();
        assertEquals(
                200,
                house.served
                        .put(
                                "/api/desk-rules",
                                "{\"taxes\": [{\"code\": \"sales tax\", \"percent\": \"20\"}], \"depositPercent\":"
                                        + " \"10\", \"terms\": \"Keep it dry.\\nBring it back clean.\"}",
                                "If-Match",
                                tag)
                        .status());
    }

    @AfterEach
    void close() {
        house.close();
    }

    private PaperRead paper(String address) {
        return PaperRead.of(house.served, address);
    }

    /** As the papers write an amount, read back with plain blanks: {@code 1 234.50}. */
    private static String printed(String amount) {
        return amount.replaceAll("(\\d)(?=(\\d{3})+\\.)", "$1 ").replace('-', '\u2212');
    }

    private static String printed(JsonNode node, String pointer) {
        return printed(node.at(pointer).asString());
    }

    private static void has(PaperRead paper, String... words) {
        for (String each : words) {
            assertTrue(paper.text().contains(each), each + " is not in: " + paper.text());
        }
    }

    private Reply quoted(String line, String more) {
        Reply quote = house.quote("3 days from mon", line, more);
        assertEquals(201, quote.status(), quote.text());
        return quote;
    }

    private Reply confirmed(Reply quote) {
        Reply rental = house.act(quote, "/api/quotes", "confirm", "{}");
        assertEquals(201, rental.status(), rental.text());
        return rental;
    }

    /** Does one deed after the other; {@code wait} lets days pass. */
    private Reply lived(Reply start, String deeds) {
        Reply rental = start;
        for (String deed : deeds.split("; *", -1)) {
            String[] words = deed.split(" ", 2);
            String rest = words.length > 1 ? words[1] : "{}";
            if (words[0].equals("wait")) {
                house.clock.set(rest);
            } else {
                boolean door = words[0].equals("handover") || words[0].equals("return");
                rental = house.rental(rental, words[0], door ? DeskHouse.units(2) : rest);
                assertEquals(200, rental.status(), deed + ": " + rental.text());
            }
        }
        return rental;
    }

    /** 300.00 of hire, a waiver of 10 % on it and a tax of 20 % on both; a day late 100.00 and its waiver. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        plain       |                                                     | handover; return; settle {"keep": "0.00"} | 396.00 | 396.00 | 396.00
        discount    | , "discountPercent": "5", "discountReason": "old friends" | handover; return; settle {"keep": "0.00"} | 376.20 | 376.20 | 376.20
        insured     | , "insured": true                                   | handover; return; settle {"keep": "0.00"} | 360.00 | 360.00 | 360.00
        late        |                                                     | deposit {"taken": "400.00"}; handover; wait 2027-04-09T12:00:00Z; return; settle {"keep": "100.00"} | 396.00 | 660.00 | 560.00
        late, not   |                                                     | handover; wait 2027-04-09T12:00:00Z; return; reversals {"charge": 0, "why": "the road was shut"}; settle {"keep": "0.00"} | 396.00 | 396.00 | 396.00
        cleaned     |                                                     | handover; charges {"kind": "cleaning", "words": "salt", "amount": "12.34", "taxed": true}; return; settle {"keep": "0.00"} | 396.00 | 410.81 | 410.81
        lost        |                                                     | deposit {"taken": "400.00"}; handover; charges {"kind": "loss", "unitId": 2, "words": "over board", "amount": "4000.00"}; settle {"keep": "400.00"} | 396.00 | 4396.00 | 3996.00
        extended    |                                                     | handover; extend {"lastDay": "2027-04-14"}; return; settle {"keep": "0.00"} | 396.00 | 792.00 | 792.00
        cancelled   |                                                     | deposit {"taken": "400.00"}; cancel {"why": "no snow"} | 396.00 | 165.00 | 0.00
        """)
    void totalsArePrintedAsTheyAre(String name, String more, String deeds, String price, String owed, String toPay) {
        Reply quote = quoted("{\"unit\": 2}", more == null ? "" : more);
        assertEquals(price, quote.json().at("/revisions/0/price/total").asString(), name);
        assertQuotePaper(quote);
        Reply rental = lived(confirmed(quote), deeds);
        assertEquals(owed, rental.json().get("owed").asString(), name);
        assertEquals(toPay, rental.json().get("toPay").asString(), name);
        assertInvoicePaper(rental);
    }

    private void assertQuotePaper(Reply quote) {
        JsonNode promise = quote.json().at("/revisions/0");
        JsonNode price = promise.get("price");
        PaperRead paper = paper("/desk/quotes/" + quote.id() + "/quote.pdf");
        has(
                paper,
                "Quote 1, revision 1",
                "For Nell Orrin",
                "Production Winter Quarry",
                "shoot 5 Apr to 7 Apr 2027 (3 days)",
                "H40-2",
                "hire: 7 days 300.00",
                "open: can be taken up until Wed 14 Apr 2027",
                "Total " + printed(price, "/total") + " EUR",
                "Before tax " + printed(price, "/net") + " EUR",
                "Hire " + printed(price, "/hire") + " EUR",
                "Deposit, at the handover " + printed(promise, "/deposit") + " EUR",
                "Replacement value in total: 4 000.00 EUR",
                "Keep it dry.",
                "no tax document");
        price.get("taxes")
                .properties()
                .forEach(tax -> has(
                        paper,
                        "Tax: " + tax.getKey() + " " + printed(tax.getValue().asString()) + " EUR"));
        price.get("waivers")
                .properties()
                .forEach(each -> has(
                        paper,
                        "Waiver: " + each.getKey() + " "
                                + printed(each.getValue().asString()) + " EUR"));
        boolean insured = price.at("/asked/insured").asBoolean();
        has(paper, insured ? "Proof of insurance is to be brought" : "A waiver is no insurance");
        assertEquals(insured, price.get("waivers").isEmpty());
        if (!price.get("discount").asString().equals("0.00")) {
            has(paper, "Discount \u2212" + printed(price, "/discount") + " EUR", "Discount: old friends");
        }
    }

    private void assertInvoicePaper(Reply rental) {
        PaperRead paper = paper("/desk/rentals/" + rental.id() + "/invoice.pdf");
        JsonNode invoice =
                house.served.get("/api/rentals/" + rental.id() + "/invoice").json();
        has(
                paper,
                "Invoice 1",
                "Rental 1",
                "Total " + printed(rental.json(), "/owed") + " EUR",
                "Left to pay " + printed(rental.json(), "/toPay") + " EUR",
                "Before tax " + printed(invoice, "/net") + " EUR",
                "Of it kept towards the total " + printed(rental.json(), "/deposit/kept") + " EUR",
                "Of it given back " + printed(rental.json(), "/deposit/returned") + " EUR",
                "A waiver is no insurance.");
        invoice.get("taxes")
                .properties()
                .forEach(tax -> has(
                        paper,
                        "Tax: " + tax.getKey() + " " + printed(tax.getValue().asString()) + " EUR"));
        for (JsonNode line : rental.json().get("charges")) {
            // Words break over lines where a column is narrow, an amount never does.
            has(paper, " " + printed(line, "/total"), line.get("kind").asString());
        }
        for (JsonNode line : invoice.get("hired")) {
            has(paper, printed(line, "/total"));
        }
        assertEquals(
                rental.json().at("/ending/cancelled").asBoolean(),
                invoice.get("hired").isEmpty(),
                "what was cancelled was not let");
    }

    @Test
    void aQuoteSaysItsStateAndKeepsItsRevisions() {
        Reply quote = quoted("{\"unit\": 2}", "");
        Reply revised = house.act(
                quote, "/api/quotes", "revisions", DeskHouse.quoteBody("mon", "{\"model\": 3, \"count\": 2}", ""));
        String address = "/desk/quotes/" + quote.id() + "/quote.pdf";
        has(paper(address + "?revision=1"), "Quote 1, revision 1", "replaced by revision 2", "H40-2");
        PaperRead now = paper(address);
        has(now, "Quote 1, revision 2", "G40-1", "What is short", "cannot be supplied, and is not in the price");
        assertFalse(now.text().contains("H40-2"));
        house.clock.pass(Duration.ofDays(20));
        has(paper(address), "expired: it could be taken up until");
        house.clock.pass(Duration.ofDays(-20));
        assertEquals(
                200,
                house.act(revised, "/api/quotes", "decline", "{\"why\": \"too dear\"}")
                        .status());
        has(paper(address), "State declined");
    }

    @Test
    void whatIsRentedInIsSaidWithoutItsCost() {
        Reply quote = house.quote("mon", "{\"model\": 2, \"count\": 3}", "");
        PaperRead paper = paper("/desk/quotes/" + quote.id() + "/quote.pdf");
        has(paper, "rented in for you", "not free here; rented in for you, and in the price", "180.00");
        assertFalse(paper.text().contains("Quay Hire"), "from whom is the house's affair");
        assertFalse(paper.text().contains("150.00"), "and so is what it pays");
        Reply rental = confirmed(quote);
        PaperRead list = paper("/desk/rentals/" + rental.id() + "/packing-list.pdf");
        has(
                list,
                "rented in for this rental",
                "No serial is recorded of 3 of 3",
                "together, as far as known 3 not known 8 000.00 EUR");
    }

    @Test
    void anInvoiceThatIsNotThereIsRefusedWithTheMend() {
        Reply rental = confirmed(quoted("{\"unit\": 2}", ""));
        Reply none = house.served.page("/desk/rentals/" + rental.id() + "/invoice.pdf");
        assertEquals(404, none.status());
        assertTrue(none.text().contains("settle the rental, then it has one"), none.text());
        assertEquals(
                404,
                house.served.get("/api/rentals/" + rental.id() + "/invoice").status());
        house.clock.pass(Duration.ofDays(-20));
        assertEquals(200, house.rental(rental, "cancel", "{}").status());
        Reply free = house.served.page("/desk/rentals/" + rental.id() + "/invoice.pdf");
        assertEquals(404, free.status());
        assertTrue(free.text().contains("cancelled at no cost"), free.text());
    }

    @ParameterizedTest
    @CsvSource({
        "/desk/quotes/1/quote.pdf?revision=2",
        "/desk/quotes/1/quote.pdf?revision=0",
        "/desk/quotes/2/quote.pdf",
        "/desk/rentals/2/packing-list.pdf",
        "/desk/rentals/2/handover.pdf",
        "/desk/rentals/2/return.pdf",
        "/desk/rentals/2/invoice.pdf"
    })
    void whatIsNotThereIsNotFound(String address) {
        confirmed(quoted("{\"unit\": 2}", ""));
        assertEquals(404, house.served.page(address).status(), address);
    }

    @Test
    void paperOfNoKnownSizeIsRefusedWithTheSizesThereAre() {
        confirmed(quoted("{\"unit\": 2}", ""));
        Reply refused = house.served.page("/desk/quotes/1/quote.pdf?paper=A0");
        assertEquals(400, refused.status());
        assertTrue(refused.text().contains("as A4 or Letter"), refused.text());
    }

    @ParameterizedTest
    @CsvSource({"a4, 210", "A4, 210", "letter, 215.9"})
    void everyPaperComesOnBothSizesWithItsFontInsideAndItsNumberAtTheFoot(String size, float widthMm) {
        Reply rental = lived(confirmed(quoted("{\"unit\": 2}", "")), "handover; return; settle {\"keep\": \"0.00\"}");
        for (String name : List.of(
                "quotes/1/quote.pdf: Quote 1, revision 1",
                "rentals/1/packing-list.pdf: Packing list of rental 1",
                "rentals/1/handover.pdf: Handover sheet of rental 1",
                "rentals/1/return.pdf: Return sheet of rental 1",
                "rentals/1/invoice.pdf: Invoice 1")) {
            String[] words = name.split(": ", 2);
            PaperRead paper = paper("/desk/" + words[0] + "?paper=" + size);
            assertEquals(widthMm, paper.widthMm(), 0.2, name);
            assertEquals(List.of(), paper.loose(), name);
            assertTrue(paper.fonts() > 0, name);
            has(paper, words[1] + ", The house page 1 of 1");
        }
        assertEquals(1, rental.id());
    }

    @Test
    void theDoorIsBlankAtFirstThenShowsWhatWasSeenAndWhatDiffers() {
        Reply rental = confirmed(quoted("{\"unit\": 2}", ""));
        String address = "/desk/rentals/" + rental.id();
        PaperRead blank = paper(address + "/handover.pdf");
        has(blank, "H40-2", "front cap", "case", "signature", "date and time", "Due back 8 Apr 2027, 10:00");
        assertFalse(blank.text().contains("\u00d7") || blank.text().contains("Handed over 3"), blank.text());

        house.clock.set("2027-04-04T15:10:00Z");
        Reply out = house.rental(
                rental,
                "handover",
                "{\"units\": [{\"unitId\": 2, \"accessories\": [\"front cap\"], \"condition\": \"rim worn\"}]}");
        PaperRead gone = paper(address + "/handover.pdf");
        has(gone, "\u00d7 front cap", "rim worn", "case did not go out", "Handed over 4 Apr 2027, 15:10 by");
        assertFalse(gone.text().contains("\u00d7 case"), gone.text());
        has(paper(address + "/return.pdf"), "\u00d7 front cap", "rim worn");

        house.clock.set("2027-04-08T09:00:00Z");
        house.rental(
                out,
                "return",
                "{\"units\": [{\"unitId\": 2, \"accessories\": [\"case\"], \"condition\": \"rim bent\"}]}");
        PaperRead back = paper(address + "/return.pdf");
        String flat = back.text().replaceAll("\\s+", " ");
        for (String words : List.of("rim worn", "rim bent", "Taken back 8 Apr 2027, 09:00 by")) {
            assertTrue(flat.contains(words), words + " is not in: " + flat);
        }
        // Cells are read line by line across the row, so words of a narrow column are looked for one by one.
        for (String word : List.of("not back", "condition was", "ticked when")) {
            assertTrue(flat.contains(word), word + " is not in: " + flat);
        }
    }

    @Test
    void aUnitThatGaveWayStaysOnTheSheets() {
        Reply out = lived(confirmed(quoted("{\"unit\": 2}", "")), "handover");
        Reply swapped = house.rental(out, "swap", "{\"unitId\": 2, \"by\": 5}");
        assertEquals(200, swapped.status(), swapped.text());
        PaperRead sheet = paper("/desk/rentals/" + out.id() + "/return.pdf");
        has(sheet, "H40-2", "G40-1");
        assertTrue(sheet.text().replaceAll("\\s+", " ").contains("came back early"), sheet.text());
        PaperRead list = paper("/desk/rentals/" + out.id() + "/packing-list.pdf");
        has(list, "G40-1");
        assertFalse(list.text().contains("H40-2"), "it is not packed any more");
    }
}
