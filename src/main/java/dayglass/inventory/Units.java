package dayglass.inventory;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.Optional;

/** Every unit on the shelf; tags are unique, serials within a model. */
public interface Units extends VersionedCollection<Unit.Id, Unit> {
    Optional<Stored<Unit.Id, Unit>> tagged(String tag);
}
