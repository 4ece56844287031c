package dayglass.app;

import dayglass.base.DateRange;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days in words: {@code Mon 5 Apr – Wed 14 Apr 2027, 10 days}. */
final class DayWords {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

    private DayWords() {}

    static String of(LocalDate day) {
        return LONG.format(day);
    }

    /** Without the year, where the line above has said it. */
    static String ofShort(LocalDate day) {
        return SHORT.format(day);
    }

    static String of(DateRange days) {
        if (days.days() == 1) {
            return of(days.from());
        }
        boolean oneYear = days.from().getYear() == days.lastDay().getYear();
        return (oneYear ? ofShort(days.from()) : of(days.from())) + " – " + of(days.lastDay());
    }

    static String counted(DateRange days) {
        return of(days) + ", " + count(days.days());
    }

    static String count(int days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
