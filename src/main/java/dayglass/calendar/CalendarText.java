package dayglass.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * Writes a calendar as an iCalendar object (RFC 5545, with the name and the interval of RFC 7986): CRLF line ends, lines
 * of at most 75 octets, text escaped, moments in UTC, whole days with an exclusive end.
 */
public final class CalendarText {
    private static final String END = "\r\n";
    private static final int MOST_OCTETS = 75;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final StringBuilder text = new StringBuilder();

    private CalendarText() {}

    /**
     * The whole calendar.
     *
     * @param name as a reader's program shows it
     * @param stamp when it was told
     */
    public static String of(String name, List<Event> events, Instant stamp) {
        CalendarText calendar = new CalendarText();
        calendar.line("BEGIN", "VCALENDAR");
        calendar.line("VERSION", "2.0");
        calendar.line("PRODID", "-//Dayglass//Dayglass//EN");
        calendar.line("NAME", escaped(name));
        calendar.line("REFRESH-INTERVAL;VALUE=DURATION", "PT1H");
        events.forEach(event -> calendar.event(event, stamp));
        calendar.line("END", "VCALENDAR");
        return calendar.text.toString();
    }

    private void event(Event event, Instant stamp) {
        line("BEGIN", "VEVENT");
        line("UID", escaped(event.uid()));
        line("DTSTAMP", MOMENT.format(stamp));
        event.when()
                .fold(
                        whole -> line(
                                        "DTSTART;VALUE=DATE",
                                        DAY.format(whole.days().from()))
                                .line(
                                        "DTEND;VALUE=DATE",
                                        DAY.format(whole.days().until())),
                        moment -> line("DTSTART", MOMENT.format(moment.at())));
        line("SUMMARY", escaped(event.summary()));
        if (!event.description().isEmpty()) {
            line("DESCRIPTION", escaped(event.description()));
        }
        line("TRANSP", "TRANSPARENT");
        line("END", "VEVENT");
    }

    /** Section 3.3.11; what else is a control character has no place in text at all. */
    private static String escaped(String words) {
        StringBuilder escaped = new StringBuilder();
        words.replace("\r\n", "\n").codePoints().forEach(character -> {
            if (character == '\\' || character == ';' || character == ',') {
                escaped.append('\\').appendCodePoint(character);
            } else if (character == '\n' || character == '\r') {
                escaped.append("\\n");
            } else if (!Character.isISOControl(character)) {
                escaped.appendCodePoint(character);
            }
        });
        return escaped.toString();
    }

    /** Section 3.1: a line is folded before its 76th octet, never inside a character. */
    private CalendarText line(String property, String value) {
        int octets = 0;
        for (int character : (property + ":" + value).codePoints().toArray()) {
            String one = Character.toString(character);
            int size = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > MOST_OCTETS) {
                text.append(END).append(' ');
                octets = 1;
            }
            text.append(one);
            octets += size;
        }
        text.append(END);
        return this;
    }
}
