package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.web.page.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the page of one unit shows beside the form of its facts.
 *
 * @param id 0 for one that is not there yet
 */
public record UnitView(long id, Label label) {
    static final UnitView NEW = new UnitView(0, new Label("A new unit", List.of()));

    static UnitView of(Shelf shelf, Stored<Unit.Id, Unit> stored) {
        Unit unit = stored.facts();
        List<Label.Field> fields = new ArrayList<>();
        unit.model()
                .flatMap(shelf.models()::find)
                .ifPresent(model ->
                        fields.add(new Label.Field("model", model.facts().fullName())));
        unit.serial().ifPresent(serial -> fields.add(new Label.Field("serial", serial)));
        fields.add(new Label.Field("held", UnitRow.holding(unit)));
        Optional<Stored<LensSet.Id, LensSet>> set = shelf.sets().holding(stored.id());
        set.ifPresent(each -> fields.add(new Label.Field("set", each.facts().name())));
        unit.papers().homeShelf().ifPresent(shelfName -> fields.add(new Label.Field("lies", shelfName)));
        return new UnitView(stored.id().number(), new Label(unit.tag(), fields));
    }
}
