package dayglass.shelf;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import java.util.Optional;

/** What rates are for, by the names that the shelf has for it. */
public record LetsNames(Shelf shelf) {
    /** {@code Marrow Heron 40}, {@code Herons (whole set)} or {@code H-40-1 (this unit)}. */
    public String said(Lets lets) {
        return switch (lets.kind()) {
            case MODEL -> model(lets).map(model -> model.fullName()).orElse("a model that is gone");
            case SET -> set(lets).map(set -> set.name() + " (whole set)").orElse("a set that is gone");
            case UNIT -> unit(lets).map(unit -> unit.tag() + " (this unit)").orElse("a unit that is gone");
        };
    }

    public Optional<LensModel> model(Lets lets) {
        return lets.kind() == Lets.Kind.MODEL
                ? shelf.models().find(new LensModel.Id(lets.number())).map(Stored::facts)
                : Optional.empty();
    }

    public Optional<LensSet> set(Lets lets) {
        return lets.kind() == Lets.Kind.SET
                ? shelf.sets().find(new LensSet.Id(lets.number())).map(Stored::facts)
                : Optional.empty();
    }

    public Optional<Unit> unit(Lets lets) {
        return lets.kind() == Lets.Kind.UNIT
                ? shelf.units().find(new Unit.Id(lets.number())).map(Stored::facts)
                : Optional.empty();
    }
}
