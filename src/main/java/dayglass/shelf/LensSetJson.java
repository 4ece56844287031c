package dayglass.shelf;

import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CoversReader;
import dayglass.wire.costing.OptionWriter;
import java.util.List;
import java.util.Map;

/** A set's facts; covers that are left out are the sum of its members'. */
public final class LensSetJson {
    private LensSetJson() {}

    public static Reader<LensSet> reader() {
        return Fields.object(LensSetJson::read);
    }

    private static Read<LensSet> read(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<Boolean> matched = fields.optional("matched", Readers.yesOrNo(), false);
        Read<List<Unit.Id>> members = fields.optional("members", Readers.distinct(Ids.id(Unit.Id::new)), List.of());
        Read<Map<String, Integer>> covers = fields.optional("covers", CoversReader.covers(), Map.of());
        return fields.build(() -> new LensSet(name.get(), matched.get(), members.get(), covers.get()));
    }

    public static void write(Json.Members members, LensSet set) {
        members.put("name", set.name()).put("matched", set.matched()).put("members", Ids.list(set.members()));
        if (!set.ownCovers().isEmpty()) {
            members.put("covers", OptionWriter.covers(set.ownCovers()));
        }
    }
}
