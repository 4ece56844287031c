package dayglass.desk.find;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.Stay;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What is free during one stay, asked model by model and each once. */
final class FreeThen {
    private final Availability availability;
    private final Optional<Stay> stay;
    private final Map<LensModel.Id, List<Availability.OfUnit>> known = new HashMap<>();

    FreeThen(Availability availability, Optional<Stay> stay) {
        this.availability = availability;
        this.stay = stay;
    }

    Optional<Find.Free> ofModel(LensModel.Id model) {
        return stay.map(then -> {
            List<Availability.OfUnit> units = units(model, then);
            return new Find.Free(
                    Math.toIntExact(
                            units.stream().filter(Availability.OfUnit::free).count()),
                    units.size());
        });
    }

    /** Of a unit without a model nothing is said: it is looked at when it is priced. */
    Optional<Find.Free> ofUnit(Unit.Id id, Unit unit) {
        return unit.model().flatMap(model -> stay.map(then -> new Find.Free(isFree(id, model, then) ? 1 : 0, 1)));
    }

    Optional<Find.Free> ofSet(LensSet set, Function<Unit.Id, Unit> units) {
        return stay.map(then -> new Find.Free(
                Math.toIntExact(set.members().stream()
                        .filter(member -> units.apply(member)
                                .model()
                                .filter(model -> isFree(member, model, then))
                                .isPresent())
                        .count()),
                set.members().size()));
    }

    private boolean isFree(Unit.Id id, LensModel.Id model, Stay then) {
        return units(model, then).stream().anyMatch(each -> each.unit().unit().equals(id) && each.free());
    }

    private List<Availability.OfUnit> units(LensModel.Id model, Stay then) {
        return known.computeIfAbsent(
                model, id -> availability.during(then, Optional.of(id)).units());
    }
}
