package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What a caller asks for. */
public sealed interface Wish {
    /** Any unit of a model. */
    record OfModel(LensModel.Id model) implements Wish {}

    /** A set: its members, or others of their models where the set is not matched. */
    record OfSet(LensSet.Id set) implements Wish {}

    /** This unit and no other. */
    record OfUnit(Unit.Id unit) implements Wish {}

    /** Any lens that has the focal length, and an image circle of at least {@code circleMm} where one is wanted. */
    record Any(BigDecimal focalMm, Optional<BigDecimal> circleMm) implements Wish {
        private static final Set<LensModel.Kind> LENSES = Set.of(
                LensModel.Kind.SPHERICAL_PRIME,
                LensModel.Kind.SPHERICAL_ZOOM,
                LensModel.Kind.ANAMORPHIC_PRIME,
                LensModel.Kind.ANAMORPHIC_ZOOM);

        /** Whether a model is a lens that is known to have both. */
        public boolean fits(LensModel model) {
            LensModel.OpticalRecord record = model.record();
            BigDecimal shortest = record.focalMm().orElse(BigDecimal.valueOf(-1));
            BigDecimal longest = record.longestFocalMm().orElse(shortest);
            boolean reaches = shortest.compareTo(focalMm) <= 0 && longest.compareTo(focalMm) >= 0;
            boolean covers = circleMm.map(wanted -> record.imageCircleMm()
                            .filter(circle -> circle.compareTo(wanted) >= 0)
                            .isPresent())
                    .orElse(true);
            return LENSES.contains(model.kind()) && reaches && covers;
        }
    }

    default <T> T fold(
            Function<OfModel, T> model, Function<OfSet, T> set, Function<OfUnit, T> unit, Function<Any, T> any) {
        if (this instanceof OfModel m) {
            return model.apply(m);
        }
        if (this instanceof OfSet s) {
            return set.apply(s);
        }
        return this instanceof OfUnit u ? unit.apply(u) : any.apply((Any) this);
    }
}
