package dayglass.inventory.booking;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments in the house's time, for people: {@code Mon 12 Apr 2027, 15:00}. */
final class MomentWords {
    private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.UK);

    private MomentWords() {}

    static String of(Instant moment, ZoneId zone) {
        return WORDS.format(moment.atZone(zone));
    }
}
