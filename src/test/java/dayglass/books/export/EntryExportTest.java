package dayglass.books.export;

import static dayglass.books.BookHouse.MONDAY;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.books.BookHouse;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An export is read back by libraries that did not write it. */
class EntryExportTest {
    /** Source of the dangerous openings: OWASP, CSV Injection. */
    private static final List<String> SUPPLIERS = List.of(
            "=1+2",
            "+49 30",
            "-5 days",
            "@lookup",
            "\tTab",
            "plain, \"quoted\"",
            "a;=b",
            "-12.50",
            "<&> \u00e9 \ud83c\udfa5",
            "two\r\nlines",
            "two\nlines",
            "b\"bb");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private interface Writing {
        void to(EntryExport export, OutputStream out) throws IOException;
    }

    private static byte[] bytes(BookHouse house, Entries.Which which, Writing writing) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        return house.rooms.books().entries().reading(which, run -> {
            try {
                writing.to(new EntryExport(which, run), out);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
            return out.toByteArray();
        });
    }

    private static BookHouse filled(Path folder) {
        BookHouse house = new BookHouse(folder);
        for (String supplier : SUPPLIERS) {
            Entry entry = house.entry(Kind.ACTUAL, "0042", "-1234.50");
            house.post(entry.coded(new Entry.Coding("0042", "", supplier)));
        }
        return house;
    }

    @Test
    void theCsvIsReadBackWithEveryFieldAsItWas() throws Exception {
        try (BookHouse house = filled(folder)) {
            byte[] csv = bytes(house, Entries.Which.of(house.job), EntryExport::csv);
            List<CSVRecord> rows = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(new StringReader(new String(csv, StandardCharsets.UTF_8)))
                    .getRecords();
            assertEquals(SUPPLIERS.size(), rows.size());
            assertEquals(
                    List.of("'=1+2", "'+49 30", "'-5 days", "'@lookup"),
                    rows.subList(0, 4).stream().map(row -> row.get("supplier")).toList());
            assertEquals("-12.50", rows.get(7).get("supplier"));
            assertEquals(
                    SUPPLIERS.subList(8, SUPPLIERS.size()),
                    rows.subList(8, rows.size()).stream()
                            .map(row -> row.get("supplier"))
                            .toList(),
                    "RFC 4180, section 2, rules 6 and 7");
            assertEquals("0042", rows.get(0).get("cost code"));
            assertEquals("-1234.50", rows.get(0).get("net"));
            assertEquals(36, rows.get(0).size());
            JsonNode control =
                    JsonMapper.shared().readTree(bytes(house, Entries.Which.of(house.job), EntryExport::controlJson));
            assertEquals(
                    HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(csv)),
                    control.get("csvSha256").asString());
            assertEquals(SUPPLIERS.size(), control.get("rows").asInt());
        }
    }

    @Test
    void theWorkbookIsReadBackWithTypesAndTotals() throws Exception {
        try (BookHouse house = filled(folder);
                XSSFWorkbook book = new XSSFWorkbook(
                        new ByteArrayInputStream(bytes(house, Entries.Which.of(house.job), EntryExport::xlsx)))) {
            XSSFSheet sheet = book.getSheet("Entries");
            Row heading = sheet.getRow(0);
            assertEquals("entry", heading.getCell(0).getStringCellValue());
            for (int at = 0; at < SUPPLIERS.size(); at++) {
                Row row = sheet.getRow(at + 1);
                assertEquals(SUPPLIERS.get(at), row.getCell(9).getStringCellValue());
                assertEquals(CellType.STRING, row.getCell(9).getCellType());
                assertEquals(MONDAY, row.getCell(4).getLocalDateTimeCellValue().toLocalDate());
                assertEquals(-1234.5, row.getCell(15).getNumericCellValue());
                assertEquals("#,##0.00", row.getCell(15).getCellStyle().getDataFormatString());
                assertEquals("0042", row.getCell(7).getStringCellValue());
            }
            Row total = sheet.getRow(SUPPLIERS.size() + 1);
            assertEquals("Total", total.getCell(0).getStringCellValue());
            assertEquals(
                    new BigDecimal("-1234.50")
                            .multiply(BigDecimal.valueOf(SUPPLIERS.size()))
                            .doubleValue(),
                    total.getCell(23).getNumericCellValue());
            XSSFSheet control = book.getSheet("Control totals");
            assertEquals("rows", control.getRow(7).getCell(0).getStringCellValue());
            assertEquals(
                    String.valueOf(SUPPLIERS.size()),
                    control.getRow(7).getCell(1).getStringCellValue());
        }
    }

    @Test
    void aClosedPeriodGivesTheSameBytesWhateverComesLater() {
        try (BookHouse house = filled(folder)) {
            BookHouse.done(house.rooms.books().close().close(house.job, MONDAY.plusDays(6)));
            Entries.Which week = Entries.Which.between(house.job, Optional.of(MONDAY), Optional.of(MONDAY.plusDays(6)));
            byte[] csv = bytes(house, week, EntryExport::csv);
            byte[] xlsx = bytes(house, week, EntryExport::xlsx);
            byte[] json = bytes(house, week, EntryExport::json);
            house.post(house.entry(Kind.ACTUAL, "0042", "9.00").on(MONDAY.plusDays(8)));
            house.rooms.jobs().change(new dayglass.base.Stored<>(house.job, 1, BookHouse.job("Another name")));
            assertArrayEquals(csv, bytes(house, week, EntryExport::csv));
            assertArrayEquals(xlsx, bytes(house, week, EntryExport::xlsx));
            assertArrayEquals(json, bytes(house, week, EntryExport::json));
            assertTrue(bytes(house, Entries.Which.of(house.job), EntryExport::csv).length > csv.length);
        }
    }
}
