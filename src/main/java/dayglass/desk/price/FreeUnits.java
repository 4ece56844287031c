package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.UnitState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The units that are free through the whole time of a package. */
final class FreeUnits {
    private final Map<Unit.Id, UnitState> free = new LinkedHashMap<>();
    private final Map<LensModel.Id, List<UnitState>> byModel = new HashMap<>();

    FreeUnits(List<UnitState> found) {
        // Loose units of the better condition go first, so that sets stay whole.
        found.stream()
                .sorted(Comparator.comparing((UnitState unit) -> unit.set().isPresent())
                        .thenComparing(UnitState::worstFinding)
                        .thenComparing(UnitState::tag))
                .forEach(unit -> {
                    free.put(unit.unit(), unit);
                    unit.model()
                            .ifPresent(model -> byModel.computeIfAbsent(model, each -> new ArrayList<>())
                                    .add(unit));
                });
    }

    Optional<UnitState> unit(Unit.Id id) {
        return Optional.ofNullable(free.get(id));
    }

    List<UnitState> ofModel(LensModel.Id model) {
        return byModel.getOrDefault(model, List.of());
    }

    /** Whether any unit is free that may serve it. */
    boolean has(Demand demand) {
        return free.values().stream().anyMatch(unit -> demand.servedBy(unit.unit(), unit.model()));
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
