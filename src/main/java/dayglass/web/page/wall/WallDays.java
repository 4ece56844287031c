package dayglass.web.page.wall;

import dayglass.base.DateRange;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The wall's columns: a day of the house's calendar each, all of one width whether it has 23, 24 or 25 hours, so that a
 * time of day always stands at the same place of its day.
 */
public final class WallDays {
    /** The width of a day in the picture's units. */
    public static final int DAY_WIDTH = 30;

    private static final double SECONDS = 86_400;
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEEE", Locale.UK);
    private static final DateTimeFormatter TITLE = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);

    private final DateRange days;
    private final ZoneId zone;

    WallDays(DateRange days, ZoneId zone) {
        this.days = days;
        this.zone = zone;
    }

    /**
     * A day's column.
     *
     * @param month its name where the column is the first of one
     */
    public record Column(int x, String weekday, int number, String title, boolean weekStart, String month) {}

    public int width() {
        return days.days() * DAY_WIDTH;
    }

    public List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        days.stream().forEach(day -> {
            boolean named = day.equals(days.from()) || day.getDayOfMonth() == 1;
            columns.add(new Column(
                    columns.size() * DAY_WIDTH,
                    WEEKDAY.format(day),
                    day.getDayOfMonth(),
                    TITLE.format(day),
                    day.getDayOfWeek() == DayOfWeek.MONDAY,
                    named ? MONTH.format(day) : ""));
        });
        return columns;
    }

    Instant begin() {
        return days.from().atStartOfDay(zone).toInstant();
    }

    Instant end() {
        return days.until().atStartOfDay(zone).toInstant();
    }

    /** Where a moment stands, at an edge where it lies outside. */
    int x(Instant moment) {
        LocalDateTime local = moment.atZone(zone).toLocalDateTime();
        LocalDate day = local.toLocalDate();
        if (day.isBefore(days.from())) {
            return 0;
        }
        if (!day.isBefore(days.until())) {
            return width();
        }
        double part = local.toLocalTime().toSecondOfDay() / SECONDS;
        return (int) Math.round((ChronoUnit.DAYS.between(days.from(), day) + part) * DAY_WIDTH);
    }
}
