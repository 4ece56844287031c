package dayglass.web.page.desk.price;

import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.web.page.picture.Words;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Two months beside the words for the days: what the words say is marked, and days can be chosen from them. */
public record DayCalendar(List<Month> months, String earlier, String later) {
    private static final int MONTHS = 2;

    public DayCalendar {
        months = List.copyOf(months);
    }

    /** A month as weeks that begin on Monday. */
    public record Month(String name, List<List<Day>> weeks) {
        public Month {
            weeks = weeks.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A day of a week.
     *
     * @param date of ISO 8601, which a button sends
     * @param spoken for whoever listens
     * @param use what it is used for; empty for nothing
     * @param past over already, so that nothing can be priced on it
     * @param outside it belongs to the month before or after
     */
    public record Day(
            String date, int number, String spoken, String use, boolean past, boolean today, boolean outside) {}

    /**
     * Draws it.
     *
     * @param first the month to begin with
     */
    static DayCalendar of(YearMonth first, Optional<Schedule> schedule, LocalDate today) {
        List<Month> months = new ArrayList<>();
        for (int at = 0; at < MONTHS; at++) {
            months.add(month(first.plusMonths(at), schedule, today));
        }
        String earlier =
                first.isAfter(YearMonth.from(today)) ? first.minusMonths(1).toString() : "";
        return new DayCalendar(months, earlier, first.plusMonths(1).toString());
    }

    private static Month month(YearMonth month, Optional<Schedule> schedule, LocalDate today) {
        List<List<Day>> weeks = new ArrayList<>();
        LocalDate monday = month.atDay(1).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        while (!monday.isAfter(month.atEndOfMonth())) {
            List<Day> week = new ArrayList<>();
            for (int at = 0; at < DayOfWeek.values().length; at++) {
                LocalDate date = monday.plusDays(at);
                String use = schedule.flatMap(days -> use(days, date)).orElse("");
                String spoken = Words.date(date) + (use.isEmpty() ? "" : ", " + use);
                week.add(new Day(
                        date.toString(),
                        date.getDayOfMonth(),
                        spoken,
                        use,
                        date.isBefore(today),
                        date.equals(today),
                        !YearMonth.from(date).equals(month)));
            }
            weeks.add(week);
            monday = monday.plusWeeks(1);
        }
        return new Month(Words.month(month.atDay(1)), weeks);
    }

    private static Optional<String> use(Schedule schedule, LocalDate date) {
        return schedule.spans().stream()
                .filter(span -> span.dates().contains(date))
                .map(Schedule.Span::use)
                .map(DayUse::word)
                .findFirst();
    }
}
