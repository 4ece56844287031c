package dayglass.inventory.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Currency;
import dayglass.house.House;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Entered;
import dayglass.inventory.booking.Occupation.Handling;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Stay;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What falls due, on a house in Paris whose units go out at 15:00 and are back at 10:00 (common practice). */
class ServiceHistoryTest {
    private static final ZoneId PARIS = ZoneId.of("Europe/Paris");
    private static final House HOUSE = new House(
            "The house", PARIS, Currency.of("EUR"), LocalTime.of(15, 0), LocalTime.of(10, 0), Duration.ofHours(2));
    private static final Unit.Id UNIT = new Unit.Id(1);
    private static final Instant NOW = at("2027-06-01T12:00");

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(PARIS).toInstant();
    }

    private static Occupation entered(Kind kind, String out, String back, Handling handling, boolean done) {
        return new Occupation(
                UNIT,
                kind,
                Stay.of(at(out), at(back), Duration.ZERO),
                "Lantern Weir",
                false,
                handling,
                new Entered(new Person.Id(1), NOW),
                kind == Kind.BENCH ? Optional.of(new BenchWork("", "", "", Optional.empty(), done)) : Optional.empty());
    }

    private static Occupation booked(String out, String back) {
        return entered(Kind.BOOKING, out, back, Handling.NOT_YET, false);
    }

    private static ServicePlan plan(@Nullable Integer months, @Nullable Integer daysOut, String lastDone) {
        return new ServicePlan(
                UNIT, Optional.ofNullable(months), Optional.ofNullable(daysOut), LocalDate.parse(lastDone));
    }

    private static ServiceDue due(ServicePlan plan, Occupation... ofUnit) {
        return new ServiceHistory(plan, List.of(ofUnit)).due(HOUSE, NOW);
    }

    /** A month is one of the calendar: java.time clips to the last day where there is no such day. */
    @ParameterizedTest
    @CsvSource({
        "12, 2026-06-02, 2027-06-02, false",
        "12, 2026-05-31, 2027-05-31, true",
        "12, 2026-06-01, 2027-06-01, false", // due today, and still good to go out
        "6,  2026-08-31, 2027-02-28, true", // no 31 February
        "12, 2024-02-29, 2025-02-28, true" // leap day
    })
    void monthsAreCountedOnTheCalendar(int months, String lastDone, String dueOn, boolean overdue) {
        ServiceDue due = due(plan(months, null, lastDone));
        assertEquals(Optional.of(LocalDate.parse(dueOn)), due.dueOn());
        assertEquals(overdue, due.overdueOn(LocalDate.of(2027, 6, 1)));
    }

    @ParameterizedTest
    @CsvSource({
        // out, back, days out: neither the usual afternoon nor the usual morning counts
        "2027-05-03T15:00, 2027-05-08T10:00, 4",
        "2027-05-03T15:00, 2027-05-05T10:00, 1",
        "2027-05-03T14:59, 2027-05-05T10:00, 2", // collected on the day itself
        "2027-05-03T15:00, 2027-05-05T10:01, 2", // back late on the last day
        "2027-05-03T16:00, 2027-05-04T09:00, 1", // a night: a day at least
        "2027-05-03T11:00, 2027-05-03T14:00, 1", // hours of one day
        "2027-03-27T15:00, 2027-03-29T10:00, 1", // the day of 23 hours, Europe/Paris, IANA time zone database
        "2026-10-24T15:00, 2026-10-26T10:00, 1", // the day of 25 hours
        "2024-02-28T15:00, 2024-03-01T10:00, 1" // the leap day itself
    })
    void daysOutAreThoseOfUse(String out, String back, int days) {
        assertEquals(days, due(plan(null, 100, "2024-01-01"), booked(out, back)).daysOut());
    }

    @Test
    void theDayOnWhichTheDaysAreReachedIsPredictedFromWhatIsBooked() {
        ServicePlan plan = plan(null, 6, "2027-05-01");
        Occupation past = booked("2027-05-03T15:00", "2027-05-08T10:00");
        Occupation ahead = booked("2027-07-01T15:00", "2027-07-05T10:00");
        ServiceDue due = due(plan, past, ahead);
        assertEquals(4, due.daysOut());
        assertEquals(Optional.of(LocalDate.of(2027, 7, 3)), due.dueOn());
        assertEquals("days out", due.reason());
        assertEquals(Optional.empty(), due(plan, past).dueOn());
    }

    @Test
    void whicheverComesFirstDecides() {
        Occupation past = booked("2027-05-03T15:00", "2027-05-08T10:00");
        assertEquals("days out", due(plan(3, 4, "2027-05-01"), past).reason());
        assertEquals(
                Optional.of(LocalDate.of(2027, 5, 7)),
                due(plan(3, 4, "2027-05-01"), past).dueOn());
        assertEquals("months", due(plan(3, 90, "2027-05-01"), past).reason());
    }

    @Test
    void aFinishedVisitSetsTheNextAndAnOlderOneDoesNotMoveItBack() {
        ServicePlan plan = plan(12, null, "2026-09-01");
        Occupation visit = entered(Kind.BENCH, "2027-02-01T09:00", "2027-02-03T17:00", Handling.NOT_YET, true);
        Occupation older = entered(Kind.BENCH, "2026-03-01T09:00", "2026-03-02T17:00", Handling.NOT_YET, true);
        assertEquals(
                Optional.of(LocalDate.of(2028, 2, 3)), due(plan, visit, older).dueOn());
        assertEquals(Optional.of(LocalDate.of(2027, 9, 1)), due(plan, older).dueOn());
    }

    @Test
    void aVisitThatIsOnlyPlannedCountsForWhatIsAskedAfterItAlone() {
        ServicePlan plan = plan(12, null, "2026-05-01");
        Occupation planned = entered(Kind.BENCH, "2027-06-10T09:00", "2027-06-11T17:00", Handling.NOT_YET, false);
        ServiceHistory history = new ServiceHistory(plan, List.of(planned));
        assertEquals(
                Optional.of(LocalDate.of(2027, 5, 1)), history.due(HOUSE, NOW).dueOn());
        assertEquals(
                Optional.of(LocalDate.of(2027, 5, 1)),
                history.dueAt(at("2027-06-11T16:00"), HOUSE, NOW).dueOn());
        assertEquals(
                Optional.of(LocalDate.of(2028, 6, 11)),
                history.dueAt(at("2027-06-12T15:00"), HOUSE, NOW).dueOn());
        Occupation neverDone = entered(Kind.BENCH, "2027-05-10T09:00", "2027-05-11T17:00", Handling.NOT_YET, false);
        assertEquals(
                Optional.of(LocalDate.of(2027, 5, 1)),
                new ServiceHistory(plan, List.of(neverDone))
                        .dueAt(at("2027-06-12T15:00"), HOUSE, NOW)
                        .dueOn());
    }

    @Test
    void whatReallyWasCountsAndOneThatIsLateGoesOnCounting() {
        ServicePlan plan = plan(null, 100, "2027-05-01");
        Handling early = new Handling(Optional.of(at("2027-05-03T15:00")), Optional.of(at("2027-05-06T10:00")));
        assertEquals(
                2,
                due(plan, entered(Kind.BOOKING, "2027-05-03T15:00", "2027-05-20T10:00", early, false))
                        .daysOut());
        Handling out = new Handling(Optional.of(at("2027-05-24T15:00")), Optional.empty());
        // Due on the 26th, and out still at noon on 1 June: the 25th to 1 June.
        assertEquals(
                8,
                due(plan, entered(Kind.BOOKING, "2027-05-24T15:00", "2027-05-26T10:00", out, false))
                        .daysOut());
    }

    /** Against a walk over the days of a year, each asked of every stay by itself. */
    @Property
    void daysOutAgreeWithAWalkOverTheCalendar(
            @ForAll @Size(max = 8) List<@IntRange(min = 0, max = 300) Integer> starts,
            @ForAll @IntRange(min = 1, max = 20) int length,
            @ForAll @IntRange(min = 1, max = 60) int every) {
        LocalDate first = LocalDate.of(2027, 1, 2);
        List<Occupation> stays = new ArrayList<>();
        TreeSet<LocalDate> walked = new TreeSet<>();
        for (int start : starts) {
            LocalDate out = first.plusDays(start);
            LocalDate back = out.plusDays(length + 1L);
            stays.add(booked(out + "T15:00", back + "T10:00"));
            for (LocalDate day = first; day.getYear() == 2027 || day.getYear() == 2028; day = day.plusDays(1)) {
                if (day.isAfter(out) && day.isBefore(back)) {
                    walked.add(day);
                }
            }
        }
        ServiceDue due = new ServiceHistory(plan(null, every, "2027-01-01"), stays).due(HOUSE, NOW);
        LocalDate today = LocalDate.of(2027, 6, 1);
        assertEquals(walked.stream().filter(day -> !day.isAfter(today)).count(), due.daysOut());
        assertEquals(walked.stream().skip(every - 1L).findFirst(), due.byDaysOut());
    }
}
