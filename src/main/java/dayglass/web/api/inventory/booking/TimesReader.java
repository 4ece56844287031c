package dayglass.web.api.inventory.booking;

import dayglass.house.House;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * From when to when: two moments, or the first and the last day of use, for which the house's usual times are taken on
 * the day before and the day after.
 */
public final class TimesReader {
    private TimesReader() {}

    /** The out and the back, in order. */
    public record Times(Instant out, Instant back) {}

    public static Read<Times> read(Fields fields, House house) {
        boolean byDays = fields.has("firstDay") || fields.has("lastDay");
        Read<Times> times = byDays ? byDays(fields, house) : byMoments(fields, house);
        if (byDays && (fields.has("out") || fields.has("back"))) {
            return fields.place().fault("give out and back, or firstDay and lastDay, not both");
        }
        return times;
    }

    private static Read<Times> byMoments(Fields fields, House house) {
        Read<Instant> out = fields.required("out", MomentReader.moment(house.zone()));
        Read<Instant> back = fields.required("back", MomentReader.moment(house.zone()));
        if (!out.isGood() || !back.isGood()) {
            return Read.bad();
        }
        return out.get().isBefore(back.get())
                ? Read.good(new Times(out.get(), back.get()))
                : fields.place().member("back").fault("must be later than out");
    }

    private static Read<Times> byDays(Fields fields, House house) {
        Read<Optional<Instant>> out = fields.optional("out", MomentReader.moment(house.zone()));
        Read<Optional<Instant>> back = fields.optional("back", MomentReader.moment(house.zone()));
        Read<LocalDate> first = fields.required("firstDay", Readers.date());
        Read<LocalDate> last = fields.optional("lastDay", Readers.date())
                .found()
                .flatMap(each -> each)
                .map(Read::good)
                .orElse(fields.has("lastDay") ? Read.bad() : first);
        if (!first.isGood() || !last.isGood() || !out.isGood() || !back.isGood()) {
            return Read.bad();
        }
        if (last.get().isBefore(first.get())) {
            return fields.place().member("lastDay").fault("must not be before firstDay");
        }
        Read<Instant> begins = MomentReader.local(
                first.get().minusDays(1).atTime(house.outTime()),
                house.zone(),
                fields.place().member("firstDay"));
        Read<Instant> ends = MomentReader.local(
                last.get().plusDays(1).atTime(house.backTime()),
                house.zone(),
                fields.place().member("lastDay"));
        return begins.isGood() && ends.isGood() ? Read.good(new Times(begins.get(), ends.get())) : Read.bad();
    }
}
