package dayglass.shelf;

import dayglass.catalogue.Mount;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;

/** A mount's facts. */
public final class MountJson {
    private static final int LONGEST_NOTE = 2_000;

    private MountJson() {}

    public static Reader<Mount> reader() {
        return Fields.object(fields -> {
            Read<String> name = fields.required("name", Readers.name());
            Read<BigDecimal> flange = fields.required("flangeMm", Decimals.positive());
            Read<String> note = fields.optional("note", Readers.text(LONGEST_NOTE), "");
            return fields.build(() -> new Mount(name.get(), flange.get(), note.get()));
        });
    }

    public static void write(Json.Members members, Mount mount) {
        members.put("name", mount.name()).put("flangeMm", mount.flangeMm().toPlainString());
        if (!mount.note().isEmpty()) {
            members.put("note", mount.note());
        }
    }
}
