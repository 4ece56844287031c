package dayglass.wire.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.cost.ownership.Depreciation;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictRequestReaderTest {
    private static final Path GOOD =
            Path.of("src/test/resources/dayglass/cost/verdict/anamorphic-set-for-commercials.json");

    /** Each row changes a part of the good request and tells every pointer at fault. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nothing                       | nothing                                     | ''",
                "\"currency\": \"EUR\"         | \"currency\": \"euro\"                      | /currency",
                "\"price\": \"8000.00\"        | \"price\": \"8000.001\"                     | /purchase/price",
                "\"termMonths\": 36            | \"termMonths\": 601                         | /purchase/termMonths",
                "\"termMonths\": 36            | \"termMonths\": 36, \"id\": \"x\"           | /purchase/id",
                "\"amount\": \"5000.00\"        | \"amount\": \"9020.00\"                    | ''",
                "\"amount\": \"5000.00\"        | \"amount\": \"9020.01\"                    | /loan/amount",
                "\"ratePercentPerYear\": \"7.5\" | \"ratePercentPerYear\": \"-1\"            | /loan/ratePercentPerYear",
                "\"everyDaysOut\": 60          | \"everyDaysOut\": 0                         | /running/service/everyDaysOut",
                "\"days\": 3, \"prepDays\": 1  | \"days\": 3, \"prepDays\": 4                | /jobs/0/prepDays",
                "\"perYear\": \"6\"            | \"perYear\": \"200\"                        | /jobs",
                "\"daysPerYear\": \"10\"      | \"daysPerYear\": \"337\"                     | /purchase/letting/daysPerYear",
                "\"daysPerYear\": \"10\"      | \"daysPerYear\": \"336\"                     | ''",
                "\"likely\": \"6\"             | \"likely\": \"1\"                           | /jobs/0/perYearSpread/likely",
                "\"high\": \"9\"               | \"high\": \"5\"                             | /jobs/0/perYearSpread/high",
                "\"shape\": \"pert\"           | \"shape\": \"bell\"                         | /jobs/0/perYearSpread/shape",
                "[\"8\", \"12\", \"12\", \"15\"] | []                                        | /jobs/1/daysSpread/values",
                "\"days\": 12, \"prepDays\": 1, \"daysPerWeek\": 5 | \"days\": 159, \"daysPerWeek\": 1 | /jobs/1/days",
                "\"draws\": 2000               | \"draws\": 100001                           | /uncertainty/draws",
                "\"seed\": 7                  | \"seed\": 7, \"lettingDaysPerYear\": {\"low\": \"0\", \"likely\": \"5\", \"high\": \"9\"} | ''",
                "\"slipDays\"                  | \"slipdays\"                                | /uncertainty/slipdays",
                "\"method\": \"published table\" | \"method\": \"guess\"                     | /depreciation/method",
                "A-1, 5-year, half-year        | A-99                                        | /depreciation/table",
                "\"date\": \"2026-02-03\"      | \"date\": \"2026-02-30\"                    | /history/0/date",
                "\"date\": \"2026-02-03\"      | \"date\": \"2026-02-03\", \"to\": \"2026-02-02\" | /history/0/to",
                "\"date\": \"2026-02-03\"      | \"date\": \"2026-02-03\", \"to\": \"2027-02-05\" | /history/0/to",
                "\"date\": \"2026-02-03\"      | \"date\": \"2026-02-03\", \"to\": \"2027-02-04\" | ''",
                "{\"days\": 1, \"price\": \"120.00\"}, {\"days\": 7, \"price\": \"360.00\"} | {\"days\": 1, \"price\": \"120.00\", \"startsOn\": \"MONDAY\"} | /rates",
                "\"rateChangePercentPerYear\": \"2\" | \"ownSales\": [{\"months\": 3, \"paid\": \"0\", \"soldFor\": \"1\"}] | /ownSales/0/paid",
            })
    void everyFaultIsTold(String part, String instead, String pointers) throws IOException {
        String text = Files.readString(GOOD).replaceFirst(java.util.regex.Pattern.quote(part), instead);
        Set<String> expected = pointers.isEmpty()
                ? Set.of()
                : Arrays.stream(pointers.split(" ", -1)).collect(Collectors.toSet());
        assertEquals(
                expected,
                VerdictRequestReader.read(text.getBytes(StandardCharsets.UTF_8))
                        .fold(
                                good -> Set.of(),
                                faults -> faults.stream().map(Fault::pointer).collect(Collectors.toSet())));
    }

    /** A spread of days let needs something that is let. */
    @Test
    void daysLetAreSpreadOnlyWhereSomethingIsLet() throws IOException {
        String text = Files.readString(GOOD)
                .replace(
                        "\"seed\": 7",
                        "\"seed\": 7, \"lettingDaysPerYear\": {\"low\": \"0\", \"likely\": \"5\", \"high\": \"9\"}");
        assertEquals(List.of(), faults(text));
        String letsNothing = text.replaceFirst(",\\s*\"letting\": \\{[^}]*\\}", "");
        assertNotEquals(text, letsNothing);
        List<Fault> faults = faults(letsNothing);
        assertEquals(
                List.of("/uncertainty/lettingDaysPerYear"),
                faults.stream().map(Fault::pointer).toList());
        assertTrue(faults.get(0).message().contains("nothing is let"), faults.toString());
    }

    private static List<Fault> faults(String text) {
        return VerdictRequestReader.read(text.getBytes(StandardCharsets.UTF_8))
                .fold(good -> List.of(), faults -> faults);
    }

    /**
     * IRS Publication 946, tables and A-14 (seen in reproductions; the mid-quarter tables derived again).
     */
    @ParameterizedTest
    @CsvSource({
        "'A-1, 5-year, half-year', 20.00 32.00 19.20 11.52 11.52 5.76",
        "'A-1, 7-year, half-year', 14.29 24.49 17.49 12.49 8.93 8.92 8.93 4.46",
        "'A-2, 5-year, mid-quarter, first quarter', 35.00 26.00 15.60 11.01 11.01 1.38",
        "'A-3, 5-year, mid-quarter, second quarter', 25.00 30.00 18.00 11.37 11.37 4.26",
        "'A-4, 5-year, mid-quarter, third quarter', 15.00 34.00 20.40 12.24 11.30 7.06",
        "'A-5, 5-year, mid-quarter, fourth quarter', 5.00 38.00 22.80 13.68 10.94 9.58",
        "'A-2, 7-year, mid-quarter, first quarter', 25.00 21.43 15.31 10.93 8.75 8.74 8.75 1.09",
        "'A-3, 7-year, mid-quarter, second quarter', 17.85 23.47 16.76 11.97 8.87 8.87 8.87 3.34",
        "'A-4, 7-year, mid-quarter, third quarter', 10.71 25.51 18.22 13.02 9.30 8.85 8.86 5.53",
        "'A-5, 7-year, mid-quarter, fourth quarter', 3.57 27.55 19.68 14.06 10.04 8.73 8.73 7.64",
        "'A-8, 5-year, straight line, half-year', 10 20 20 20 20 10",
        "'A-14, 5-year, 150 per cent, half-year', 15.00 25.50 17.85 16.66 16.66 8.33",
        "'A-14, 7-year, 150 per cent, half-year', 10.71 19.13 15.03 12.25 12.25 12.25 12.25 6.13",
    })
    void thePublishedTablesAreThere(String name, String percents) {
        List<BigDecimal> expected =
                Arrays.stream(percents.split(" ", -1)).map(BigDecimal::new).toList();
        assertEquals(expected, PublishedTables.KNOWN.byName().get(name));
    }

    /**
     * The 5-year table is that of double declining balance over to straight line, a half year at both ends; recomputed,
     * so that a slip of the pen in the resource shows.
     */
    @ParameterizedTest
    @CsvSource({
        "'A-1, 5-year, half-year', 5, 2",
        "'A-1, 7-year, half-year', 7, 2",
        "'A-14, 5-year, 150 per cent, half-year', 5, 1.5",
        "'A-14, 7-year, 150 per cent, half-year', 7, 1.5"
    })
    void theHalfYearTablesFollowFromTheirRule(String name, int years, double factor) {
        List<BigDecimal> table =
                Objects.requireNonNull(PublishedTables.KNOWN.byName().get(name), name);
        double left = 100;
        for (int year = 0; year <= years; year++) {
            double part = year == 0 ? 0.5 : 1;
            double declining = left * factor / years * part;
            double level = left / (years - Math.max(0, year - 0.5)) * part;
            double amount = year == years ? left : Math.max(declining, level);
            assertEquals(amount, table.get(year).doubleValue(), 0.011, "year " + (year + 1));
            left -= amount;
        }
    }

    /**
     * IRS Publication 946 in whole amounts: 1000 over 5 years, half-year convention, figured without the tables (from
     * memory); the mid-quarter example, its first two years: 4000 and 1000 over 7 years of the first and third quarter,
     * 5000 over 5 of the fourth (seen in a reproduction).
     */
    @ParameterizedTest
    @CsvSource({
        "1000, 'A-1, 5-year, half-year', 200 320 192 115 115 58",
        "4000, 'A-2, 7-year, mid-quarter, first quarter', 1000 857",
        "1000, 'A-4, 7-year, mid-quarter, third quarter', 107 255",
        "5000, 'A-5, 5-year, mid-quarter, fourth quarter', 250 1900"
    })
    void thePublishedExamplesFollowFromTheTables(String cost, String name, String expected) {
        List<String> amounts = Depreciation.byTable(
                        Money.of("JPY", cost),
                        Objects.requireNonNull(PublishedTables.KNOWN.byName().get(name), name))
                .stream()
                .map(Money::amount)
                .toList();
        List<String> wanted = List.of(expected.split(" ", -1));
        assertEquals(wanted, amounts.subList(0, wanted.size()));
    }

    @Test
    void everyTableAddsUpToAHundred() {
        PublishedTables.KNOWN
                .byName()
                .forEach((name, percents) -> assertEquals(
                        0,
                        percents.stream()
                                .reduce(BigDecimal.ZERO, BigDecimal::add)
                                .compareTo(BigDecimal.valueOf(100)),
                        name));
    }
}
