package dayglass.web.api.catalogue;

import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Readers;

/** {@code /api/suppliers}. */
public final class SupplierApi {
    private SupplierApi() {}

    public static Resource<Supplier.Id, Supplier> of(Suppliers suppliers) {
        return new Resource<>(new Representation<>(
                "/api/suppliers",
                "supplier",
                suppliers,
                Supplier.Id::new,
                Fields.object(SupplierApi::read),
                SupplierApi::write));
    }

    private static Read<Supplier> read(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<Boolean> house = fields.optional("house", Readers.yesOrNo(), false);
        return fields.build(() -> new Supplier(name.get(), house.get()));
    }

    private static void write(Json.Members members, Supplier supplier) {
        members.put("name", supplier.name());
        if (supplier.house()) {
            members.put("house", true);
        }
    }
}
