package dayglass.inventory.booking;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which units and which whole sets are free from one moment to another, and when the others next would be. */
public final class Availability {
    private final UnitState.Source units;
    private final Occupations occupations;
    private final HouseSettings settings;
    private final Clock clock;

    public Availability(UnitState.Source units, Occupations occupations, HouseSettings settings, Clock clock) {
        this.units = units;
        this.occupations = occupations;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * A unit and whether it can be promised.
     *
     * @param obstacles why not, in sentences
     * @param warnings what to mind
     * @param nextFree from when nothing occupies it for as long; empty where it is not occupied
     */
    public record OfUnit(UnitState unit, List<String> obstacles, List<String> warnings, Optional<Instant> nextFree) {
        public OfUnit {
            obstacles = List.copyOf(obstacles);
            warnings = List.copyOf(warnings);
        }

        public boolean free() {
            return obstacles.isEmpty() && nextFree.isEmpty();
        }
    }

    /**
     * A set as a whole, free where every member is.
     *
     * @param nextFree from when no member is occupied for as long; empty where none is occupied
     */
    public record OfSet(LensSet.Id set, int members, int freeMembers, Optional<Instant> nextFree) {
        public boolean free() {
            return freeMembers == members;
        }
    }

    /** Units by tag, and the sets that they are in. */
    public record Answer(Stay asked, List<OfUnit> units, List<OfSet> sets) {
        public Answer {
            units = List.copyOf(units);
            sets = List.copyOf(sets);
        }
    }

    /** The stay that a job makes of a unit: with the house's turnaround after it. */
    public Stay stay(Instant out, Instant back) {
        return Stay.of(out, back, settings.now().facts().turnaround());
    }

    /**
     * Asks for all units, or those of one model; sets are told where all units are asked for.
     *
     * @param stay with its turnaround
     */
    public Answer during(Stay stay, Optional<LensModel.Id> model) {
        House house = settings.now().facts();
        Instant now = clock.instant();
        List<UnitState> states = units.during(stay, model);
        Map<Unit.Id, List<Stay>> ahead = ahead(states, stay.out());
        List<OfUnit> answers = states.stream()
                .map(state -> new OfUnit(
                        state,
                        Promise.obstacles(state, stay, house, now),
                        Promise.warnings(state, house, now),
                        state.busyUntil()
                                .map(until -> NextFree.from(stay, ahead.getOrDefault(state.unit(), List.of())))))
                .toList();
        return new Answer(stay, answers, model.isPresent() ? List.of() : sets(answers, ahead, stay));
    }

    /** Of some units and those of some models: the free ones alone, without looking when the others would be. */
    public List<UnitState> free(Stay stay, Set<LensModel.Id> models, Set<Unit.Id> wanted) {
        House house = settings.now().facts();
        Instant now = clock.instant();
        return units.during(stay, models, wanted).stream()
                .filter(state -> state.busyUntil().isEmpty()
                        && Promise.obstacles(state, stay, house, now).isEmpty())
                .toList();
    }

    /** What lies ahead of the units that are occupied. */
    private Map<Unit.Id, List<Stay>> ahead(List<UnitState> states, Instant from) {
        List<Unit.Id> busy = states.stream()
                .filter(state -> state.busyUntil().isPresent() || state.set().isPresent())
                .map(UnitState::unit)
                .toList();
        Map<Unit.Id, List<Stay>> ahead = new HashMap<>();
        for (Stored<Occupation.Id, Occupation> each : occupations.ahead(busy, from)) {
            ahead.computeIfAbsent(each.facts().unit(), unit -> new ArrayList<>())
                    .add(each.facts().stay());
        }
        return ahead;
    }

    private static List<OfSet> sets(List<OfUnit> units, Map<Unit.Id, List<Stay>> ahead, Stay stay) {
        Map<LensSet.Id, List<OfUnit>> members = new LinkedHashMap<>();
        for (OfUnit unit : units) {
            unit.unit()
                    .set()
                    .ifPresent(set -> members.computeIfAbsent(set, each -> new ArrayList<>())
                            .add(unit));
        }
        List<OfSet> sets = new ArrayList<>();
        members.forEach((set, of) -> {
            boolean busy = of.stream().anyMatch(unit -> unit.nextFree().isPresent());
            List<Stay> all = of.stream()
                    .flatMap(unit -> ahead.getOrDefault(unit.unit().unit(), List.of()).stream())
                    .sorted(Comparator.comparing(Stay::out))
                    .toList();
            int free = (int) of.stream().filter(OfUnit::free).count();
            sets.add(new OfSet(set, of.size(), free, busy ? Optional.of(NextFree.from(stay, all)) : Optional.empty()));
        });
        return sets;
    }
}
