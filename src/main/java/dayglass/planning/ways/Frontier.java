package dayglass.planning.ways;

import dayglass.job.Way;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which ways no other beats: none costs no more and looks no worse, and is better in one of the two. */
public final class Frontier {
    private Frontier() {}

    /** Ways without a cost or a look are not compared. */
    public static Set<Way.Id> of(List<SheetRow> rows) {
        List<SheetRow> compared = rows.stream()
                .filter(row -> row.cost().isPresent() && row.picture().look().isPresent())
                .toList();
        return compared.stream()
                .filter(row -> compared.stream().noneMatch(other -> beats(other, row)))
                .map(SheetRow::way)
                .collect(Collectors.toSet());
    }

    private static boolean beats(SheetRow other, SheetRow row) {
        int cost = other.cost()
                .orElseThrow()
                .total()
                .compareTo(row.cost().orElseThrow().total());
        int look = other.picture()
                .look()
                .orElseThrow()
                .compareTo(row.picture().look().orElseThrow());
        return cost <= 0 && look >= 0 && (cost < 0 || look > 0);
    }
}
