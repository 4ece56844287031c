package dayglass.inventory.life;

import dayglass.house.House;
import java.time.Instant;
import java.util.List;

/**
 * A unit's life as it is told on its page.
 *
 * @param timeline everything that ever happened to it and what is entered ahead, the newest first
 */
public record UnitLife(List<LifeEvent> timeline, UnitFigures figures) {
    public UnitLife {
        timeline = List.copyOf(timeline);
    }

    public static UnitLife of(UnitRecords records, Lettings lettings, House house, Instant now) {
        return new UnitLife(Timeline.of(records, lettings, house), UnitFigures.of(records, lettings, house, now));
    }
}
