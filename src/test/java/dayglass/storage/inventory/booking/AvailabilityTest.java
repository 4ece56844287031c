package dayglass.storage.inventory.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Stay;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the database says is free, against a walk through every quarter of an hour. */
class AvailabilityTest {
    private static final List<Kind> KINDS = List.of(Kind.values());
    private static final Duration QUARTER = Duration.ofMinutes(15);
    private static final Instant BEGIN = Instant.parse("2027-03-22T00:00:00Z");
    private static final int QUARTERS = 14 * 96;

    @TempDir
    Path folder;

    private static boolean[] busy(BookedHouse house, Unit.Id unit) {
        boolean[] busy = new boolean[QUARTERS * 2];
        Occupations.Which all =
                new Occupations.Which(Optional.empty(), Optional.of(unit), Optional.empty(), Optional.empty());
        for (Stored<Occupation.Id, Occupation> each :
                house.whereabouts().occupations().list(all, Optional.empty(), 10_000)) {
            Stay stay = each.facts().stay();
            for (int at = 0; at < busy.length && !each.facts().cancelled(); at++) {
                Instant quarter = BEGIN.plus(QUARTER.multipliedBy(at));
                busy[at] |= !quarter.isBefore(stay.out()) && quarter.isBefore(stay.freeAt());
            }
        }
        return busy;
    }

    private static boolean free(boolean[] busy, int from, int until) {
        for (int at = from; at < until; at++) {
            if (busy[at]) {
                return false;
            }
        }
        return true;
    }

    /** Random bookings, bench visits and absences, some cancelled; whatever was refused overlapped, and nothing else. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void freeIsWhatNoQuarterOfAnHourContradicts(long seed) {
        Random random = new Random(seed);
        try (BookedHouse house = new BookedHouse(folder, 6, "Europe/Paris")) {
            for (int round = 0; round < 150; round++) {
                Unit.Id unit = house.units.get(random.nextInt(house.units.size()));
                int from = random.nextInt(QUARTERS);
                int length = 1 + random.nextInt(200);
                boolean expected = free(busy(house, unit), from, Math.min(from + length, QUARTERS * 2));
                Kind kind = KINDS.get(random.nextInt(KINDS.size()));
                boolean entered =
                        house.enter(unit, kind, BEGIN.plus(QUARTER.multipliedBy(from)), QUARTER.multipliedBy(length));
                assertEquals(expected, entered, "round " + round);
                if (entered && random.nextInt(4) == 0) {
                    cancelLast(house, unit);
                }
            }
            for (int question = 0; question < 60; question++) {
                ask(house, random.nextInt(QUARTERS), 1 + random.nextInt(100));
            }
        }
    }

    private static void cancelLast(BookedHouse house, Unit.Id unit) {
        Occupations.Which all =
                new Occupations.Which(Optional.empty(), Optional.of(unit), Optional.empty(), Optional.empty());
        List<Stored<Occupation.Id, Occupation>> entered =
                house.whereabouts().occupations().list(all, Optional.empty(), 10_000);
        Stored<Occupation.Id, Occupation> last = entered.get(entered.size() - 1);
        boolean cancelled = house.whereabouts().bookUnits().cancel(last).fold(done -> true, problem -> false);
        assertTrue(cancelled);
    }

    private static void ask(BookedHouse house, int from, int length) {
        Instant out = BEGIN.plus(QUARTER.multipliedBy(from));
        Availability availability = house.whereabouts().availability();
        Stay stay = availability.stay(out, out.plus(QUARTER.multipliedBy(length)));
        for (Availability.OfUnit each :
                availability.during(stay, Optional.empty()).units()) {
            boolean[] busy = busy(house, each.unit().unit());
            assertEquals(free(busy, from, from + length), each.free());
            int next = from;
            while (!free(busy, next, Math.min(next + length, busy.length))) {
                next++;
            }
            assertEquals(BEGIN.plus(QUARTER.multipliedBy(next)), each.nextFree().orElse(out));
        }
    }

    /** A day of use takes from 15:00 on the day before to 10:00 on the day after; Paris, clocks forward on 28 March. */
    @ParameterizedTest
    @CsvSource({
        "2027-03-27T15:00, 2027-03-29T10:00, 2027-03-27 2027-03-28 2027-03-29", // out from the 27th, back on the 29th
        "2027-03-28T00:30, 2027-03-28T01:30, 2027-03-27 2027-03-28",
        "2027-03-27T10:00, 2027-03-27T14:59, 2027-03-27",
        "2027-03-27T10:00, 2027-03-27T15:01, 2027-03-27 2027-03-28",
        "2027-03-29T15:00, 2027-03-29T16:00, 2027-03-29 2027-03-30"
    })
    void aUnitServesOnTheDaysThatNothingTouches(String out, String back, String taken) {
        try (BookedHouse house = new BookedHouse(folder, 1, "Europe/Paris")) {
            House facts = house.rooms.household().settings().now().facts();
            Instant from =
                    java.time.LocalDateTime.parse(out).atZone(facts.zone()).toInstant();
            Instant until =
                    java.time.LocalDateTime.parse(back).atZone(facts.zone()).toInstant();
            assertTrue(house.enter(house.units.get(0), Kind.BENCH, from, Duration.between(from, until)));
            DateRange horizon = DateRange.inclusive(LocalDate.of(2027, 3, 26), LocalDate.of(2027, 3, 31));
            TreeSet<LocalDate> expected = new TreeSet<>(horizon.stream().toList());
            for (String day : taken.split(" ", -1)) {
                expected.remove(LocalDate.parse(day));
            }
            assertEquals(expected, house.whereabouts().freeDays().of(house.units.get(0), horizon, "another job"));
        }
    }

    @Test
    void bookingsForTheJobItselfStandInNobodysWay() {
        try (BookedHouse house = new BookedHouse(folder, 1, "Europe/Paris")) {
            Instant out = ZonedDateTime.parse("2027-03-26T15:00+01:00").toInstant();
            assertTrue(house.enter(house.units.get(0), Kind.BOOKING, out, Duration.ofDays(2)));
            DateRange horizon = DateRange.inclusive(LocalDate.of(2027, 3, 27), LocalDate.of(2027, 3, 28));
            assertEquals(
                    2,
                    house.whereabouts()
                            .freeDays()
                            .of(house.units.get(0), horizon, "Lantern Weir")
                            .size());
            assertEquals(
                    List.of(),
                    new ArrayList<>(house.whereabouts().freeDays().of(house.units.get(0), horizon, "Salt Lane")));
        }
    }
}
