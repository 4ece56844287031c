package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.job.Job;
import dayglass.optics.Verdict;
import dayglass.planning.glass.SlotReport;
import dayglass.planning.ways.Bought;
import dayglass.planning.ways.Frontier;
import dayglass.planning.ways.OptionsSheet;
import dayglass.planning.ways.SheetRow;
import dayglass.planning.ways.Taken;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's job has one way of each kind that the trade knows, and its sheet says of each what is to be said. */
class DemoSheetTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private static Map<String, SheetRow> rows = Map.of();
    private static List<SheetRow> all = List.of();

    @BeforeAll
    static void workOut(@TempDir Path folder) {
        try (Rooms rooms = Rooms.open(folder.resolve("demo.db"), CLOCK)) {
            Job.Id job = DemoCommand.job(rooms).fold(id -> id, problem -> {
                throw new AssertionError(problem.toString());
            });
            OptionsSheet sheet = rooms.optionsSheets().start(job).fold(started -> started, problem -> {
                throw new AssertionError(problem.toString());
            });
            assertTrue(sheet.endsWithin(Duration.ofMinutes(2)));
            assertFalse(sheet.failed());
            all = sheet.rows();
            rows = all.stream().collect(Collectors.toMap(row -> row.described().name(), Function.identity()));
        }
    }

    private static SheetRow row(String name) {
        return Optional.ofNullable(rows.get(name)).orElseThrow();
    }

    private static Money pounds(String amount) {
        return Money.of("GBP", amount);
    }

    private static Optional<Integer> paysFrom(String name) {
        return row(name).payback().orElseThrow().shootDays();
    }

    private static Bought bought(String name) {
        return row(name).costs().bought().orElseThrow();
    }

    private static SlotReport slot(String way, String slot) {
        return row(way).picture().slots().stream()
                .filter(each -> each.slot().equals(slot))
                .findFirst()
                .orElseThrow();
    }

    private static boolean takes(String way, String option, Taken.How how) {
        return row(way).cost().orElseThrow().taken().stream()
                .anyMatch(taken -> taken.option().equals(option) && taken.how() == how);
    }

    @Test
    void thereAreElevenFromAFewCoinsToSixFigures() {
        assertEquals(11, all.size());
        all.forEach(row -> assertEquals("", row.problem(), row.described().name()));
        Money least = all.stream()
                .flatMap(row -> row.bought().stream())
                .min(Money::compareTo)
                .orElseThrow();
        assertEquals(pounds("4.80"), least);
        assertTrue(bought("Top set").cash().compareTo(pounds("100000.00")) > 0);
        assertTrue(Frontier.of(all).contains(row("Home-made streak filters").way()));
        assertTrue(Frontier.of(all).contains(row("Top set").way()));
    }

    @Test
    void filtersWidenNothingAndTheSheetSaysSo() {
        for (String name : List.of("Home-made streak filters", "Streak filters")) {
            assertTrue(
                    row(name).picture().remarks().contains("The filter imitates the look; it widens nothing."), name);
            assertTrue(row(name).picture().remarks().contains("Its squeeze is 1, the brief wants 2."), name);
            assertEquals(
                    Optional.of(Verdict.FITS_WITH_CARE), row(name).picture().worst());
        }
    }

    @Test
    void aDualFocusAdapterHasTwoBarrelsToPullAndIsTooLongForA50() {
        String reasons =
                String.join(" ", slot("Dual-focus adapter", "main unit 75 mm").reasons());
        assertTrue(reasons.contains("two barrels are pulled"), reasons);
        String refused =
                String.join(" ", slot("Dual-focus adapter", "main unit 50 mm").reasons());
        assertTrue(refused.contains("The taking lens is too short"), refused);
    }

    /** T2.1 three stops down, behind 0.2 stops of loss: about T6.4, and the light allows f/6.8. */
    @Test
    void aSingleFocusAdapterWorksWithOneFocalLengthAndWantsStoppingDown() {
        SlotReport fifty = slot("Single-focus adapter", "main unit 50 mm");
        assertEquals(Optional.of(Verdict.FITS_WITH_CARE), fifty.verdict());
        assertTrue(fifty.reasons().stream().anyMatch(why -> why.contains("stops to spare")), fifty.toString());
        String other =
                String.join(" ", slot("Single-focus adapter", "main unit 75 mm").reasons());
        assertTrue(other.contains("The taking lens is too long"), other);
    }

    @Test
    void theSmallFormatSetIsBoughtAsASetAndNotOneByOne() {
        assertTrue(takes("Small-format set", "fen-set-of-four", Taken.How.BOUGHT));
        assertFalse(takes("Small-format set", "fen-50", Taken.How.BOUGHT));
        assertTrue(
                slot("Small-format set", "main unit 50 mm").reasons().toString().contains("not those of the whole"));
    }

    /** Sold for as much as it cost, it comes to its service, insurance and the money tied up; cash forbids it. */
    @Test
    void theRareOldSetIsRefusedWhereItIsTooDarkAndTiesUpMoneyRatherThanLosingIt() {
        SlotReport hundred = slot("Rare old set", "main unit 100 mm");
        assertEquals(Optional.of(Verdict.DOES_NOT_FIT), hundred.verdict());
        assertTrue(hundred.reasons().toString().contains("too dark"), hundred.toString());
        assertTrue(bought("Rare old set").beyondCash());
        assertTrue(bought("Rare old set").total().compareTo(pounds("9000.00")) < 0);
        assertTrue(bought("Rare old set").cash().compareTo(pounds("48000.00")) > 0);
    }

    @Test
    void thePlainerSetIsRentedByDayAndWeekAndPaysSooner() {
        var comparison = row("Plainer old set").cost().orElseThrow().comparison();
        assertTrue(comparison.dayRateOnly().total().isPresent());
        assertTrue(comparison.weekRateOnly().total().isPresent());
        assertTrue(paysFrom("Plainer old set").orElseThrow()
                < paysFrom("Cine-mount set").orElseThrow());
    }

    @Test
    void thePreOrderIsThereFromItsDayOnAndOthersServeBefore() {
        SheetRow row = row("Modern fast set");
        assertTrue(row.picture().remarks().contains("swift-three-pre-order is there only from 2027-03-12 on."));
        assertEquals(
                Optional.of(Verdict.FITS),
                slot("Modern fast set", "main unit 50 mm").verdict());
        assertTrue(row.cost().orElseThrow().completions().stream()
                .anyMatch(each -> each.slot().equals("main unit 50 mm") && each.days() == 9));
    }

    @Test
    void theTopSetIsBetterRentedThanBought() {
        assertTrue(takes("Top set", "marram-meridian-set", Taken.How.RENTED));
        assertTrue(paysFrom("Top set").orElseThrow() > 60);
        assertEquals(Optional.of(false), row("Top set").cost().orElseThrow().withinBudget());
    }

    @Test
    void theSystemThatIsOnlyRentedHasNoPriceToBuy() {
        SheetRow row = row("System that is only rented");
        assertEquals(Optional.empty(), row.bought());
        assertEquals("nothing of it is for sale", row.payback().orElseThrow().why());
    }
}
