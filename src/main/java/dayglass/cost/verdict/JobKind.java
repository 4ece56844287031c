package dayglass.cost.verdict;

import dayglass.base.DateRange;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Jobs of one length. Each begins on a Monday; days between its working days are not scheduled and the glass is kept.
 *
 * @param perYear how many a year, on average
 * @param days on which the glass is used, prep included
 * @param prepDays the first of them
 * @param daysPerWeek working days from Monday on, 1 to 7
 */
public record JobKind(String name, BigDecimal perYear, int days, int prepDays, int daysPerWeek) {
    private static final int WEEK = 7;

    /** A Monday; which one makes no difference to any price. */
    private static final LocalDate MONDAY = LocalDate.of(2024, 1, 1);

    /** Days used a year. */
    public BigDecimal daysPerYear() {
        return perYear.multiply(BigDecimal.valueOf(days));
    }

    public Schedule schedule() {
        return schedule(days);
    }

    /** The most days that a schedule has room for. */
    public int mostDays() {
        return Schedule.MOST_DAYS / WEEK * daysPerWeek + Math.min(Schedule.MOST_DAYS % WEEK, daysPerWeek);
    }

    /** The calendar of a job of this kind with so many days of use, 1 to {@link #mostDays}. */
    public Schedule schedule(int used) {
        List<Schedule.Span> spans = new ArrayList<>();
        int begun = 0;
        for (int day = 1; day <= used; day++) {
            boolean runEnds = day == used || day == prepDays || (day % daysPerWeek == 0 && daysPerWeek < WEEK);
            if (runEnds) {
                DayUse use = begun < prepDays ? DayUse.PREP : DayUse.SHOOT;
                LocalDate from = MONDAY.plusDays(offset(begun));
                spans.add(new Schedule.Span(new DateRange(from, from.plusDays((long) day - begun)), use));
                begun = day;
            }
        }
        return new Schedule(spans);
    }

    private int offset(int day) {
        return day / daysPerWeek * WEEK + day % daysPerWeek;
    }
}
