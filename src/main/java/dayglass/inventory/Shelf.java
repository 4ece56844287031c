package dayglass.inventory;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.LensModels;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What lies on the shelf: of which models, which units, in which sets. */
public record Shelf(LensModels models, Units units, LensSets sets) {
    /** Each model as people say it, maker first. */
    public Map<LensModel.Id, String> modelNames() {
        Map<LensModel.Id, String> names = new HashMap<>();
        models.list(Optional.empty(), Integer.MAX_VALUE)
                .forEach(model -> names.put(model.id(), model.facts().fullName()));
        return names;
    }
}
