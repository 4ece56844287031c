package dayglass.web.api.house;

import dayglass.base.Currency;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.regex.Pattern;

/** The house's settings on the wire. */
public final class HouseJson {
    private static final int MOST_TURNAROUND_MINUTES = 43_200;
    private static final Pattern TIME = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9]");

    private HouseJson() {}

    public static Reader<House> reader() {
        return Fields.object(HouseJson::read);
    }

    private static Read<House> read(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<ZoneId> zone = fields.required("timeZone", zone());
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        Read<LocalTime> outTime = fields.required("outTime", time());
        Read<LocalTime> backTime = fields.required("backTime", time());
        Read<Integer> turnaround = fields.required("turnaroundMinutes", Readers.whole(0, MOST_TURNAROUND_MINUTES));
        return fields.build(() -> new House(
                name.get(),
                zone.get(),
                currency.get(),
                outTime.get(),
                backTime.get(),
                Duration.ofMinutes(turnaround.get())));
    }

    /** A region of the time zone database: an offset alone would not know when clocks change. */
    private static Reader<ZoneId> zone() {
        return (json, place) -> {
            Read<String> text = Readers.anyText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            return ZoneId.getAvailableZoneIds().contains(text.get())
                    ? Read.good(ZoneId.of(text.get()))
                    : place.fault("must be a zone of the time zone database, such as Europe/Paris");
        };
    }

    private static Reader<LocalTime> time() {
        return (json, place) -> {
            Read<String> text = Readers.anyText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            return TIME.matcher(text.get()).matches()
                    ? Read.good(LocalTime.parse(text.get()))
                    : place.fault("must be a time from 00:00 to 23:59, such as 15:00");
        };
    }

    static Json.Obj whole(Stored<House.Id, House> house) {
        Json.Members members = Json.object().put("version", house.version());
        facts(house.facts()).members().forEach(members::put);
        return members.build();
    }

    public static Json.Obj facts(House house) {
        return Json.object()
                .put("name", house.name())
                .put("timeZone", house.zone().getId())
                .put("currency", house.currency().code())
                .put("outTime", house.outTime().toString())
                .put("backTime", house.backTime().toString())
                .put("turnaroundMinutes", house.turnaround().toMinutes())
                .build();
    }
}
