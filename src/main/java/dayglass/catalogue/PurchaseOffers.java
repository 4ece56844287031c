package dayglass.catalogue;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.List;

/** Every purchase offer. */
public interface PurchaseOffers extends VersionedCollection<PurchaseOffer.Id, PurchaseOffer> {
    List<Stored<PurchaseOffer.Id, PurchaseOffer>> madeBy(Supplier.Id supplier);
}
