package dayglass.planning.ways;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.cost.plan.Answer;
import dayglass.job.LookScore;
import dayglass.job.Way;
import dayglass.planning.KeptCosting;
import dayglass.planning.glass.JudgedGlass;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Which ways no other beats on cost and look. */
class FrontierTest {
    private static final Answer.Row NOTHING = new Answer.Row(Optional.empty(), Optional.empty());

    private static SheetRow row(long way, Optional<String> cost, Optional<Integer> look) {
        JudgedGlass lens = Asked.lens(1, "50");
        JudgedGlass scored = new JudgedGlass(
                lens.name(),
                1,
                lens.focals(),
                lens.fit(),
                List.of(),
                List.of(),
                new LookScore(look.map(BigDecimal::valueOf), List.of()));
        return new SheetRow(
                new Way.Id(way),
                new SheetRow.Described("way " + way, ""),
                new SheetRow.Picture(List.of(), List.of(scored), Set.of(), List.of()),
                new SheetRow.Costs(cost.map(FrontierTest::cost), Optional.empty(), Optional.empty()),
                "");
    }

    private static SheetRow.Cost cost(String amount) {
        Answer.Row best = new Answer.Row(Optional.of(Asked.euros(amount)), Optional.of(Asked.euros(amount)));
        return new SheetRow.Cost(
                new KeptCosting.Id(1),
                new Answer.Comparison(NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, best),
                true,
                Asked.euros(amount),
                Optional.empty(),
                List.of(),
                List.of());
    }

    private static Set<Long> frontier(SheetRow... rows) {
        return Frontier.of(List.of(rows)).stream().map(Way.Id::number).collect(Collectors.toSet());
    }

    @Test
    void aWayIsBeatenByOneThatCostsNoMoreAndLooksNoWorseAndIsBetterInOne() {
        assertEquals(
                Set.of(1L, 3L),
                frontier(
                        row(1, Optional.of("10.00"), Optional.of(50)),
                        row(2, Optional.of("10.00"), Optional.of(49)),
                        row(3, Optional.of("10.01"), Optional.of(51)),
                        row(4, Optional.of("10.02"), Optional.of(51))));
    }

    @Test
    void waysThatAreAlikeBeatEachOtherNot() {
        assertEquals(
                Set.of(1L, 2L),
                frontier(row(1, Optional.of("10.00"), Optional.of(50)), row(2, Optional.of("10.00"), Optional.of(50))));
    }

    @Test
    void whatHasNoCostOrNoLookIsNotCompared() {
        assertEquals(
                Set.of(3L),
                frontier(
                        row(1, Optional.empty(), Optional.of(100)),
                        row(2, Optional.of("0.00"), Optional.empty()),
                        row(3, Optional.of("10.00"), Optional.of(50))));
    }

    /** Of any ways, the cheapest of the best looking and the best looking of the cheapest stay, and each other is beaten. */
    @Property(tries = 200)
    void someWayAlwaysStays(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 99) Integer> costs,
            @ForAll @IntRange(min = 1, max = 97) int step) {
        List<SheetRow> rows = new ArrayList<>();
        for (int cost : costs) {
            rows.add(row(rows.size() + 1L, Optional.of(cost + ".00"), Optional.of(cost * step % 101)));
        }
        Set<Way.Id> staying = Frontier.of(rows);
        assertTrue(!staying.isEmpty());
        for (SheetRow row : rows) {
            boolean beaten = rows.stream().anyMatch(other -> strictly(other, row));
            assertEquals(!beaten, staying.contains(row.way()));
        }
    }

    /** By numbers of its own: better in one of the two and not worse in the other. */
    private static boolean strictly(SheetRow other, SheetRow row) {
        double cost = dearer(other) - dearer(row);
        double look = looks(other) - looks(row);
        return Math.max(cost, -look) <= 0 && Math.min(cost, -look) < 0;
    }

    private static double dearer(SheetRow row) {
        return row.cost().orElseThrow().total().major().doubleValue();
    }

    private static double looks(SheetRow row) {
        return row.picture().look().orElseThrow().doubleValue();
    }
}
