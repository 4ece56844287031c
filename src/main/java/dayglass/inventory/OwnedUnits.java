package dayglass.inventory;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.Optional;

/** Every owned unit; tags are unique. */
public interface OwnedUnits extends VersionedCollection<OwnedUnit.Id, OwnedUnit> {
    Optional<Stored<OwnedUnit.Id, OwnedUnit>> tagged(String tag);
}
