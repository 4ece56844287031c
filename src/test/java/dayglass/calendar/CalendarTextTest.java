package dayglass.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is an iCalendar object by RFC 5545, each edge with its section. */
class CalendarTextTest {
    private static final Instant STAMP = Instant.parse("2027-03-03T09:00:00Z");

    private static Event days(String first, String last, String summary) {
        return new Event(
                "one",
                new Event.When.Days(DateRange.inclusive(LocalDate.parse(first), LocalDate.parse(last))),
                summary,
                "");
    }

    private static String text(Event event) {
        return CalendarText.of("The house", List.of(event), STAMP);
    }

    /** Section 3.1, undone: a line end with a space after it is no line end. */
    private static List<String> unfolded(String text) {
        return List.of(text.replace("\r\n ", "").split("\r\n", -1));
    }

    private static String value(String text, String property) {
        return unfolded(text).stream()
                .filter(line -> line.startsWith(property + ":"))
                .map(line -> line.substring(property.length() + 1))
                .findFirst()
                .orElseThrow();
    }

    /** Section 3.3.11, undone. */
    private static String unescaped(String value) {
        StringBuilder words = new StringBuilder();
        for (int at = 0; at < value.length(); at++) {
            char next = value.charAt(at);
            if (next == '\\') {
                at++;
                words.append(value.charAt(at) == 'n' ? '\n' : value.charAt(at));
            } else {
                words.append(next);
            }
        }
        return words.toString();
    }

    /** Sections 3.4, 3.6 and 3.6.1: what a calendar and an event must have, and in which order it begins and ends. */
    @Test
    void aCalendarHasWhatTheStandardAsksFor() {
        assertEquals(
                List.of(
                        "BEGIN:VCALENDAR",
                        "VERSION:2.0",
                        "PRODID:-//Dayglass//Dayglass//EN",
                        "NAME:The house",
                        "REFRESH-INTERVAL;VALUE=DURATION:PT1H",
                        "BEGIN:VEVENT",
                        "UID:one",
                        "DTSTAMP:20270303T090000Z",
                        "DTSTART:20270302T140000Z",
                        "SUMMARY:Out",
                        "DESCRIPTION:DG-1\\nDG-2",
                        "TRANSP:TRANSPARENT",
                        "END:VEVENT",
                        "END:VCALENDAR",
                        ""),
                unfolded(text(new Event(
                        "one", new Event.When.Moment(Instant.parse("2027-03-02T14:00:00Z")), "Out", "DG-1\nDG-2"))));
    }

    /** Section 3.6.1: the end of whole days is the day after the last, which belongs to the event no more. */
    @ParameterizedTest
    @CsvSource({
        "2027-04-09, 2027-04-09, 20270409, 20270410",
        "2027-12-31, 2027-12-31, 20271231, 20280101", // the year's end
        "2028-02-28, 2028-02-29, 20280228, 20280301", // a leap day
        "2027-03-28, 2027-03-28, 20270328, 20270329" // whole days have no zone, so clocks that change do not matter
    })
    void wholeDaysEndExclusively(String first, String last, String start, String end) {
        String text = text(days(first, last, "Service due"));
        assertEquals(start, value(text, "DTSTART;VALUE=DATE"));
        assertEquals(end, value(text, "DTEND;VALUE=DATE"));
    }

    /** Section 3.3.11: backslash, semicolon, comma and line end are escaped; a colon and a quote are not. */
    @Test
    void textIsEscaped() {
        String text = text(days("2027-04-09", "2027-04-09", "a\\b;c,d:e\"f\ng\r\nh"));
        assertEquals("a\\\\b\\;c\\,d:e\"f\\ng\\nh", value(text, "SUMMARY"));
    }

    /** Section 3.1 (CONTROL in 3.1's grammar): no control character but the tab has a place in a value. */
    @Test
    void controlCharactersAreLeftOut() {
        assertEquals("ab", value(text(days("2027-04-09", "2027-04-09", "a\u0000\u0007\u001b\u0085b")), "SUMMARY"));
    }

    /** Section 3.1: lines of 75 octets stand, longer ones are folded; octets count, not characters. */
    @ParameterizedTest
    @ValueSource(ints = {66, 67, 68, 140, 141, 142, 143})
    void linesAreFoldedAtSeventyFiveOctets(int length) {
        String summary = "x".repeat(length);
        String text = text(days("2027-04-09", "2027-04-09", summary));
        assertEquals(summary, value(text, "SUMMARY"));
        List<String> lines = List.of(text.split("\r\n", -1));
        assertTrue(lines.stream().allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75), text);
        long folds = lines.stream().filter(line -> line.startsWith(" ")).count();
        // "SUMMARY:" takes 8 octets of the first line and the space one of each further one.
        assertEquals(length <= 67 ? 0 : (length - 67 + 73) / 74, folds);
    }

    /** Whatever was written is read again, in lines that are whole UTF-8 of at most 75 octets each. */
    @Property
    void whateverIsWrittenIsReadAgain(@ForAll @StringLength(max = 300) String any) {
        String summary = any.codePoints()
                .filter(character -> character == '\n' || !Character.isISOControl(character))
                .filter(character -> Character.getType(character) != Character.SURROGATE)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        String text = text(days("2027-04-09", "2027-04-09", summary));
        assertEquals(summary, unescaped(value(text, "SUMMARY")));
        for (String line : text.split("\r\n", -1)) {
            byte[] octets = line.getBytes(StandardCharsets.UTF_8);
            assertTrue(octets.length <= 75);
            assertEquals(line, new String(octets, StandardCharsets.UTF_8));
        }
    }
}
