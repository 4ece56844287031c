package dayglass.inventory.booking;

import dayglass.house.HouseSettings;
import dayglass.house.WhoActs;
import java.time.Clock;

/** All that is known and done about where units are, in one hand. */
public record Whereabouts(
        Occupations occupations,
        Holds holds,
        UnitState.Source units,
        HandOver.Door door,
        BookUnits.Surroundings around) {

    public BookUnits bookUnits() {
        return new BookUnits(occupations, units, around);
    }

    public HandOver handOver() {
        return new HandOver(occupations, units, door, around);
    }

    public Availability availability() {
        return new Availability(units, occupations, around.settings(), around.clock());
    }

    public FreeDays freeDays() {
        return new FreeDays(units, occupations, door, around.settings());
    }

    public HouseSettings settings() {
        return around.settings();
    }

    public WhoActs whoActs() {
        return around.whoActs();
    }

    public Clock clock() {
        return around.clock();
    }
}
