package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.UnitState;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The units that are free through the whole time of a package. */
final class FreeUnits {
    /** Above so many models one look at the whole shelf is quicker than a look for each. */
    private static final int MOST_LOOKS = 12;

    private final Map<Unit.Id, UnitState> free = new LinkedHashMap<>();

    /**
     * Looks.
     *
     * @param models whose units may serve
     * @param others units that may serve by themselves
     */
    FreeUnits(Availability availability, Stay stay, Set<LensModel.Id> models, Collection<Unit.Id> others) {
        List<Availability.OfUnit> found = new ArrayList<>();
        if (others.isEmpty() && models.size() <= MOST_LOOKS) {
            models.forEach(model ->
                    found.addAll(availability.during(stay, Optional.of(model)).units()));
        } else {
            found.addAll(availability.during(stay, Optional.empty()).units());
        }
        // Loose units of the better condition go first, so that sets stay whole.
        found.stream()
                .filter(Availability.OfUnit::free)
                .map(Availability.OfUnit::unit)
                .sorted(Comparator.comparing((UnitState unit) -> unit.set().isPresent())
                        .thenComparing(UnitState::worstFinding)
                        .thenComparing(UnitState::tag))
                .forEach(unit -> free.put(unit.unit(), unit));
    }

    Optional<UnitState> unit(Unit.Id id) {
        return Optional.ofNullable(free.get(id));
    }

    List<UnitState> ofModel(LensModel.Id model) {
        return free.values().stream()
                .filter(unit -> unit.model().equals(Optional.of(model)))
                .toList();
    }

    boolean whole(LensSet set) {
        return !set.members().isEmpty() && free.keySet().containsAll(set.members());
    }

    /** How many there are of each thing that offers draw on. */
    Map<String, Integer> stock() {
        Map<String, Integer> stock = new LinkedHashMap<>();
        free.values().forEach(unit -> draws(unit).forEach((thing, count) -> stock.merge(thing, count, Integer::sum)));
        return stock;
    }

    /** What one unit takes when it goes. */
    static Map<String, Integer> draws(UnitState unit) {
        Map<String, Integer> draws = new LinkedHashMap<>();
        draws.put("unit " + unit.unit().number(), 1);
        unit.model().ifPresent(model -> draws.put(ofModelThing(model), 1));
        return draws;
    }

    /** The thing that any unit of a model is one of. */
    static String ofModelThing(LensModel.Id model) {
        return "model " + model.number();
    }
}
