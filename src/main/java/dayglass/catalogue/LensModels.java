package dayglass.catalogue;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.Map;
import java.util.Optional;

/** Every lens model; maker and name together are unique. */
public interface LensModels extends VersionedCollection<LensModel.Id, LensModel> {
    Optional<Stored<LensModel.Id, LensModel>> named(String maker, String name);

    /** Each as people say it, maker first. */
    Map<LensModel.Id, String> names();
}
