package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import java.math.BigDecimal;
import java.util.Optional;
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
    record Any(BigDecimal focalMm, Optional<BigDecimal> circleMm) implements Wish {}

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
