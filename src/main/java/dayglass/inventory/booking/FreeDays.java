package dayglass.inventory.booking;

import dayglass.base.DateRange;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.house.LocalMoment;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * On which days a unit can serve a job: where nothing occupies it from the usual time on the day before to the usual
 * time on the day after, and the turnaround that follows. One that may not be promised serves on none, and one that could
 * not be handed over before a run of such days, not on that run.
 */
public final class FreeDays {
    private final UnitState.Source units;
    private final Occupations occupations;
    private final HandOver.Door door;
    private final HouseSettings settings;

    public FreeDays(UnitState.Source units, Occupations occupations, HandOver.Door door, HouseSettings settings) {
        this.units = units;
        this.occupations = occupations;
        this.door = door;
        this.settings = settings;
    }

    /**
     * The days of a horizon.
     *
     * @param forWhom the subject of bookings that are made for the same work and stand in nobody's way
     */
    public NavigableSet<LocalDate> of(Unit.Id unit, DateRange horizon, String forWhom) {
        House house = settings.now().facts();
        NavigableSet<LocalDate> days = new TreeSet<>();
        Stay whole = use(horizon.from(), horizon.lastDay(), house);
        Optional<UnitState> state = units.of(unit, whole);
        if (state.isEmpty() || !state.get().healthy()) {
            return days;
        }
        List<Stay> taken = occupations.ahead(List.of(unit), whole.out()).stream()
                .filter(each -> !each.facts().subject().equals(forWhom))
                .map(each -> each.facts().stay())
                .toList();
        boolean inRun = false;
        boolean leaves = false;
        for (LocalDate day : horizon.stream().toList()) {
            Stay use = use(day, day, house);
            boolean free = taken.stream().noneMatch(use::overlaps);
            if (free && !inRun) {
                leaves = door.obstacles(state.get(), use.out()).isEmpty();
            }
            if (free && leaves) {
                days.add(day);
            }
            inRun = free;
        }
        return days;
    }

    /** The stay that serves from a first to a last day of use. */
    public static Stay use(LocalDate first, LocalDate last, House house) {
        Instant out = moment(first.minusDays(1).atTime(house.outTime()), house.zone(), true);
        Instant back = moment(last.plusDays(1).atTime(house.backTime()), house.zone(), false);
        return Stay.of(out, back, house.turnaround());
    }

    /** Where clocks change at that very hour, the moment that leaves the more time. */
    private static Instant moment(LocalDateTime local, ZoneId zone, boolean first) {
        return LocalMoment.of(local, zone)
                .fold(
                        once -> once,
                        twice -> (first ? twice.first() : twice.second()).toInstant(),
                        never -> never.resumes().atZone(zone).toInstant());
    }
}
