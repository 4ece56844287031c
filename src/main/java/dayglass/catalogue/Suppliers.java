package dayglass.catalogue;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.Optional;

/** Every supplier known; names are unique. */
public interface Suppliers extends VersionedCollection<Supplier.Id, Supplier> {
    Optional<Stored<Supplier.Id, Supplier>> named(String name);

    /** This house itself, where it has cards. */
    Optional<Stored<Supplier.Id, Supplier>> house();
}
