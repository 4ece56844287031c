package dayglass.web.page.shelf;

import dayglass.base.DateRange;
import dayglass.inventory.life.Utilisation;
import dayglass.web.page.picture.Words;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;

/**
 * The last 52 weeks of a unit, a column each: days out from the bottom up, days on the bench on them, idle days above.
 * What each is reads from its texture; a day on which the house did not have it is left out.
 */
public record YearPicture(List<Week> weeks) {
    private static final int WEEKS = 52;
    private static final int DAYS = 7;

    /** How wide a week is, with the gap after it. */
    public static final int WEEK_WIDTH = 12;

    /** How high a day is. */
    public static final int DAY_HEIGHT = 7;

    public YearPicture {
        weeks = List.copyOf(weeks);
    }

    /**
     * One week.
     *
     * @param month its name where the week is the first to begin in it
     */
    public record Week(int x, int out, int bench, int idle, String month, String title) {}

    public int width() {
        return weeks.size() * WEEK_WIDTH;
    }

    public int height() {
        return DAYS * DAY_HEIGHT;
    }

    static YearPicture of(Utilisation year, LocalDate today) {
        List<Week> weeks = new ArrayList<>();
        LocalDate monday =
                today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(WEEKS - 1L);
        int month = 0;
        for (int at = 0; at < WEEKS; at++) {
            LocalDate begin = monday.plusWeeks(at);
            int held = (int) new DateRange(begin, begin.plusDays(DAYS))
                    .stream()
                            .filter(day -> year.held()
                                    .filter(range -> range.contains(day))
                                    .isPresent())
                            .count();
            int out = year.out().subSet(begin, begin.plusDays(DAYS)).size();
            int bench = year.bench().subSet(begin, begin.plusDays(DAYS)).size();
            boolean named = begin.getMonthValue() != month;
            month = begin.getMonthValue();
            weeks.add(new Week(
                    at * WEEK_WIDTH,
                    out,
                    bench,
                    held - out - bench,
                    named ? Words.month(begin).substring(0, 3) : "",
                    "week of " + Words.day(begin) + ": " + Words.days(out) + " out, " + bench + " on the bench, "
                            + (held - out - bench) + " idle"));
        }
        return new YearPicture(weeks);
    }
}
