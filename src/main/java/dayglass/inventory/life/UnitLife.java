package dayglass.inventory.life;

import dayglass.house.House;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * A unit's life as it is told on its page.
 *
 * @param timeline everything that ever happened to it and what is entered ahead, the newest first
 * @param benchCost what the bench took, which is in {@code money} too
 * @param lastYear of the 365 days that end today
 * @param everSince of all its time in the house
 */
public record UnitLife(
        List<LifeEvent> timeline,
        MoneySoFar money,
        List<MoneySoFar.Line> benchCost,
        Utilisation lastYear,
        Utilisation everSince) {
    private static final int YEAR_DAYS = 365;

    public UnitLife {
        timeline = List.copyOf(timeline);
        benchCost = List.copyOf(benchCost);
    }

    public static UnitLife of(UnitRecords records, House house, Instant now) {
        LocalDate today = now.atZone(house.zone()).toLocalDate();
        return new UnitLife(
                Timeline.of(records, house),
                MoneySoFar.of(records, house),
                MoneySoFar.bench(records, house),
                Utilisation.since(today.minusDays(YEAR_DAYS - 1L), records, house, now),
                Utilisation.since(Utilisation.came(records, house).orElse(today), records, house, now));
    }
}
