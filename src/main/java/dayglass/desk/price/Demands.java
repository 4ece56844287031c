package dayglass.desk.price;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Turns the lines of a package into what has to be there. */
final class Demands {
    private final Shelf shelf;
    private final List<Demand> demands = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    private Demands(Shelf shelf) {
        this.shelf = shelf;
    }

    /** Refused with a fault at each line that names nothing on the shelf. */
    static Outcome<List<Demand>> of(PackageAsked asked, Shelf shelf) {
        Demands demands = new Demands(shelf);
        for (int line = 0; line < asked.lines().size(); line++) {
            demands.add(line, asked.lines().get(line));
        }
        return demands.faults.isEmpty()
                ? Outcome.done(List.copyOf(demands.demands))
                : Outcome.refused(Problem.faulty(demands.faults));
    }

    private void add(int line, PackageAsked.Asked asked) {
        boolean found = asked.wish()
                .fold(
                        model -> ofModel(line, model.model(), asked.count()),
                        set -> ofSet(line, set.set(), asked.count()),
                        unit -> ofUnit(line, unit.unit(), asked.count()),
                        any -> any(line, any, asked.count()));
        if (!found) {
            faults.add(new Fault("/lines/" + line, "asks for what is not on the shelf"));
        }
    }

    private boolean ofModel(int line, LensModel.Id id, int count) {
        Optional<Stored<LensModel.Id, LensModel>> model = shelf.models().find(id);
        model.ifPresent(found -> put(line, found.facts().fullName(), Set.of(id), Optional.empty(), count));
        return model.isPresent();
    }

    private boolean ofUnit(int line, Unit.Id id, int count) {
        Optional<Stored<Unit.Id, Unit>> unit = shelf.units().find(id);
        if (unit.isPresent() && count != 1) {
            faults.add(new Fault("/lines/" + line + "/count", "must be 1: there is one of this unit"));
        }
        unit.ifPresent(found -> put(line, found.facts().tag(), Set.of(), Optional.of(id), 1));
        return unit.isPresent();
    }

    /** Of a matched set only its own members will do; of another, any units of their models. */
    private boolean ofSet(int line, LensSet.Id id, int count) {
        Optional<Stored<LensSet.Id, LensSet>> set = shelf.sets().find(id);
        if (set.isEmpty() || set.get().facts().members().isEmpty()) {
            return false;
        }
        LensSet facts = set.get().facts();
        if (facts.matched() && count != 1) {
            faults.add(new Fault("/lines/" + line + "/count", "must be 1: there is one of this matched set"));
        }
        for (Unit.Id member : facts.members()) {
            Unit unit = shelf.units().find(member).orElseThrow().facts();
            String label = unit.model()
                    .flatMap(model -> shelf.models().find(model))
                    .map(model -> model.facts().fullName())
                    .orElse(unit.tag());
            boolean exact = facts.matched() || unit.model().isEmpty();
            put(
                    line,
                    label,
                    exact ? Set.of() : Set.of(unit.model().orElseThrow()),
                    exact ? Optional.of(member) : Optional.empty(),
                    count);
        }
        return true;
    }

    private boolean any(int line, Wish.Any any, int count) {
        Set<LensModel.Id> models = shelf.models().list(Optional.empty(), Integer.MAX_VALUE).stream()
                .filter(model -> any.fits(model.facts()))
                .map(Stored::id)
                .collect(Collectors.toSet());
        if (!models.isEmpty()) {
            String circle = any.circleMm()
                    .map(mm -> " that covers " + mm.toPlainString() + " mm")
                    .orElse("");
            put(line, "any " + any.focalMm().toPlainString() + " mm" + circle, models, Optional.empty(), count);
        }
        return !models.isEmpty();
    }

    private void put(int line, String label, Set<LensModel.Id> models, Optional<Unit.Id> unit, int count) {
        demands.add(new Demand("slot " + (demands.size() + 1), line, label, models, unit, count));
    }
}
