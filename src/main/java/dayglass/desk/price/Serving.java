package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Demands with what is on the shelf for them, on whichever days.
 *
 * @param sets those that have a member for one of the demands
 * @param names of all models
 */
record Serving(List<Demand> demands, Map<LensSet.Id, LensSet> sets, Map<LensModel.Id, String> names) {
    static Serving of(List<Demand> demands, Shelf shelf) {
        Map<LensSet.Id, LensSet> sets = new HashMap<>();
        shelf.sets().with(models(demands), exact(demands)).forEach(set -> sets.put(set.id(), set.facts()));
        return new Serving(demands, sets, shelf.modelNames());
    }

    /** The models of which any unit may serve. */
    Set<LensModel.Id> models() {
        return models(demands);
    }

    /** The units that are asked for by themselves, and the members of sets: whether they are free decides of the set. */
    Set<Unit.Id> units() {
        Set<Unit.Id> units = exact(demands);
        sets.values().forEach(set -> units.addAll(set.members()));
        return units;
    }

    /** All that a rate may let for them. */
    Set<Lets> things() {
        Set<Lets> things = new HashSet<>();
        models().forEach(model -> things.add(new Lets(Lets.Kind.MODEL, model.number())));
        exact(demands).forEach(unit -> things.add(new Lets(Lets.Kind.UNIT, unit.number())));
        sets.keySet().forEach(set -> things.add(new Lets(Lets.Kind.SET, set.number())));
        return things;
    }

    Optional<LensSet> set(LensSet.Id id) {
        return Optional.ofNullable(sets.get(id));
    }

    Optional<String> name(LensModel.Id model) {
        return Optional.ofNullable(names.get(model));
    }

    private static Set<LensModel.Id> models(List<Demand> demands) {
        Set<LensModel.Id> models = new HashSet<>();
        demands.forEach(demand -> models.addAll(demand.models()));
        return models;
    }

    private static Set<Unit.Id> exact(List<Demand> demands) {
        Set<Unit.Id> units = new HashSet<>();
        demands.forEach(demand -> demand.unit().ifPresent(units::add));
        return units;
    }
}
