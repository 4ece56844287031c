package dayglass.catalogue;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.optics.Mounts;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every mount of the house's own; names are unique, and none is a published one. */
public interface OwnMounts extends VersionedCollection<Mount.Id, Mount> {
    /** The published ones and these. */
    default Mounts all() {
        Map<String, BigDecimal> own = new LinkedHashMap<>();
        for (Stored<Mount.Id, Mount> mount : list(Optional.empty(), Integer.MAX_VALUE)) {
            own.put(mount.facts().name(), mount.facts().flangeMm());
        }
        return Mounts.KNOWN.and(own);
    }
}
