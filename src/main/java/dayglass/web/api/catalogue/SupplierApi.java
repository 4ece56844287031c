package dayglass.web.api.catalogue;

import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.shelf.SupplierJson;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;

/** {@code /api/suppliers}. */
public final class SupplierApi {
    private SupplierApi() {}

    public static Resource<Supplier.Id, Supplier> of(Suppliers suppliers) {
        return new Resource<>(new Representation<>(
                "/api/suppliers", "supplier", suppliers, Supplier.Id::new, SupplierJson.reader(), SupplierJson::write));
    }
}
