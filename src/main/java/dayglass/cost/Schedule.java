package dayglass.cost;

import dayglass.base.DateRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The days of a job. The horizon runs from the first scheduled day to the last; days are also counted from 0 at its
 * first day, which is how the computations name them.
 */
public final class Schedule {
    /** A run of days put to one use. */
    public record Span(DateRange dates, DayUse use) {}

    /** The longest horizon, in days. */
    public static final int MOST_DAYS = 1_100;

    private final List<Span> spans;
    private final DateRange horizon;
    private final List<Optional<DayUse>> uses;

    /**
     * @param spans at least one, in any order, none overlapping another, together no longer than {@link #MOST_DAYS}
     * @throws IllegalArgumentException where that is not so
     */
    public Schedule(List<Span> spans) {
        this.spans = spans.stream()
                .sorted(Comparator.comparing(span -> span.dates().from()))
                .toList();
        if (this.spans.isEmpty()) {
            throw new IllegalArgumentException("a schedule needs a day");
        }
        this.horizon = new DateRange(
                this.spans.get(0).dates().from(),
                this.spans.get(this.spans.size() - 1).dates().until());
        if (horizon.days() > MOST_DAYS) {
            throw new IllegalArgumentException("a schedule of " + horizon.days() + " days is too long");
        }
        this.uses = new ArrayList<>(java.util.Collections.nCopies(horizon.days(), Optional.empty()));
        for (Span span : this.spans) {
            for (int day = dayOf(span.dates().from()); day < dayOf(span.dates().until()); day++) {
                if (uses.set(day, Optional.of(span.use())).isPresent()) {
                    throw new IllegalArgumentException("two spans share " + dateOf(day));
                }
            }
        }
    }

    /** The spans by date. */
    public List<Span> spans() {
        return spans;
    }

    public DateRange horizon() {
        return horizon;
    }

    public int days() {
        return uses.size();
    }

    /** What the day is used for; a day inside the horizon that no span names is dark. */
    public DayUse useOn(int day) {
        return uses.get(day).orElse(DayUse.DARK);
    }

    /** The use that a span gives the day, or empty where none names it. */
    public Optional<DayUse> scheduledUseOn(int day) {
        return uses.get(day);
    }

    public DayOfWeek weekdayOf(int day) {
        return dateOf(day).getDayOfWeek();
    }

    public LocalDate dateOf(int day) {
        return horizon.from().plusDays(day);
    }

    /** The number of a date, below 0 or from {@link #days()} on where it lies outside the horizon. */
    public int dayOf(LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(horizon.from(), date));
    }

    /** Schedules of the same spans are equal. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Schedule schedule && spans.equals(schedule.spans);
    }

    @Override
    public int hashCode() {
        return spans.hashCode();
    }

    @Override
    public String toString() {
        return "Schedule" + spans;
    }
}
