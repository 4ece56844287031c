package dayglass.books.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.books.AmountColumn;
import dayglass.books.CostingFixtures;
import dayglass.books.CostingFixtures.Costed;
import dayglass.books.CostingLines;
import dayglass.books.PayableLine;
import dayglass.sheet.SheetText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks are read back by Apache POI, which did not write them. */
class XlsxExportTest {
    @Test
    void datesAndAmountsAreTyped() throws IOException {
        try (XSSFWorkbook book = read(CostingFixtures.mixed().lines(Map.of()))) {
            Sheet sheet = book.getSheet("Payable lines");
            Row pair = sheet.getRow(3);
            Cell date = cell(pair, "date");
            assertTrue(DateUtil.isCellDateFormatted(date));
            assertEquals(
                    LocalDate.of(2027, 4, 10), date.getLocalDateTimeCellValue().toLocalDate());
            assertEquals(CellType.NUMERIC, cell(pair, "discount").getCellType());
            assertEquals("-20.57", ((XSSFCell) cell(pair, "discount")).getRawValue());
            assertEquals("#,##0.00", cell(pair, "discount").getCellStyle().getDataFormatString());
            assertEquals("Tarn & Daughters", cell(pair, "supplier").getStringCellValue());
        }
    }

    @Test
    void theTotalsRowAgreesWithTheLinesTheCsvAndTheAnswer() throws IOException {
        Costed costed = CostingFixtures.mixed();
        CostingLines lines = costed.lines(Map.of());
        try (XSSFWorkbook book = read(lines)) {
            Sheet sheet = book.getSheet("Payable lines");
            Row totals = sheet.getRow(4);
            assertEquals("Total", totals.getCell(0).getStringCellValue());
            for (AmountColumn column : lines.amountColumns()) {
                assertEquals(raw(totals, column.heading()), sum(sheet, column.heading(), 1, 3), column.heading());
            }
            assertEquals(raw(totals, "net"), sum(sheet, "net", 1, 3));
            assertEquals(raw(totals, "total"), sum(sheet, "total", 1, 3));
            assertEquals(costed.answer().payable().major(), raw(totals, "total"));
            assertEquals(
                    lines.payable().stream()
                            .map(PayableLine::total)
                            .map(money -> money.minor())
                            .reduce(java.math.BigInteger.ZERO, java.math.BigInteger::add),
                    raw(totals, "total").unscaledValue());
        }
    }

    @Test
    void theWeighedPlanHasItsOwnSheetAndSaysWhatItIs() throws IOException {
        Costed costed = CostingFixtures.mixed();
        try (XSSFWorkbook book = read(costed.lines(Map.of()))) {
            assertEquals(
                    List.of("Payable lines", "Weighed plan", "Control totals"),
                    List.of(book.getSheetName(0), book.getSheetName(1), book.getSheetName(2)));
            Sheet sheet = book.getSheet("Weighed plan");
            assertTrue(sheet.getRow(0).getCell(0).getStringCellValue().contains("not what is paid"));
            int cost = column(sheet.getRow(2), "weighed cost (not payable)");
            assertEquals(
                    costed.answer().total().major(),
                    new BigDecimal(((XSSFCell) sheet.getRow(7).getCell(cost)).getRawValue()));
        }
    }

    @Test
    void controlTotalsSayRowsSumsCostingAndHashes() throws IOException {
        try (XSSFWorkbook book = read(CostingFixtures.mixed().lines(Map.of()))) {
            Sheet facts = book.getSheet("Control totals");
            assertEquals(3, fact(facts, "rows", 1).getNumericCellValue());
            assertEquals("10048.66", fact(facts, "payable", 1).getStringCellValue());
            assertEquals("EUR", fact(facts, "payable", 2).getStringCellValue());
            assertEquals("41", fact(facts, "costing", 1).getStringCellValue());
            assertEquals(
                    CostingFixtures.REFERENCE.requestSha256(),
                    fact(facts, "requestSha256", 1).getStringCellValue());
            assertTrue(fact(facts, "filter", 1).getStringCellValue().contains("every payable line"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "@SUM(1)",
                "-1+1",
                "_x003D_1+1",
                "_x_",
                "<b>&\"'",
                "\uD83C\uDFA5 Grünmoos 光学",
                "  spaces  ",
            })
    void textIsTextAndShownAsItIs(String supplier) throws IOException {
        CostingLines lines = CostingFixtures.oneRental("EUR", "10.00", supplier, "1.00", supplier)
                .lines(Map.of());
        try (XSSFWorkbook book = read(lines)) {
            Row row = book.getSheetAt(0).getRow(1);
            Cell cell = cell(row, "supplier");
            assertEquals(CellType.STRING, cell.getCellType());
            assertEquals(supplier, cell.getStringCellValue());
            assertEquals("1.00", ((XSSFCell) cell(row, "add-on: " + supplier)).getRawValue());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "JPY, 72000, '#,##0'",
        "KWD, 72.005, '#,##0.000'",
        "CLF, 1.2345, '#,##0.0000'",
        "EUR, 9999999999999.99, '#,##0.00'"
    })
    void amountsAreExactInTheirCurrencysDecimals(String currency, String price, String format) throws IOException {
        CostingLines lines = CostingFixtures.oneRental(currency, price, "", "", "Fell Optical")
                .lines(Map.of());
        try (XSSFWorkbook book = read(lines)) {
            Cell hire = cell(book.getSheetAt(0).getRow(1), "hire");
            assertEquals(price, ((XSSFCell) hire).getRawValue());
            assertEquals(format, hire.getCellStyle().getDataFormatString());
        }
    }

    /** A spreadsheet keeps fifteen digits of a number (common practice: a double's), so more stand as text. */
    @Test
    void anAmountOfMoreDigitsThanASpreadsheetKeepsIsText() throws IOException {
        CostingLines lines = CostingFixtures.oneRental("EUR", "999999999999999.99", "", "", "Fell Optical")
                .lines(Map.of());
        try (XSSFWorkbook book = read(lines)) {
            Cell hire = cell(book.getSheetAt(0).getRow(1), "hire");
            assertEquals(CellType.STRING, hire.getCellType());
            assertEquals("999999999999999.99", hire.getStringCellValue());
        }
    }

    @Test
    void datesAndAmountsFitTheirColumns() throws IOException {
        CostingLines lines = CostingFixtures.oneRental("EUR", "999999999999.99", "", "", "Fell Optical")
                .lines(Map.of());
        try (XSSFWorkbook book = read(lines)) {
            Sheet sheet = book.getSheetAt(0);
            Row headings = sheet.getRow(0);
            // In 256ths of a character, as Apache POI tells it.
            assertTrue(sheet.getColumnWidth(column(headings, "date")) >= 256 * "2027-04-05".length());
            assertTrue(sheet.getColumnWidth(column(headings, "hire")) >= 256 * "999,999,999,999.99".length());
        }
    }

    @Test
    void nothingPayableStillHasATotal() throws IOException {
        try (XSSFWorkbook book = read(CostingFixtures.ownedOnly().lines(Map.of()))) {
            assertEquals(new BigDecimal("0.00"), raw(book.getSheetAt(0).getRow(1), "total"));
        }
    }

    @Test
    void textTooLongForACellIsCutAndSaysSo() {
        String shown = SheetText.shown("\uD83C\uDFA5".repeat(20_000));
        assertTrue(shown.length() <= SheetText.LONGEST);
        assertTrue(shown.endsWith("(cut; the CSV holds all of it)"));
        assertEquals("x".repeat(SheetText.LONGEST), SheetText.shown("x".repeat(SheetText.LONGEST)));
    }

    @Test
    void theSameLinesGiveTheSameBytesInAnyPlaceAtAnyTime() throws Exception {
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        byte[] here = bytes(CostingFixtures.mixed().lines(Map.of()));
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Thread.sleep(20); // the writer's own time stamp has milliseconds
            assertArrayEquals(here, bytes(CostingFixtures.mixed().lines(Map.of())));
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }

    @Test
    void theFileBearsTheDateOfItsCosting() throws IOException {
        try (XSSFWorkbook book = read(CostingFixtures.mixed().lines(Map.of()))) {
            assertEquals(
                    CostingFixtures.REFERENCE.createdAt(),
                    book.getProperties().getCoreProperties().getCreated().toInstant());
        }
    }

    private static byte[] bytes(CostingLines lines) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new LineExport(lines).xlsx(out);
        return out.toByteArray();
    }

    private static XSSFWorkbook read(CostingLines lines) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes(lines)));
    }

    private static Cell fact(Sheet sheet, String name, int column) {
        for (Row row : sheet) {
            if (row.getCell(0).getStringCellValue().equals(name)) {
                return row.getCell(column);
            }
        }
        throw new AssertionError("no fact " + name);
    }

    private static Cell cell(Row row, String heading) {
        return row.getCell(column(row.getSheet().getRow(0), heading));
    }

    private static int column(Row headings, String heading) {
        for (Cell cell : headings) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("no column " + heading);
    }

    private static BigDecimal raw(Row row, String heading) {
        return new BigDecimal(((XSSFCell) cell(row, heading)).getRawValue());
    }

    private static BigDecimal sum(Sheet sheet, String heading, int firstRow, int lastRow) {
        BigDecimal sum = raw(sheet.getRow(lastRow + 1), heading).multiply(BigDecimal.ZERO);
        for (int row = firstRow; row <= lastRow; row++) {
            XSSFCell cell = (XSSFCell) cell(sheet.getRow(row), heading);
            if (cell != null && cell.getRawValue() != null) {
                sum = sum.add(new BigDecimal(cell.getRawValue()));
            }
        }
        return sum;
    }
}
