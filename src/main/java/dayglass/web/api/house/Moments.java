package dayglass.web.api.house;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** Moments on the wire: RFC 3339, to the second, with the offset that the house's zone has then. */
public final class Moments {
    private Moments() {}

    public static String text(Instant moment, ZoneId zone) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                moment.atZone(zone).withNano(0).toOffsetDateTime());
    }
}
