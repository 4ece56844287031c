package dayglass.shelf.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.cost.DayUse;
import dayglass.cost.rental.RentalTerms;
import dayglass.sheet.CsvText;
import dayglass.support.Served;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rate cards as tables on a real database; every name and price is invented. */
class CardTablesTest {
    private static final Currency EUR = Currency.of("EUR");
    private static final LocalDate FROM = LocalDate.of(2027, 1, 1);
    /** Names that a table has trouble with. */
    private static final List<String> NAMES = List.of(
            "damage cover", "=SUM(A1)", "cover; all", " leading", "trailing ", "a, b", "say \"so\"", "vat/2~x", "12");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Rooms rooms;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Supplier.Id supplier;

    @BeforeEach
    void open() {
        rooms = Served.roomsAt(folder, "2026-11-25");
        supplier = done(rooms.sources().suppliers().add(new Supplier("Pier House", true)))
                .id();
        bringIn(
                ShelfImport.What.LENS_MODELS,
                "maker,name,kind,focal length mm\nMarrow,\"=Heron, 40\",spherical prime,40\n");
        bringIn(ShelfImport.What.UNITS, "tag\nH-1\n\" H;2\"\n");
    }

    @AfterEach
    void close() {
        rooms.close();
    }

    private void bringIn(ShelfImport.What what, String text) {
        ImportReport report =
                done(rooms.shelfImport().bringIn(new ShelfImport.Table(what, csv(text), Optional.empty(), false)));
        assertEquals(List.of(), report.faulty());
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem);
        });
    }

    private static CsvText csv(String text) {
        return done(CsvText.read(text.getBytes(StandardCharsets.UTF_8)));
    }

    private CardTables.Heading heading(String name) {
        return new CardTables.Heading(supplier, name, EUR, FROM);
    }

    private RateCard made(String name, String text) {
        return done(rooms.cardTables().bringIn(heading(name), csv(text))).facts();
    }

    private static Money euros(String amount) {
        return Money.of("EUR", amount);
    }

    @Test
    void everyTermOfARowBecomesTheRates() {
        RateCard card = made(
                "Singles",
                "ID;Maker;Model;Serves;Copies;Day;Week;Four weeks;Weekend;14 days;4 days from thursday;Other blocks;"
                        + "Extra day after;Extra day;Factor prep;Factor travel;Long hire;Minimum;Trip;Add-on 1;"
                        + "Add-on 1 percent;Add-on 1 of;Add-on 1 is;Add on 2;Add on 2 percent;Add on 2 of;Available\n"
                        + "heron;Marrow;\"=Heron, 40\";\"40 mm: 2; 65 mm\";3;90.00;270;810.00;90.00;500.00;120.00;"
                        + "10 days: 400.00;7;38.57;0;0.5;\"14 days: 10 %; from 28 days: 15\";50.00;25.00;damage cover;"
                        + "12 %;hire;waiver;vat;20;\"hire; trip; damage cover\";2027-03-01 to 2027-06-30\n");
        assertEquals(
                List.of(new Rate(
                        "heron",
                        Map.of("40 mm", 2, "65 mm", 1),
                        3,
                        new RentalTerms(
                                List.of(
                                        block(1, "90.00"),
                                        block(7, "270.00"),
                                        block(28, "810.00"),
                                        new RentalTerms.Block(3, euros("90.00"), Optional.of(DayOfWeek.FRIDAY)),
                                        block(14, "500.00"),
                                        new RentalTerms.Block(4, euros("120.00"), Optional.of(DayOfWeek.THURSDAY)),
                                        block(10, "400.00")),
                                Optional.of(new RentalTerms.ExtraDay(7, euros("38.57"))),
                                Map.of(DayUse.PREP, BigDecimal.ZERO, DayUse.TRAVEL, new BigDecimal("0.5")),
                                List.of(
                                        new RentalTerms.LongHire(14, Percent.of("10")),
                                        new RentalTerms.LongHire(28, Percent.of("15"))),
                                euros("50.00"),
                                euros("25.00"),
                                List.of(
                                        new RentalTerms.AddOn("damage cover", Percent.of("12"), Set.of("hire")),
                                        new RentalTerms.AddOn(
                                                "vat", Percent.of("20"), Set.of("hire", "trip", "damage cover")))),
                        List.of(DateRange.inclusive(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 6, 30))),
                        Optional.of(new Lets(Lets.Kind.MODEL, 1)),
                        Map.of("damage cover", Mark.WAIVER))),
                card.rates());
    }

    private static RentalTerms.Block block(int days, String price) {
        return new RentalTerms.Block(days, euros(price), Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "id,serves,day                 | a,40 mm,`90,00`            | 2:3 must be a number",
                "id,serves,week                | a,40 mm,free               | 2:3 must be a number",
                "id,serves,day                 | a,,90                      | 2:2 fill this in",
                "id,serves,trip                | a,40 mm,9                  | 2:0 fill this in",
                "id,unit,day                   | ,H-1,90                    | 2:1 fill this in",
                "id,unit,day                   | a,H-9,90                   | 2:2 there is no unit with the tag H-9",
                "id,set,day                    | a,Herons,90                | 2:2 there is no set Herons",
                "id,model,day                  | a,Heron,90                 | 2:2 a model is named by its maker ",
                "id,maker,model,day            | a,Marrow,Crane,90          | 2:3 there is no model Marrow Crane",
                "id,set,unit,day               | a,Herons,H-1,90            | 2:2 a rate is for one thing",
                "id,unit,day,copies            | a,H-1,90,0                 | 2:4 must be a whole number",
                "id,unit,day,500 days          | a,H-1,90,9                 | 2:4 must be a whole number",
                "id,unit,day,other blocks      | a,H-1,90,two days: 9       | 2:4 \"two days: 9\" must be such as",
                "id,unit,day,other blocks      | a,H-1,90,2 days from May: 9 | 2:4 \"2 days from May: 9\" must be",
                "id,unit,day,long hire         | a,H-1,90,10 %              | 2:4 \"10 %\" must be such as",
                "id,unit,day,long hire         | a,H-1,90,14 days: 101      | 2:4 must",
                "id,unit,day,extra day         | a,H-1,90,9                 | 2:4 fill this in",
                "id,unit,day,add-on 1 is       | a,H-1,90,tax               | 2:4 says what an add-on is that has no name",
                "id,unit,day,add-on 1,add-on 1 percent,add-on 1 of,add-on 1 is | a,H-1,90,vat,9,hire,levy | 2:7 must be one of charge, waiver, tax",
                "id,unit,day,add-on 2,add-on 2 percent,add-on 2 of | a,H-1,90,vat,9,cover | 2:6 ",
                "id,unit,day,colour            | a,H-1,90,red               | 1:4 is no column of a rate",
                "id,unit,day,3 days from may   | a,H-1,90,9                 | 1:4 is no column of a rate",
                "id,unit,day,1 day             | a,H-1,90,9                 | 1:4 stands in an earlier column",
                "id,unit,day                   | a,H-1                      | 2:0 has 2 fields where the heading has 3",
            })
    void aFaultIsToldAtItsLineAndColumn(String heading, String row, String fault) {
        CardReport report = done(rooms.cardTables()
                .preview(
                        heading("Singles"),
                        csv(heading.strip() + "\n" + row.strip().replace('`', '"') + "\n")));
        List<String> found = report.faulty().stream()
                .map(bad -> bad.line() + ":" + bad.column() + " " + bad.message())
                .toList();
        assertEquals(1, found.size(), found.toString());
        assertTrue(found.get(0).startsWith(fault.strip()), found.toString());
    }

    @Test
    void aFaultyTableMakesNoCardAndAPreviewKeepsNone() {
        String text = "id,unit,day\na,H-1,90\na,H-1,95\n";
        Problem refused = rooms.cardTables()
                .bringIn(heading("Singles"), csv(text))
                .fold(
                        card -> {
                            throw new AssertionError(card);
                        },
                        problem -> problem);
        assertEquals(
                List.of("line 3, column 1 (id): stands in line 2 already: rename one"),
                refused.faults().stream().map(fault -> fault.message()).toList());
        CardReport good = done(rooms.cardTables().preview(heading("Singles"), csv("id,unit,day\na,H-1,90\n,,\n")));
        assertTrue(good.isGood());
        assertEquals(
                List.of(2L), good.rates().stream().map(CardReport.Line::line).toList());
        assertTrue(done(rooms.cardTables().preview(heading("Singles"), csv("id,unit,day\n")))
                .faulty()
                .get(0)
                .message()
                .startsWith("is all there is"));
        assertEquals(List.of(), rooms.sources().rateCards().list(Optional.empty(), 9));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void whatComesOutMakesTheSameRates(int seed) throws IOException {
        Random random = new Random(seed);
        List<Rate> rates = new ArrayList<>();
        for (int number = 0; number < 80; number++) {
            rates.add(rate(random, NAMES.get(number % NAMES.size()) + number));
        }
        RateCard card = new RateCard(supplier, "Out", EUR, FROM, rates);
        done(rooms.sources().rateCards().add(card));
        String out = new String(rooms.cardTables().csv(card), StandardCharsets.UTF_8);
        assertEquals(rates, made("In again", out).rates());
        List<CSVRecord> read = CSVFormat.RFC4180.parse(new StringReader(out)).getRecords();
        assertEquals(81, read.size());
        assertEquals("id", read.get(0).get(0));
        assertTrue(read.stream().allMatch(row -> row.size() == read.get(0).size()));
    }

    private static Rate rate(Random random, String code) {
        List<RentalTerms.Block> blocks = new ArrayList<>();
        for (int count = 1 + random.nextInt(5); count > 0; count--) {
            blocks.add(new RentalTerms.Block(
                    List.of(1, 3, 7, 28, 1 + random.nextInt(400)).get(random.nextInt(5)),
                    money(random),
                    random.nextInt(3) == 0 ? Optional.of(DayOfWeek.of(1 + random.nextInt(7))) : Optional.empty()));
        }
        List<RentalTerms.AddOn> addOns = addOns(random);
        Map<String, Mark> marks = new HashMap<>();
        addOns.stream()
                .filter(each -> random.nextBoolean())
                .forEach(each -> marks.put(each.name(), List.of(Mark.values()).get(random.nextInt(3))));
        Optional<Lets> lets = random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(
                        random.nextBoolean()
                                ? new Lets(Lets.Kind.MODEL, 1)
                                : new Lets(Lets.Kind.UNIT, 1 + random.nextInt(2)));
        return new Rate(
                code,
                lets.isPresent() && random.nextBoolean()
                        ? Map.of()
                        : Map.of(NAMES.get(random.nextInt(9)).strip(), 2),
                1 + random.nextInt(20),
                new RentalTerms(
                        blocks,
                        random.nextBoolean()
                                ? Optional.of(new RentalTerms.ExtraDay(random.nextInt(9), money(random)))
                                : Optional.empty(),
                        factors(random),
                        random.nextBoolean()
                                ? List.of()
                                : List.of(
                                        new RentalTerms.LongHire(28, Percent.of("12.5")),
                                        new RentalTerms.LongHire(1, Percent.of("0.125"))),
                        money(random),
                        money(random),
                        addOns),
                random.nextBoolean()
                        ? List.of()
                        : List.of(
                                DateRange.inclusive(FROM, FROM),
                                DateRange.inclusive(FROM.plusDays(3), FROM.plusDays(9))),
                lets,
                marks);
    }

    private static Money money(Random random) {
        return euros(random.nextInt(3) == 0 ? "0.00" : random.nextInt(9_000) + ".5" + random.nextInt(10));
    }

    private static Map<DayUse, BigDecimal> factors(Random random) {
        Map<DayUse, BigDecimal> factors = new EnumMap<>(DayUse.class);
        if (random.nextBoolean()) {
            factors.put(DayUse.PREP, BigDecimal.ZERO);
            factors.put(DayUse.WRAP, new BigDecimal("0.75"));
        }
        return factors;
    }

    private static List<RentalTerms.AddOn> addOns(Random random) {
        List<String> names = new ArrayList<>(NAMES);
        Collections.shuffle(names, random);
        List<RentalTerms.AddOn> addOns = new ArrayList<>();
        List<String> bases = new ArrayList<>(List.of("hire", "trip"));
        for (String name : names.subList(0, random.nextInt(4))) {
            Set<String> on = new HashSet<>();
            on.add(bases.get(random.nextInt(bases.size())));
            on.add(bases.get(random.nextInt(bases.size())));
            addOns.add(new RentalTerms.AddOn(name, Percent.of("8.875"), on));
            bases.add(name);
        }
        return addOns;
    }
}
