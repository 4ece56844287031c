package dayglass.inventory.life;

import static dayglass.inventory.life.Records.HOUSE;
import static dayglass.inventory.life.Records.at;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.inventory.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days out over days available: those held without those on the bench (common practice). */
class UtilisationTest {
    private static final Instant NOON = at("2027-06-30T12:00");

    private static Utilisation year(Records records) {
        return UnitFigures.of(records.kept(), Lettings.NONE, HOUSE, NOON).lastYear();
    }

    private static Utilisation ever(Records records) {
        return UnitFigures.of(records.kept(), Lettings.NONE, HOUSE, NOON).everSince();
    }

    /** On 30 June 2027; clocks change on 28 March 2027 and 25 October 2026 (IANA time zone database, Europe/Paris). */
    @ParameterizedTest
    @CsvSource(
            nullValues = "still",
            value = {
                // went out, came back, days out
                "2027-05-03T15:00, 2027-05-08T10:00, 4",
                "2027-03-26T15:00, 2027-03-29T10:00, 2", // over the day of 23 hours
                "2026-10-24T15:00, 2026-10-26T10:00, 1", // the day of 25 hours
                "2027-05-03T09:00, 2027-05-03T12:00, 1", // some hours of one day
                "2027-06-28T15:00, still,            2", // yesterday and today
                "2027-06-30T09:00, still,            1", // since this morning
                "2026-06-01T15:00, 2026-07-03T10:00, 2", // only what lies in the year: 1 and 2 July
                "2026-05-01T15:00, 2026-06-01T10:00, 0" // before it
            })
    void daysOutAreThoseOnWhichItReallyWasOut(String out, String back, int days) {
        assertEquals(
                days,
                year(Records.bought("2020-01-01", null).wasOut(out, back)).out().size());
    }

    @Test
    void whatIsOnlyBookedWasNotOut() {
        Utilisation year = year(Records.bought("2020-01-01", null).booked("2027-05-03T15:00", "2027-05-08T10:00"));
        assertEquals(0, year.out().size());
        assertEquals(365, year.daysAvailable());
    }

    @Test
    void severalStaysOfOneDayAreOneDay() {
        assertEquals(
                1,
                year(Records.bought("2020-01-01", null)
                                .wasOut("2027-05-03T08:00", "2027-05-03T09:00")
                                .wasOut("2027-05-03T10:30", "2027-05-03T12:00")
                                .wasOut("2027-05-03T13:00", "2027-05-03T14:30"))
                        .out()
                        .size());
    }

    @ParameterizedTest
    @CsvSource({
        // bought on, days held in the last year, days held since it came
        "2020-01-01, 365, 2738",
        "2026-07-01, 365, 365",
        "2027-06-01, 30, 30",
        "2027-06-30, 1, 1",
        "2027-07-01, 0, 0" // bought, not here yet
    })
    void aUnitCountsFromTheDayOnWhichItCame(String boughtOn, int inYear, int ever) {
        assertEquals(inYear, year(Records.bought(boughtOn, null)).daysAvailable());
        assertEquals(ever, ever(Records.bought(boughtOn, null)).daysAvailable());
    }

    @Test
    void aUnitOfWhichNobodyKnowsWhenItCameCountsFromTheFirstRecordOfIt() {
        Records records = Records.ofNobodyKnowsWhen().wasOut("2027-06-21T15:00", "2027-06-26T10:00");
        assertEquals(10, ever(records).daysAvailable());
        assertEquals(Optional.of("40.0"), ever(records).percent().map(Object::toString));
    }

    @Test
    void aUnitThatLeftCountsUpToTheDayBefore() {
        Unit.Departure sold = new Unit.Departure(LocalDate.of(2027, 6, 11), "sold", Optional.empty());
        assertEquals(10, ever(Records.bought("2027-06-01", sold)).daysAvailable());
    }

    @ParameterizedTest
    @CsvSource({
        // on the bench from, to, days available of 30
        "2027-06-10T09:00, 2027-06-10T17:00, 29",
        "2027-06-10T09:00, 2027-06-12T00:00, 28", // the midnight belongs to no day
        "2027-06-29T09:00, 2027-07-09T17:00, 28", // what lies ahead is not counted
        "2027-05-20T09:00, 2027-06-02T17:00, 28" // before it was bought neither
    })
    void daysOnTheBenchAreNotAvailable(String from, String to, int available) {
        assertEquals(
                available,
                ever(Records.bought("2027-06-01", null).benched(from, to, null)).daysAvailable());
    }

    @Test
    void aDayOnTheBenchAndOutIsADayOut() {
        Utilisation ever = ever(Records.bought("2027-06-01", null)
                .wasOut("2027-06-10T08:00", "2027-06-10T12:00")
                .benched("2027-06-10T13:00", "2027-06-10T17:00", null));
        assertEquals(1, ever.out().size());
        assertEquals(30, ever.daysAvailable());
        assertEquals(Optional.of("3.3"), ever.percent().map(Object::toString));
    }

    @Test
    void anAbsenceIsAvailableAndNotOut() {
        Utilisation ever = ever(Records.bought("2027-06-01", null).away("2027-06-10T08:00", "2027-06-20T12:00"));
        assertEquals(0, ever.out().size());
        assertEquals(30, ever.daysAvailable());
    }

    @Test
    void aUnitThatWasNeverAvailableHasNoUtilisation() {
        assertEquals(Optional.empty(), year(Records.bought("2027-07-01", null)).percent());
    }

    /** Whatever happened, in whatever order, and wherever it overlaps. */
    @Property(tries = 300)
    void daysOutNeverExceedDaysAvailable(
            @ForAll @Size(max = 12) List<@IntRange(min = 0, max = 20_000) Integer> hours,
            @ForAll @IntRange(min = 0, max = 800) int boughtDaysAgo,
            @ForAll @IntRange(min = 1, max = 500) int lasting) {
        Records records = Records.bought(
                LocalDate.of(2027, 6, 30).minusDays(boughtDaysAgo).toString(), null);
        for (int hour : hours) {
            String from = NOON.minusSeconds(hour * 3600L)
                    .atZone(Records.PARIS)
                    .toLocalDateTime()
                    .toString();
            String to = NOON.minusSeconds((hour - lasting) * 3600L)
                    .atZone(Records.PARIS)
                    .toLocalDateTime()
                    .toString();
            if (hour % 3 == 0) {
                records.benched(from, to, null);
            } else if (!at(to).isAfter(NOON)) {
                records.wasOut(from, to);
            } else {
                records.wasOut(from, null);
            }
        }
        for (Utilisation each : List.of(year(records), ever(records))) {
            assertTrue(each.out().size() <= each.daysAvailable());
            assertTrue(each.daysAvailable() <= each.daysHeld());
            assertTrue(each.out().stream()
                    .allMatch(day ->
                            each.held().filter(range -> range.contains(day)).isPresent()));
        }
    }
}
