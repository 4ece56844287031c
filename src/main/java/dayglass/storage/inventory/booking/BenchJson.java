package dayglass.storage.inventory.booking;

import dayglass.base.Money;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.shelf.MoneyJson;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What was done on the bench, as it is kept; an empty object for what is no bench visit. */
final class BenchJson {
    private static final String NONE = "{}";
    private static final Reader<BenchWork> READER = Fields.object(BenchJson::read);

    private BenchJson() {}

    static String write(Optional<BenchWork> bench) {
        return bench.map(work -> {
                    Json.Members members = Json.object()
                            .put("findings", work.findings())
                            .put("work", work.work())
                            .put("parts", work.parts())
                            .put("done", work.done());
                    work.cost().ifPresent(cost -> members.put("cost", MoneyJson.write(cost)));
                    return JsonPrint.pretty(members.build());
                })
                .orElse(NONE);
    }

    static Optional<BenchWork> read(String json) {
        return json.equals(NONE)
                ? Optional.empty()
                : Optional.of(READER.read(json.getBytes(StandardCharsets.UTF_8)).fold(work -> work, faults -> {
                    throw new IllegalStateException("the database holds what it should not: " + faults);
                }));
    }

    private static Read<BenchWork> read(Fields fields) {
        Read<String> findings = fields.required("findings", Readers.anyText());
        Read<String> work = fields.required("work", Readers.anyText());
        Read<String> parts = fields.required("parts", Readers.anyText());
        Read<Boolean> done = fields.required("done", Readers.yesOrNo());
        Read<Optional<Money>> cost = fields.optional("cost", MoneyJson.money());
        return fields.build(() -> new BenchWork(findings.get(), work.get(), parts.get(), cost.get(), done.get()));
    }
}
