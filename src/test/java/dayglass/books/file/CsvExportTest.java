package dayglass.books.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.books.CostingFixtures;
import dayglass.books.CostingFixtures.Costed;
import dayglass.books.CostingLines;
import dayglass.sheet.FormulaGuard;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Files are read back by a library other than the one that wrote them. */
class CsvExportTest {
    private static final CSVFormat READER =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    @Test
    void theWholeFileOfAMixedCosting() throws IOException {
        // RFC 4180 section 2: rule 1 (CRLF after each record), rule 3 (a header of as many fields), rule 4 (commas
        // between fields, the same number in each record, none after the last).
        String expected = String.join(
                "\r\n",
                "date,service from,service to,kind,supplier,option,slots,cost code,blocks,hire,discount,"
                        + "raised to minimum,trip,price,extra: case,net,purchase tax,add-on: damage waiver,"
                        + "add-on: sales tax,add-on: stamp,total,currency",
                "2027-04-05,2027-04-05,2027-04-11,rental,Fell Optical,fell-set,40 mm; 100 mm,2310-04,"
                        + "7 days at 720.00 from 2027-04-05,720.00,0.00,0.00,0.00,,,720.00,,72.00,8.00,,800.00,EUR",
                "2027-04-07,2027-04-07,2027-04-07,purchase,Fell Optical,buy-40,40 mm,-12.50,,,,,,8000.00,310.00,"
                        + "8310.00,710.00,,,,9020.00,EUR",
                "2027-04-10,2027-04-10,2027-04-11,rental,Tarn & Daughters,tarn-pair,100 mm,,"
                        + "2 x 1 extra day at 102.86 from 2027-04-10,205.72,-20.57,14.85,10.00,,,210.00,,,,18.66,"
                        + "228.66,EUR",
                "");
        assertEquals(expected, csv(CostingFixtures.mixed().lines(Map.of("fell-set", "2310-04", "buy-40", "-12.50"))));
    }

    @Test
    void theWeighedPlanIsAFileOfItsOwn() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new LineExport(CostingFixtures.mixed().lines(Map.of())).weighedCsv(out);
        List<CSVRecord> rows = read(out.toString(StandardCharsets.UTF_8));
        assertEquals(4, rows.size());
        assertEquals(
                new BigDecimal("4128.66"),
                rows.stream()
                        .map(row -> new BigDecimal(row.get("weighed cost (not payable)")))
                        .reduce(BigDecimal.ZERO, BigDecimal::add));
        assertEquals("owned", rows.get(3).get("kind"));
    }

    /** RFC 4180 section 2: rule 5 (quoted fields), 6 (breaks, quotes and commas inside), 7 (quotes doubled). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ferry, Salt & Sons",
                "The \"Little\" Shelf",
                "\"",
                "two\r\nlines",
                "two\nlines",
                "two\rlines",
                "ends in a comma,",
                " spaces are part of a field (rule 4) ",
                "\uD83C\uDFA5 Grünmoos Æther 光学"
            })
    void textComesBackAsItWent(String supplier) throws IOException {
        String csv =
                csv(CostingFixtures.oneRental("EUR", "10.00", "", "", supplier).lines(Map.of()));
        List<CSVRecord> rows = read(csv);
        assertEquals(1, rows.size());
        assertEquals(supplier, rows.get(0).get("supplier"));
        assertTrue(csv.endsWith(",EUR\r\n"));
    }

    @Test
    void aQuoteIsDoubledInsideQuotes() throws IOException {
        // RFC 4180 section 2 rule 7, its example "b""bb".
        String csv =
                csv(CostingFixtures.oneRental("EUR", "10.00", "", "", "b\"bb").lines(Map.of()));
        assertTrue(csv.contains(",\"b\"\"bb\","), csv);
    }

    /** OWASP, CSV Injection, names the signs; the rest are the same signs in disguise. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "=HYPERLINK(\"http://example.invalid\",\"x\")",
                "+1+1",
                "-1+1",
                "-cmd",
                "@SUM(1)",
                "\t=1",
                "\rtext",
                "\ntext",
                "  =1+1",
                "\u00A0=1",
                "\u3000=1",
                "\u200B=1",
                "\uFEFF=1",
                "\uFF1D1+1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20SUM(1)",
                "-",
                "+44 20 7946 0000",
                "-1.5.2",
                "- 5",
                "-\u0661"
            })
    void whatASpreadsheetWouldRunGetsAnApostrophe(String text) throws IOException {
        Costed costed = CostingFixtures.oneRental("EUR", "10.00", text.strip() + "x", "1.00", text);
        CSVRecord row = read(csv(costed.lines(Map.of("pair", text)))).get(0);
        assertEquals("'" + text, row.get("supplier"));
        // A code loses the spaces and breaks around it, and with them what made this one dangerous.
        String code = text.strip();
        assertEquals(code.equals("text") ? code : "'" + code, row.get("cost code"));
        row.toList()
                .forEach(cell -> assertFalse(cell.matches("(?s)[\\s\\p{Z}\\p{Cf}]*[=+@\uFF1D\uFF0B\uFF20].*"), cell));
    }

    @ParameterizedTest
    @CsvSource({
        // a field that another separator would open inside the text
        "a;=1+1, a;'=1+1",
        "a; -b, a;' -b",
        // harmless as they stand
        "-12.50, -12.50",
        "-7, -7",
        "0, 0",
        "a=b, a=b",
        "2310-04, 2310-04",
        "40 mm; 100 mm, 40 mm; 100 mm",
        "name@example.invalid, name@example.invalid"
    })
    void negativeNumbersAndPlainTextStay(String text, String written) {
        assertEquals(written, FormulaGuard.harmless(text));
    }

    @ParameterizedTest
    @CsvSource({
        "JPY, 72000, 6391, 78391",
        "KWD, 72.005, 0.001, 72.006",
        "EUR, 999999999999999.99, 0.01, 1000000000000000.00"
    })
    void amountsHaveTheirCurrencysDecimals(String currency, String price, String tax, String total) throws IOException {
        Costed costed = CostingFixtures.oneRental(currency, price, "sales tax", tax, "Fell Optical");
        CSVRecord row = read(csv(costed.lines(Map.of()))).get(0);
        assertEquals(price, row.get("hire"));
        assertEquals(tax, row.get("add-on: sales tax"));
        assertEquals(total, row.get("total"));
        assertEquals(costed.answer().payable().amount(), row.get("total"));
        assertEquals(currency, row.get("currency"));
    }

    @Test
    void everyRowAddsAcrossAndTheRowsAddUpToTheAnswer() throws IOException {
        Costed costed = CostingFixtures.mixed();
        CostingLines lines = costed.lines(Map.of());
        BigDecimal sum = BigDecimal.ZERO;
        for (CSVRecord row : read(csv(lines))) {
            BigDecimal across = lines.amountColumns().stream()
                    .map(column -> row.get(column.heading()))
                    .filter(cell -> !cell.isEmpty())
                    .map(BigDecimal::new)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertEquals(new BigDecimal(row.get("total")), across);
            sum = sum.add(across);
        }
        assertEquals(costed.answer().payable().major(), sum);
    }

    @Test
    void nothingPayableIsAHeaderAlone() throws IOException {
        String csv = csv(CostingFixtures.ownedOnly().lines(Map.of()));
        assertEquals(1, csv.lines().count());
        assertTrue(read(csv).isEmpty());
    }

    @Test
    void theCompanionSaysWhatTheFileHolds() throws Exception {
        CostingLines lines = CostingFixtures.mixed().lines(Map.of());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new LineExport(lines).controlJson(out);
        JsonNode control = JsonMapper.shared().readTree(out.toByteArray());
        byte[] csv = csv(lines).getBytes(StandardCharsets.UTF_8);
        assertEquals(read(csv(lines)).size(), control.get("rows").asInt());
        assertEquals("10048.66", control.get("payable").get("EUR").asString());
        assertEquals("4128.66", control.get("weighedNotPayable").get("EUR").asString());
        assertEquals("41", control.get("costing").asString());
        assertEquals(
                CostingFixtures.REFERENCE.answerSha256(),
                control.get("answerSha256").asString());
        assertEquals(
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(csv)),
                control.get("linesSha256").asString());
    }

    @Test
    void theSameLinesGiveTheSameBytes() throws IOException {
        assertArrayEquals(
                csv(CostingFixtures.mixed().lines(Map.of())).getBytes(StandardCharsets.UTF_8),
                csv(CostingFixtures.mixed().lines(Map.of())).getBytes(StandardCharsets.UTF_8));
    }

    private static String csv(CostingLines lines) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new LineExport(lines).csv(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static List<CSVRecord> read(String csv) throws IOException {
        try (var parser = READER.parse(new StringReader(csv))) {
            return parser.getRecords();
        }
    }
}
