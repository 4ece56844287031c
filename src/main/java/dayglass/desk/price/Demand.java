package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.inventory.Unit;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that has to be there, so many times: what a line asks for, or a part of a set that it asks for.
 *
 * @param slot its name in the question, its own
 * @param line the line of the package
 * @param models any unit of these serves; empty where {@code unit} alone does
 * @param unit this unit alone serves
 */
record Demand(String slot, int line, String label, Set<LensModel.Id> models, Optional<Unit.Id> unit, int count) {
    Demand {
        models = Set.copyOf(models);
    }

    /** The same, wanted so many times. */
    Demand times(int wanted) {
        return new Demand(slot, line, label, models, unit, wanted);
    }

    boolean servedBy(Unit.Id id, Optional<LensModel.Id> model) {
        return unit.map(id::equals)
                .orElseGet(() -> model.filter(models::contains).isPresent());
    }
}
