package dayglass.web.api.inventory.booking;

import dayglass.house.LocalMoment;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.regex.Pattern;

/**
 * Moments in a request: with an offset (RFC 3339), or on the house's clock. On the house's clock an hour that occurs
 * twice is asked about, and one that does not exist is refused.
 */
public final class MomentReader {
    private static final Pattern FORM =
            Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}(?::[0-9]{2})?(Z|[+-][0-9]{2}:[0-9]{2})?");
    private static final DateTimeFormatter WITH_OFFSET = DateTimeFormatter.ISO_OFFSET_DATE_TIME;
    private static final int MOST_YEARS = 9999;

    private MomentReader() {}

    public static Reader<Instant> moment(ZoneId zone) {
        return (json, place) -> {
            Read<String> text = Readers.anyText().read(json, place);
            return text.isGood() ? moment(text.get(), zone, place) : Read.bad();
        };
    }

    static Read<Instant> moment(String text, ZoneId zone, Place place) {
        var form = FORM.matcher(text);
        if (!form.matches()) {
            return place.fault(
                    "must be a date and time such as 2027-04-12T15:00 on the house's clock, or with an offset"
                            + " such as 2027-04-12T15:00+02:00",
                    "must be a date and a time, such as 2027-04-12 15:00");
        }
        try {
            return form.group(1) != null
                    ? Read.good(OffsetDateTime.parse(text).toInstant())
                    : local(LocalDateTime.parse(text), zone, place);
        } catch (DateTimeException e) {
            return place.fault(text + " is no day and time of the calendar: check it");
        }
    }

    /** What a time on the house's clock means. */
    static Read<Instant> local(LocalDateTime local, ZoneId zone, Place place) {
        if (local.getYear() < 1 || local.getYear() > MOST_YEARS) {
            return place.fault("must lie in the years 1 to " + MOST_YEARS);
        }
        return LocalMoment.of(local, zone)
                .fold(
                        Read::good,
                        twice -> place.fault(
                                local + " occurs twice in " + zone + ", as clocks go back: write "
                                        + WITH_OFFSET.format(twice.first()) + " for the first or "
                                        + WITH_OFFSET.format(twice.second()) + " for the second",
                                local.toLocalTime()
                                        + " occurs twice on that day, as clocks go back: say which is meant"),
                        never -> place.fault(
                                local + " does not exist in " + zone + ", as clocks go forward to " + never.resumes()
                                        + ": choose another time",
                                local.toLocalTime() + " does not exist on that day, as clocks go forward to "
                                        + never.resumes().toLocalTime() + ": choose another time"));
    }
}
