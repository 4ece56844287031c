package dayglass.inventory.booking;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments in the house's time, for people: {@code Mon 12 Apr 2027, 15:00}. */
final class MomentWords {
    private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private MomentWords() {}

    /** {@code 12 Apr 2027}. */
    static String day(LocalDate day) {
        return DAY.format(day);
    }

    static String of(Instant moment, ZoneId zone) {
        return WORDS.format(moment.atZone(zone));
    }
}
