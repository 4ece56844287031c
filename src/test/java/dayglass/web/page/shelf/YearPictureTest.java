package dayglass.web.page.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.inventory.life.Utilisation;
import java.time.LocalDate;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A year by weeks; 30 June 2027 is a Wednesday. */
class YearPictureTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 6, 30);

    private static NavigableSet<LocalDate> days(LocalDate from, LocalDate last) {
        return new TreeSet<>(DateRange.inclusive(from, last).stream().toList());
    }

    @Test
    void eachWeekShowsWhatItsDaysWereAndNothingForDaysThatWereNotHeld() {
        Utilisation year = new Utilisation(
                Optional.of(DateRange.inclusive(LocalDate.of(2027, 6, 10), TODAY)),
                days(LocalDate.of(2027, 6, 15), LocalDate.of(2027, 6, 22)),
                days(LocalDate.of(2027, 6, 24), LocalDate.of(2027, 6, 24)));
        YearPicture picture = YearPicture.of(year, TODAY);
        assertEquals(52, picture.weeks().size());
        assertEquals("0 0 4", told(picture, 48)); // from Thursday on
        assertEquals("6 0 1", told(picture, 49));
        assertEquals("2 1 4", told(picture, 50));
        assertEquals("0 0 3", told(picture, 51)); // up to today
        assertEquals("0 0 0", told(picture, 47));
        assertEquals(
                "week of 21 Jun 2027: 2 days out, 1 on the bench, 4 idle",
                picture.weeks().get(50).title());
    }

    private static String told(YearPicture picture, int week) {
        YearPicture.Week it = picture.weeks().get(week);
        return it.out() + " " + it.bench() + " " + it.idle();
    }

    @Test
    void eachMonthIsNamedOnce() {
        Utilisation year = new Utilisation(
                Optional.of(DateRange.inclusive(TODAY.minusDays(364), TODAY)), new TreeSet<>(), new TreeSet<>());
        long named = YearPicture.of(year, TODAY).weeks().stream()
                .filter(week -> !week.month().isEmpty())
                .count();
        assertTrue(named >= 12 && named <= 13, named + " months");
    }
}
