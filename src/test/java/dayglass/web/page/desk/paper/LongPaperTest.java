package dayglass.web.page.desk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.PaperRead;
import dayglass.support.Reply;
import dayglass.web.api.desk.DeskHouse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sixty units on paper. The packing list has the columns of a general list in the model of an ATA carnet (Convention on
 * Temporary Admission, Istanbul, 26 June 1990, Annex A, Appendix I): item number, trade description with marks and
 * numbers, number of pieces, weight, value, country of origin; from memory, and as chambers of commerce explain it.
 */
class LongPaperTest {
    private static final int UNITS = 60;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    /** Lenses of 1250 g each; the first has no serial, the second no origin, the third no value. */
    private static Reply sixty(DeskHouse house) {
        house.made(
                "/api/lens-models",
                "{\"maker\": \"Marrow\", \"name\": \"Rail 24-70\", \"kind\": \"spherical zoom\", \"minFocal\": \"24\","
                        + " \"maxFocal\": \"70\", \"imageCircle\": \"46\", \"weightG\": 1250}");
        StringBuilder lines = new StringBuilder();
        for (int at = 1; at <= UNITS; at++) {
            Reply unit = house.made(
                    "/api/units",
                    "{\"tag\": \"R-" + (100 + at) + "\", \"modelId\": 4, \"accessories\": [\"front cap\", \"rear cap\"]"
                            + (at == 1 ? "" : ", \"serial\": \"SN" + (9000 + at) + "\"")
                            + (at == 2 ? "" : ", \"origin\": \"DE\"")
                            + (at == 3
                                    ? ""
                                    : ", \"value\": {\"amount\": \"" + (1000 + at) + ".25\", \"currency\": \"EUR\","
                                            + " \"setOn\": \"2027-01-01\"}")
                            + "}");
            lines.append(at == 1 ? "" : ", ")
                    .append("{\"unit\": ")
                    .append(unit.id())
                    .append("}");
        }
        house.made(
                "/api/rate-cards",
                "{\"supplierId\": 1, \"name\": \"Zooms\", \"currency\": \"EUR\", \"effectiveFrom\": \"2027-01-01\","
                        + " \"rates\": [{\"id\": \"rail\", \"lets\": {\"model\": 4}, \"blocks\": [{\"days\": 1,"
                        + " \"price\": \"70.10\"}]}]}");
        Reply rental = house.confirmed("3 days from mon", lines.toString());
        assertEquals(201, rental.status(), rental.text());
        return rental;
    }

    private static void assertPaged(PaperRead paper, String title, String heading) {
        int pages = paper.pages().size();
        assertTrue(pages > 1, title);
        for (int at = 0; at < pages; at++) {
            String text = paper.pages().get(at);
            assertTrue(text.contains(title + ", The house page " + (at + 1) + " of " + pages), text);
            boolean rows =
                    Pattern.compile("(?m)^\\d+ .*R-1\\d\\d").matcher(text).find();
            assertTrue(!rows || text.contains(heading), "the heading is missing above rows: " + text);
        }
    }

    /** Each tag once and on one page with its serial, so that no row was lost, doubled or broken. */
    private static void assertEveryRowWhole(PaperRead paper) {
        List<String> tags = new ArrayList<>();
        for (String page : paper.pages()) {
            String rows = page.split("What is missing", 2)[0];
            Matcher tag = Pattern.compile("R-(1\\d\\d)").matcher(rows);
            while (tag.find()) {
                tags.add(tag.group(1));
                String serial = "SN9" + tag.group(1).replaceFirst("^1", "0");
                assertTrue(tag.group(1).equals("101") || page.contains(serial), serial + " is not on: " + page);
            }
        }
        assertEquals(UNITS, tags.size(), tags.toString());
        assertEquals(UNITS, tags.stream().distinct().count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void sixtyUnitsGoOverPagesWithHeadingsAndNumbers(String size) {
        try (DeskHouse house = new DeskHouse(folder)) {
            String address = "/desk/rentals/" + sixty(house).id();
            for (String[] each : new String[][] {
                {"/packing-list.pdf", "Packing list of rental 1", "trade description"},
                {"/handover.pdf", "Handover sheet of rental 1", "condition as it goes out"},
                {"/return.pdf", "Return sheet of rental 1", "condition back"}
            }) {
                PaperRead paper = PaperRead.of(house.served, address + each[0] + "?paper=" + size);
                assertPaged(paper, each[1], each[2]);
                assertEveryRowWhole(paper);
            }
            PaperRead quote = PaperRead.of(house.served, "/desk/quotes/1/quote.pdf?paper=" + size);
            assertPaged(quote, "Quote 1, revision 1", "hire total");
        }
    }

    /** 60 × 1.250 kg; 1001.25 to 1060.25 without 1003.25, which is 59 values. */
    @Test
    void aPackingListAddsUpWhatIsKnownAndNamesWhatIsNot() {
        try (DeskHouse house = new DeskHouse(folder)) {
            PaperRead paper =
                    PaperRead.of(house.served, "/desk/rentals/" + sixty(house).id() + "/packing-list.pdf");
            String text = paper.text();
            for (String words : List.of(
                    "together, as far as known 60 75.000 kg 60 841.75 EUR",
                    "Marrow Rail 24-70, spherical zoom",
                    "with: front cap, rear cap",
                    "R-102 SN9002 1 1.250 kg 1 002.25 EUR not known",
                    "R-101 none 1 1.250 kg 1 001.25 EUR DE",
                    "No serial is recorded of 1 of 60: R-101.",
                    "No value is recorded of 1 of 60: R-103.",
                    "No country of origin is recorded of 1 of 60: R-102.",
                    "nothing can be added to a list once the carnet is issued")) {
                assertTrue(text.replaceAll("\\s+", " ").contains(words), words + " is not in: " + text);
            }
            assertTrue(!text.contains("No weight is recorded"), text);
        }
    }
}
