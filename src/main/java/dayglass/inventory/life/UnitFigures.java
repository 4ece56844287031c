package dayglass.inventory.life;

import dayglass.house.House;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a unit's life comes to.
 *
 * @param benchCost what the bench took, which is in {@code money} too
 * @param lastYear of the 365 days that end today
 * @param everSince of all its time in the house
 */
public record UnitFigures(
        MoneySoFar money, List<MoneySoFar.Line> benchCost, Utilisation lastYear, Utilisation everSince) {
    private static final int YEAR_DAYS = 365;

    public UnitFigures {
        benchCost = List.copyOf(benchCost);
    }

    public static UnitFigures of(UnitRecords records, Lettings lettings, House house, Instant now) {
        LocalDate today = now.atZone(house.zone()).toLocalDate();
        LocalDate yearBegins = today.minusDays(YEAR_DAYS - 1L);
        Optional<LocalDate> came = Utilisation.came(records, house);
        Utilisation ever = Utilisation.since(came.orElse(yearBegins), records, house, now);
        return new UnitFigures(
                MoneySoFar.of(records, lettings, house),
                MoneySoFar.bench(records, house),
                ever.from(yearBegins),
                came.isPresent() ? ever : ever.from(today));
    }
}
