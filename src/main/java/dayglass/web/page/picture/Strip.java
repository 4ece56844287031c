package dayglass.web.page.picture;

import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A schedule as weeks of days, and as one small strip. */
public record Strip(List<Week> weeks) {
    public Strip {
        weeks = List.copyOf(weeks);
    }

    /** A week from its Monday on. */
    public record Week(String name, List<Day> days) {
        public Week {
            days = List.copyOf(days);
        }
    }

    /**
     * A day.
     *
     * @param use its word, {@code unscheduled} where no span names it
     */
    public record Day(String date, String when, String month, String use, String title) {}

    /** A run of days of one use, in per cent of the schedule's length. */
    public record Run(String from, String width, String use) {}

    public static Strip of(Schedule schedule) {
        LocalDate first = schedule.horizon().from().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        LocalDate last = schedule.horizon().lastDay();
        List<Week> weeks = new ArrayList<>();
        for (LocalDate monday = first; !monday.isAfter(last); monday = monday.plusWeeks(1)) {
            List<Day> days = monday.datesUntil(monday.plusWeeks(1))
                    .map(date -> new Day(
                            date.toString(),
                            dayless(date),
                            month(date),
                            Axis.useOn(schedule, date),
                            Words.date(date) + ", " + Axis.useOn(schedule, date)))
                    .toList();
            weeks.add(new Week(weekName(monday), days));
        }
        return new Strip(weeks);
    }

    private static String dayless(LocalDate date) {
        return Words.weekday(date) + " " + date.getDayOfMonth();
    }

    private static String month(LocalDate date) {
        return date.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private static String weekName(LocalDate monday) {
        return "week of " + Words.shortDate(monday);
    }

    public static List<Run> runs(Schedule schedule) {
        List<Run> runs = new ArrayList<>();
        int start = 0;
        for (int day = 1; day <= schedule.days(); day++) {
            String use = Axis.useOn(schedule, schedule.dateOf(start));
            if (day == schedule.days()
                    || !Axis.useOn(schedule, schedule.dateOf(day)).equals(use)) {
                runs.add(new Run(percent(start, schedule.days()), percent(day - start, schedule.days()), use));
                start = day;
            }
        }
        return runs;
    }

    private static String percent(int part, int whole) {
        return String.format(Locale.ROOT, "%.3f", 100.0 * part / whole);
    }

    /** How many days of each use: {@code 3 prep, 14 shoot}. */
    public static String uses(Schedule schedule) {
        List<String> counts = new ArrayList<>();
        for (DayUse use : DayUse.values()) {
            long count = IntStream.range(0, schedule.days())
                    .filter(day ->
                            schedule.scheduledUseOn(day).filter(use::equals).isPresent())
                    .count();
            if (count > 0) {
                counts.add(count + " " + use.word());
            }
        }
        return counts.stream().collect(Collectors.joining(", "));
    }
}
