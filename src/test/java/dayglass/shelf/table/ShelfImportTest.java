package dayglass.shelf.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.catalogue.LensModel;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.sheet.CsvText;
import dayglass.shelf.LensModelJson;
import dayglass.shelf.table.ShelfImport.What;
import dayglass.support.Served;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables on a real database: what a preview says, what an import stores, and what an export brings back. */
class ShelfImportTest {
    private static final Currency EUR = Currency.of("EUR");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Rooms rooms;

    @BeforeEach
    void open() {
        rooms = Served.roomsAt(folder, "2026-11-25");
    }

    @AfterEach
    void close() {
        rooms.close();
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem);
        });
    }

    private static ShelfImport.Table table(What what, String text, boolean changes) {
        return table(what, text.getBytes(StandardCharsets.UTF_8), changes);
    }

    private static ShelfImport.Table table(What what, byte[] text, boolean changes) {
        return new ShelfImport.Table(what, done(CsvText.read(text)), Optional.empty(), changes);
    }

    private ImportReport preview(String units) {
        return done(rooms.shelfImport().preview(table(What.UNITS, units, false)));
    }

    private ImportReport bringIn(String units, boolean changes) {
        return done(rooms.shelfImport().bringIn(table(What.UNITS, units, changes)));
    }

    private Optional<Unit> unit(String tag) {
        return rooms.shelf().units().tagged(tag).map(stored -> stored.facts());
    }

    private LensModel.Id heron() {
        String json = "{\"maker\": \"Marrow & Pike\", \"name\": \"=Heron, \\\"40\\\"\", \"kind\": \"anamorphic zoom\","
                + " \"minFocal\": \"40\", \"maxFocal\": \"80.5\", \"tStop\": \"2.1\", \"squeeze\": \"1.8\","
                + " \"imageCircle\": \"46.3\", \"mounts\": [\"PL\", \"EF; locking\"], \"closeFocusM\": \"0.35\","
                + " \"frontMm\": \"95\", \"weightG\": 1250, \"lengthMm\": \"118\", \"irisBlades\": 11,"
                + " \"focusScale\": \"metres\", \"closeDownStops\": \"0.5\", \"look\": {\"flare\": 2,"
                + " \"outOfFocusShape\": 5, \"note\": \"-soft; warm\", \"testedOn\": \"2026-10-02\"},"
                + " \"tags\": [\"=warm; soft\"], \"cautions\": [\"+loose\", \"@heavy\"]}";
        LensModel model = LensModelJson.reader()
                .read(json.getBytes(StandardCharsets.UTF_8))
                .fold(read -> read, faults -> {
                    throw new AssertionError(faults);
                });
        return done(rooms.shelf().models().add(model)).id();
    }

    private static Unit full(String tag, LensModel.Id model, Holding holding) {
        return new Unit(
                tag,
                Optional.of(model),
                Optional.of("-0" + tag),
                holding,
                Optional.of(new Unit.Value(Money.of("JPY", "940000"), LocalDate.parse("2026-01-15"))),
                new Unit.Papers(Optional.of("Norway"), Optional.of("PL"), Optional.of("'=B2")),
                List.of("front cap; metal", "=rear cap", "case"),
                new Unit.Use(
                        Map.of("40 mm", 1, "A: wide", 3),
                        List.of(
                                DateRange.inclusive(LocalDate.parse("2027-04-12"), LocalDate.parse("2027-04-30")),
                                DateRange.inclusive(LocalDate.parse("2027-05-02"), LocalDate.parse("2027-05-02")))),
                Optional.of(new Unit.Departure(
                        LocalDate.parse("2028-01-01"),
                        "given back",
                        Optional.of(Money.of(EUR, new java.math.BigDecimal("1.50"))))));
    }

    private void fill() {
        LensModel.Id model = heron();
        LocalDate day = LocalDate.parse("2026-01-01");
        Money money = Money.of("EUR", "8200.00");
        for (Unit unit : List.of(
                full("a", model, new Holding.Owned(Optional.of(day), Optional.of(money), "O-1", "R-2")),
                full(
                        "b",
                        model,
                        new Holding.RentedIn(
                                "Ostler", "A-7", day, day.plusDays(9), day.plusDays(10), Optional.of(money))),
                full("c", model, new Holding.Consigned("Fell", "", day, Optional.of(day.plusDays(400)))),
                Unit.serving(" d", Unit.Use.NONE),
                Unit.serving("'=e", new Unit.Use(Map.of("x", 1), List.of())))) {
            done(rooms.shelf().units().add(unit));
        }
    }

    @Test
    void whatWasExportedChangesNothingWhenItComesBack() {
        fill();
        for (What what : What.values()) {
            ImportReport report = done(
                    rooms.shelfImport().bringIn(table(what, rooms.shelfImport().csv(what), true)));
            assertEquals(List.of(), report.faulty());
            assertEquals(List.of(), report.changed());
            assertEquals(List.of(), report.added());
            assertEquals(what == What.UNITS ? 5 : 1, report.unchanged());
        }
    }

    @Test
    void whatWasExportedFillsAnEmptyShelfWithTheSame() {
        fill();
        byte[] models = rooms.shelfImport().csv(What.LENS_MODELS);
        byte[] units = rooms.shelfImport().csv(What.UNITS);
        List<Unit> before = units();
        rooms.close();
        rooms = Served.roomsAt(folder.resolve("other"), "2026-11-25");
        done(rooms.shelfImport().bringIn(table(What.LENS_MODELS, models, false)));
        assertEquals(
                5,
                done(rooms.shelfImport().bringIn(table(What.UNITS, units, false)))
                        .done()
                        .added());
        assertEquals(before, units());
    }

    private List<Unit> units() {
        return rooms.shelf().units().list(Optional.empty(), 100).stream()
                .map(stored -> stored.facts())
                .toList();
    }

    @Test
    void aWorkbookHoldsTheSameWithTypedCells() throws IOException {
        fill();
        byte[] book = rooms.shelfImport().xlsx(What.UNITS);
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(book))) {
            Row heading = read.getSheetAt(0).getRow(0);
            Row row = read.getSheetAt(0).getRow(1);
            for (int at = 0; at < heading.getLastCellNum(); at++) {
                switch (heading.getCell(at).getStringCellValue()) {
                    case "home shelf" -> assertEquals("'=B2", row.getCell(at).getStringCellValue());
                    case "price" -> assertEquals(8200.0, row.getCell(at).getNumericCellValue());
                    case "bought on" -> assertTrue(DateUtil.isCellDateFormatted(row.getCell(at)));
                    case "serial" ->
                        assertEquals(CellType.STRING, row.getCell(at).getCellType());
                    default -> {}
                }
            }
            assertEquals(rooms.shelfImport().fields(What.UNITS).size(), heading.getLastCellNum());
            assertEquals(5, read.getSheetAt(0).getLastRowNum());
        }
    }

    @Test
    void aPreviewStoresNothingAndSaysWhatAnImportWouldDo() {
        String text = "Asset tag;Location;Slots\r\nq-1;B2;40 mm\r\nq-2;;40 mm: 2\r\n";
        ImportReport report = preview(text);
        assertEquals(';', report.separator());
        assertEquals(
                List.of(Optional.of("tag"), Optional.of("home shelf"), Optional.of("serves")),
                report.columns().stream().map(ImportReport.Column::field).toList());
        assertEquals(
                List.of("q-1", "q-2"),
                report.added().stream().map(ImportReport.Added::name).toList());
        assertEquals(new ImportReport.Done(0, 0), report.done());
        assertEquals(List.of(), units());
        assertEquals(2, bringIn(text, false).done().added());
        assertEquals(Map.of("40 mm", 2), unit("q-2").orElseThrow().use().covers());
        assertEquals(2, preview(text).unchanged());
    }

    @Test
    void badRowsAreToldWithLineColumnAndReasonAndTheGoodOnesComeIn() {
        String text = """
                tag,value,value currency,value set on,bought on
                q-1,100.00,EUR,2026-01-01,2026-01-02
                q-2,100.001,EUR,2026-01-01,
                q-3,"1,000.00",EUR,2026-01-01,
                q-4,1,EUR,1.1.2026,2026-02-30
                ,,,,
                q-6,1,EUR
                q-1,,,,
                """;
        ImportReport report = bringIn(text, false);
        assertEquals(
                List.of(
                        "3 2 value: has more than 2 decimals",
                        "4 2 value: must be a decimal number",
                        "5 5 bought on: 2026-02-30 is no day of the calendar",
                        "5 4 value set on: must be a date",
                        "6 1 tag: is missing",
                        "7 0 : has 3 fields where the heading has 5",
                        "8 1 tag: stands in line 2 already"),
                report.faulty().stream()
                        .map(bad -> bad.line() + " " + bad.column() + " " + bad.heading() + ": " + bad.message())
                        .map(bad ->
                                bad.replaceFirst("(decimals|number|calendar|date|missing|has 5|already)\\b.*", "$1"))
                        .toList());
        assertEquals(1, report.done().added());
        assertEquals(List.of("q-1"), units().stream().map(Unit::tag).toList());
    }

    @Test
    void aRowThatDiffersIsShownAndChangesOnlyWhenToldAndOnlyItsColumns() {
        done(rooms.shelf().units().add(full("a", heron(), Holding.Owned.UNRECORDED)));
        Unit before = unit("a").orElseThrow();
        String text = "tag,home shelf,origin\na,C1,\n";
        ImportReport shown = bringIn(text, false);
        assertEquals(
                List.of(new ImportReport.Changed(
                        2,
                        "a",
                        List.of(
                                new ImportReport.Difference("home shelf", "'=B2", "C1"),
                                new ImportReport.Difference("origin", "Norway", "")))),
                shown.changed());
        assertEquals(before, unit("a").orElseThrow());
        assertEquals(1, bringIn(text, true).done().changed());
        Unit after = unit("a").orElseThrow();
        assertEquals(new Unit.Papers(Optional.empty(), Optional.of("PL"), Optional.of("C1")), after.papers());
        assertEquals(before.accessories(), after.accessories());
        assertEquals(1, bringIn(text, true).unchanged());
    }

    @Test
    void aModelIsNamedByMakerAndName() {
        done(rooms.shelfImport()
                .bringIn(table(What.LENS_MODELS, "maker,name,kind\nPike,Heron,spherical prime\n", false)));
        ImportReport report =
                bringIn("tag,maker,model,serial\na,Pike,Heron,1\nb,Pike,Egret,1\nc,Pike,Heron,1\nd,,Heron,\n", false);
        assertEquals(Optional.of(new LensModel.Id(1)), unit("a").orElseThrow().model());
        assertEquals(
                List.of("3 model", "4 ", "5 maker"),
                report.faulty().stream()
                        .map(bad -> bad.line() + " " + bad.heading())
                        .toList());
        assertTrue(report.faulty().get(0).message().contains("no model Pike Egret"));
        assertTrue(report.faulty().get(1).message().contains("already has the serial 1"));
    }

    @Test
    void columnsCanBeSaidAndTheKeyMustBeAmongThem() {
        CsvText text = done(CsvText.read("Nummer,Ort\nq-1,B2\n".getBytes(StandardCharsets.UTF_8)));
        String refusal = rooms.shelfImport()
                .preview(new ShelfImport.Table(What.UNITS, text, Optional.empty(), false))
                .fold(report -> "", problem -> problem.faults().get(0).pointer());
        assertEquals("/columns", refusal);
        done(rooms.shelfImport()
                .bringIn(new ShelfImport.Table(
                        What.UNITS, text, Optional.of(Map.of(1, "tag", 2, "home shelf")), false)));
        assertEquals(Optional.of("B2"), unit("q-1").orElseThrow().papers().homeShelf());
    }
}
