package dayglass.inventory;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.LensModels;
import java.util.Map;

/** What lies on the shelf: of which models, which units, in which sets. */
public record Shelf(LensModels models, Units units, LensSets sets) {
    /** Each model as people say it, maker first. */
    public Map<LensModel.Id, String> modelNames() {
        return models.names();
    }
}
