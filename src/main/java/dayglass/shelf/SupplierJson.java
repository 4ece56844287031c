package dayglass.shelf;

import dayglass.catalogue.Supplier;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;

/** A supplier's facts. */
public final class SupplierJson {
    private SupplierJson() {}

    public static Reader<Supplier> reader() {
        return Fields.object(SupplierJson::read);
    }

    private static Read<Supplier> read(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<Boolean> house = fields.optional("house", Readers.yesOrNo(), false);
        return fields.build(() -> new Supplier(name.get(), house.get()));
    }

    public static void write(Json.Members members, Supplier supplier) {
        members.put("name", supplier.name());
        if (supplier.house()) {
            members.put("house", true);
        }
    }

    public static Json.Obj write(Supplier supplier) {
        Json.Members members = Json.object();
        write(members, supplier);
        return members.build();
    }
}
