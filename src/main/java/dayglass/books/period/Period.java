package dayglass.books.period;

import java.time.LocalDate;

/**
 * A run of days that is closed as one.
 *
 * @param name {@code 2026-W53} for a week of ISO 8601, else its first and last day
 */
public record Period(String name, LocalDate firstDay, LocalDate lastDay) {
    public Period {
        if (lastDay.isBefore(firstDay)) {
            throw new IllegalArgumentException("a period does not end before it begins");
        }
    }

    /** By its days alone. */
    public static Period of(LocalDate firstDay, LocalDate lastDay) {
        return new Period(firstDay + " to " + lastDay, firstDay, lastDay);
    }
}
