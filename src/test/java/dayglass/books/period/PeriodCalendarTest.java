package dayglass.books.period;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PeriodCalendarTest {
    /** Source: ISO 8601 week dates (a week belongs to the year of its Thursday); recomputed for the house's check values. */
    @ParameterizedTest
    @CsvSource({
        "2005-01-01, 2004-W53",
        "2008-12-29, 2009-W01",
        "2010-01-03, 2009-W53",
        "2021-01-01, 2020-W53",
        "2024-12-30, 2025-W01",
        "2026-12-28, 2026-W53",
        "2027-01-03, 2026-W53",
        "2027-01-04, 2027-W01",
        "2032-12-31, 2032-W53",
        "2038-01-03, 2037-W53"
    })
    void weeksAreThoseOfIso8601(LocalDate day, String name) {
        Period week = PeriodCalendar.WEEKS.of(day).orElseThrow();
        assertEquals(name, week.name());
        assertEquals(1, week.firstDay().getDayOfWeek().getValue());
        assertEquals(week.firstDay().plusDays(6), week.lastDay());
    }

    /** Source: ISO 8601, years of 53 weeks; the list is of the house's check values. */
    @Test
    void theseYearsAndNoOthersHaveFiftyThreeWeeks() {
        List<Integer> found = new ArrayList<>();
        for (int year = 2018; year <= 2037; year++) {
            String last = PeriodCalendar.WEEKS
                    .of(LocalDate.of(year, 12, 28))
                    .orElseThrow()
                    .name();
            if (last.equals(year + "-W53")) {
                found.add(year);
            } else {
                assertEquals(year + "-W52", last);
            }
        }
        assertEquals(List.of(2020, 2026, 2032, 2037), found);
    }

    @Test
    void aCalendarOfItsOwnHasThePeriodsThatItNames() {
        PeriodCalendar calendar = new PeriodCalendar(
                Optional.of(LocalDate.of(2027, 4, 1)), List.of(LocalDate.of(2027, 4, 30), LocalDate.of(2027, 5, 31)));
        assertEquals(Optional.empty(), calendar.of(LocalDate.of(2027, 3, 31)));
        assertEquals(
                Period.of(LocalDate.of(2027, 4, 1), LocalDate.of(2027, 4, 30)),
                calendar.of(LocalDate.of(2027, 4, 30)).orElseThrow());
        assertEquals(
                Period.of(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 5, 31)),
                calendar.of(LocalDate.of(2027, 5, 1)).orElseThrow());
        assertEquals(Optional.empty(), calendar.of(LocalDate.of(2027, 6, 1)));
    }

    @Test
    void periodsEndInOrder() {
        LocalDate first = LocalDate.of(2027, 4, 1);
        assertThrows(
                IllegalArgumentException.class,
                () -> new PeriodCalendar(Optional.of(first), List.of(first.plusDays(6), first.plusDays(6))));
        assertThrows(
                IllegalArgumentException.class,
                () -> new PeriodCalendar(Optional.of(first), List.of(first.minusDays(1))));
        assertThrows(IllegalArgumentException.class, () -> new PeriodCalendar(Optional.of(first), List.of()));
    }
}
