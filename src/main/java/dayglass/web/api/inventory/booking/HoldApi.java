package dayglass.web.api.inventory.booking;

import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;
import dayglass.web.api.house.Moments;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.Instant;
import java.time.ZoneId;

/** {@code /api/holds}. */
public final class HoldApi {
    private HoldApi() {}

    public static Resource<Hold.Id, Hold> of(Whereabouts whereabouts) {
        return new Resource<>(new Representation<>(
                "/api/holds",
                "hold",
                whereabouts.holds(),
                Hold.Id::new,
                reader(whereabouts),
                (members, hold) -> write(
                        members, hold, whereabouts.settings().now().facts().zone())));
    }

    /** A hold that whoever acts enters now. */
    public static Reader<Hold> reader(Whereabouts whereabouts) {
        return Fields.object(fields -> {
            House house = whereabouts.settings().now().facts();
            Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
            Read<TimesReader.Times> times = TimesReader.read(fields, house);
            Read<Integer> rank = fields.optional("rank", Readers.whole(1, Hold.MOST_RANK), 1);
            Read<Instant> expires = fields.required("expires", MomentReader.moment(house.zone()));
            Read<String> subject = fields.required("subject", Readers.name());
            return fields.build(() -> new Hold(
                    unit.get(),
                    times.get().out(),
                    times.get().back(),
                    rank.get(),
                    expires.get(),
                    subject.get(),
                    whereabouts.whoActs().now(),
                    whereabouts.clock().instant()));
        });
    }

    private static void write(Json.Members members, Hold hold, ZoneId zone) {
        members.put("unitId", hold.unit().number())
                .put("out", Moments.text(hold.out(), zone))
                .put("back", Moments.text(hold.back(), zone))
                .put("rank", hold.rank())
                .put("expires", Moments.text(hold.expires(), zone))
                .put("subject", hold.subject())
                .put("enteredBy", hold.enteredBy().number())
                .put("enteredAt", Moments.text(hold.enteredAt(), zone));
    }
}
