package dayglass.web.page.picture;

import dayglass.base.DateRange;
import dayglass.cost.Schedule;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The days across a picture.
 *
 * @param dayWidth of one day, in the picture's units
 * @param months their names over the days
 * @param days one a day
 */
public record Axis(DateRange dates, int dayWidth, List<Month> months, List<Day> days) {
    private static final int WIDEST_DAY = 40;
    private static final int NARROWEST_DAY = 5;
    private static final int PREFERRED_WIDTH = 1_120;
    private static final int NUMBERED_FROM = 16;
    private static final int NAMED_FROM = 26;

    public Axis {
        months = List.copyOf(months);
        days = List.copyOf(days);
    }

    /** A month's part of the axis. */
    public record Month(int x, int width, String name) {}

    /**
     * One day.
     *
     * @param use the word of what it is used for, {@code unscheduled} where no span names it
     * @param number its day of the month, or empty where there is no room for it
     * @param weekday its short name, or empty where there is no room for it
     * @param weekStart it is a Monday
     * @param title all of it in words
     */
    public record Day(int x, String use, String number, String weekday, boolean weekStart, String title) {}

    /** The axis of a part of a schedule, its days as wide as there is room for. */
    public static Axis of(Schedule schedule, DateRange dates) {
        return of(schedule, dates, Math.max(NARROWEST_DAY, Math.min(WIDEST_DAY, PREFERRED_WIDTH / dates.days())));
    }

    public static Axis of(Schedule schedule, DateRange dates, int dayWidth) {
        List<Month> months = new ArrayList<>();
        List<Day> days = new ArrayList<>();
        for (LocalDate date : dates.stream().toList()) {
            int x = days.size() * dayWidth;
            if (days.isEmpty() || date.getDayOfMonth() == 1) {
                months.add(new Month(x, monthWidth(date, dates) * dayWidth, Words.month(date)));
            }
            days.add(day(schedule, date, x, dayWidth));
        }
        return new Axis(dates, dayWidth, months, days);
    }

    private static int monthWidth(LocalDate first, DateRange dates) {
        LocalDate next = first.withDayOfMonth(1).plusMonths(1);
        return new DateRange(first, next.isBefore(dates.until()) ? next : dates.until()).days();
    }

    private static Day day(Schedule schedule, LocalDate date, int x, int dayWidth) {
        boolean monday = date.getDayOfWeek() == DayOfWeek.MONDAY;
        String use = useOn(schedule, date);
        boolean numbered = dayWidth >= NUMBERED_FROM || (monday && dayWidth >= NARROWEST_DAY);
        return new Day(
                x,
                use,
                numbered ? String.valueOf(date.getDayOfMonth()) : "",
                dayWidth >= NAMED_FROM ? Words.weekday(date) : "",
                monday,
                Words.date(date) + ", " + use);
    }

    /** The word of a day's use; {@code unscheduled} where no span names it. */
    public static String useOn(Schedule schedule, LocalDate date) {
        int day = schedule.dayOf(date);
        if (day < 0 || day >= schedule.days()) {
            return "unscheduled";
        }
        return schedule.scheduledUseOn(day).map(use -> use.word()).orElse("unscheduled");
    }

    public int width() {
        return days.size() * dayWidth;
    }

    /** Where a date begins, within the picture. */
    public int xOf(LocalDate date) {
        int day = Math.toIntExact(dates.from().until(date, java.time.temporal.ChronoUnit.DAYS));
        return Math.max(0, Math.min(days.size(), day)) * dayWidth;
    }
}
