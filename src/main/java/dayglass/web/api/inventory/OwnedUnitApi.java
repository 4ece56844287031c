package dayglass.web.api.inventory;

import dayglass.base.DateRange;
import dayglass.inventory.OwnedUnit;
import dayglass.inventory.OwnedUnits;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import dayglass.wire.costing.CoversReader;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.SpanReader;
import java.util.List;
import java.util.Map;

/** {@code /api/owned-units}. */
public final class OwnedUnitApi {
    private OwnedUnitApi() {}

    public static Resource<OwnedUnit.Id, OwnedUnit> of(OwnedUnits units) {
        return new Resource<>(new Representation<>(
                "/api/owned-units",
                "owned unit",
                units,
                OwnedUnit.Id::new,
                Fields.object(OwnedUnitApi::read),
                OwnedUnitApi::write));
    }

    private static Read<OwnedUnit> read(Fields fields) {
        Read<String> tag = fields.required("tag", Readers.name());
        Read<Map<String, Integer>> covers = fields.required("covers", CoversReader.covers());
        Read<List<DateRange>> available = fields.optional("available", SpanReader.spans(), List.of());
        return fields.build(() -> new OwnedUnit(tag.get(), covers.get(), available.get()));
    }

    /** As the request writes the unit, whose id there is the tag here. */
    private static void write(Json.Members members, OwnedUnit unit) {
        members.put("tag", unit.tag());
        Json.Obj option = (Json.Obj) OptionWriter.owned(unit.option());
        option.members().forEach((name, value) -> {
            if (!name.equals("id")) {
                members.put(name, value);
            }
        });
    }
}
