package dayglass.base;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A run of whole days, half-open: {@code from} belongs to it, {@code until} does not. Never empty.
 *
 * @param from the first day
 * @param until the day after the last
 */
public record DateRange(LocalDate from, LocalDate until) {
    public DateRange {
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("a range of days from " + from + " cannot end before " + until);
        }
    }

    /** From the first day to the last, both included. */
    public static DateRange inclusive(LocalDate first, LocalDate last) {
        return new DateRange(first, last.plusDays(1));
    }

    public LocalDate lastDay() {
        return until.minusDays(1);
    }

    public int days() {
        return Math.toIntExact(ChronoUnit.DAYS.between(from, until));
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(until);
    }

    public boolean overlaps(DateRange other) {
        return from.isBefore(other.until) && other.from.isBefore(until);
    }

    /** The days of both; empty where there are none. */
    public Optional<DateRange> within(DateRange other) {
        return overlaps(other)
                ? Optional.of(new DateRange(
                        from.isBefore(other.from) ? other.from : from,
                        until.isAfter(other.until) ? other.until : until))
                : Optional.empty();
    }

    public Stream<LocalDate> stream() {
        return from.datesUntil(until);
    }
}
