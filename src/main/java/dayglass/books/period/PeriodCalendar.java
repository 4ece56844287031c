package dayglass.books.period;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which period a day lies in.
 *
 * @param firstDay of the first period; empty for weeks by ISO 8601
 * @param ends the last day of each period, each later than the one before; empty for weeks
 */
public record PeriodCalendar(Optional<LocalDate> firstDay, List<LocalDate> ends) {
    public static final PeriodCalendar WEEKS = new PeriodCalendar(Optional.empty(), List.of());

    public PeriodCalendar {
        ends = List.copyOf(ends);
        if (firstDay.isPresent() == ends.isEmpty()) {
            throw new IllegalArgumentException("a calendar of its own has a first day and an end at least");
        }
        LocalDate before = firstDay.map(day -> day.minusDays(1)).orElse(LocalDate.MIN);
        for (LocalDate end : ends) {
            if (!end.isAfter(before)) {
                throw new IllegalArgumentException("periods end in order, and " + end + " does not");
            }
            before = end;
        }
    }

    public boolean isWeekly() {
        return ends.isEmpty();
    }

    /** The period of a day; empty outside of a calendar of its own. */
    public Optional<Period> of(LocalDate day) {
        if (isWeekly()) {
            return Optional.of(week(day));
        }
        LocalDate from = firstDay.orElseThrow();
        for (LocalDate end : ends) {
            if (!day.isBefore(from) && !day.isAfter(end)) {
                return Optional.of(Period.of(from, end));
            }
            from = end.plusDays(1);
        }
        return Optional.empty();
    }

    /** Monday to Sunday; the week belongs to the year of its Thursday. */
    private static Period week(LocalDate day) {
        LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        String name = String.format(
                Locale.ROOT,
                "%04d-W%02d",
                day.get(IsoFields.WEEK_BASED_YEAR),
                day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        return new Period(name, monday, monday.plusDays(6));
    }
}
