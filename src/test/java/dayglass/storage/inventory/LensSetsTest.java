package dayglass.storage.inventory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.inventory.Holding;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.storage.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sets, who is in them and who was; and what keeps a unit from being removed. */
class LensSetsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Database database;

    @SuppressWarnings("NullAway.Init") // set before each test
    private JooqUnits units;

    @SuppressWarnings("NullAway.Init") // set before each test
    private JooqLensSets sets;

    private Instant now = Instant.parse("2026-11-25T10:00:00Z");

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("house.db"));
        units = new JooqUnits(database);
        sets = new JooqLensSets(database, new Clock() {
            @Override
            public ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
                throw new UnsupportedOperationException();
            }

            @Override
            public Instant instant() {
                return now;
            }
        });
        List.of("a", "b", "c").forEach(tag -> done(units.add(unit(tag))));
    }

    @AfterEach
    void close() {
        database.close();
    }

    private static Unit unit(String tag) {
        return Unit.serving(tag, new Unit.Use(Map.of("40 mm", 1), List.of()));
    }

    private static LensSet set(String name, long... members) {
        return new LensSet(
                name,
                true,
                java.util.Arrays.stream(members).mapToObj(Unit.Id::new).toList(),
                Map.of());
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem);
        });
    }

    private static Problem refused(Outcome<?> outcome) {
        return outcome.fold(
                value -> {
                    throw new AssertionError("it was done");
                },
                problem -> problem);
    }

    @Test
    void membersComeBackInTheirOrder() {
        LensSet.Id id = done(sets.add(set("pier", 3, 1, 2))).id();
        assertEquals(set("pier", 3, 1, 2), sets.find(id).orElseThrow().facts());
        done(sets.change(new Stored<>(id, 1, set("pier", 2, 3, 1))));
        assertEquals(set("pier", 2, 3, 1), sets.find(id).orElseThrow().facts());
    }

    @Test
    void historySaysWhoWasInFromWhenToWhen() {
        LensSet.Id id = done(sets.add(set("pier", 1, 2))).id();
        Instant first = now;
        now = now.plusSeconds(60);
        done(sets.change(new Stored<>(id, 1, set("pier", 2, 3))));
        Instant second = now;
        now = now.plusSeconds(60);
        done(sets.change(new Stored<>(id, 2, set("pier", 1, 2, 3))));
        assertEquals(
                List.of(
                        new LensSet.Membership(new Unit.Id(1), first, Optional.of(second)),
                        new LensSet.Membership(new Unit.Id(2), first, Optional.empty()),
                        new LensSet.Membership(new Unit.Id(3), second, Optional.empty()),
                        new LensSet.Membership(new Unit.Id(1), now, Optional.empty())),
                sets.history(id));
    }

    @Test
    void aUnitIsInOneSetAtMostAndTheRefusalNamesIt() {
        done(sets.add(set("pier", 1, 2)));
        Problem problem = refused(sets.add(set("quay", 3, 2)));
        assertEquals("/members/1", problem.faults().get(0).pointer());
        assertTrue(problem.faults().get(0).message().contains("the set pier"), problem.toString());
        assertTrue(sets.named("quay").isEmpty(), "nothing was stored");
        done(sets.change(new Stored<>(new LensSet.Id(1), 1, set("pier", 1))));
        done(sets.add(set("quay", 3, 2)));
        assertEquals("quay", sets.holding(new Unit.Id(2)).orElseThrow().facts().name());
    }

    @Test
    void theDatabaseItselfKeepsAUnitOutOfTwoSets() {
        done(sets.add(set("pier", 1)));
        done(sets.add(set("quay")));
        assertThrows(
                DataAccessException.class,
                () -> database.writing(sql -> Outcome.done(sql.execute(
                        "INSERT INTO set_membership (lens_set_id, unit_id, place, joined_at) VALUES (2, 1, 0, 0)"))));
    }

    @Test
    void namesAreUniqueAndUnknownUnitsAreTold() {
        done(sets.add(set("pier")));
        assertEquals(Problem.Code.ALREADY_THERE, refused(sets.add(set("pier"))).code());
        assertEquals(
                "/members/1",
                refused(sets.add(set("quay", 1, 77))).faults().get(0).pointer());
    }

    @Test
    void aSetServesWhatItsMembersDoUnlessItSaysOtherwise() {
        List<Unit> members =
                List.of(unit("a"), Unit.serving("b", new Unit.Use(Map.of("40 mm", 1, "50 mm", 2), List.of())));
        assertEquals(Map.of("40 mm", 2, "50 mm", 2), set("pier", 1, 2).covers(members));
        LensSet own = new LensSet("pier", true, List.of(new Unit.Id(1)), Map.of("matched set", 1));
        assertEquals(Map.of("matched set", 1), own.covers(members));
        LensSet.Id id = done(sets.add(own)).id();
        assertEquals(own, sets.find(id).orElseThrow().facts());
    }

    @ParameterizedTest
    @CsvSource({
        "'INSERT INTO condition_note VALUES (NULL, 1, 0, 1, ''iris'', ''oil'', 1, 0, ''x'')', condition note 1",
        "'INSERT INTO occupation VALUES (NULL, 1, 1, ''booking'', 1, 2, 3, 0, ''x'', 1, 0, NULL, NULL, ''{}'')', occupation 1",
        "'INSERT INTO hold VALUES (NULL, 1, 1, 1, 2, 1, 3, ''x'', 1, 0)', hold 1",
        "'INSERT INTO service_plan VALUES (NULL, 1, 1, 6, NULL, ''2026-01-01'')', service plan 1"
    })
    void aUnitIsNotRemovedWhileAnythingPointsToIt(String row, String by) {
        done(database.writing(sql -> Outcome.done(sql.execute(row))));
        Problem problem = refused(units.remove(new Unit.Id(1), 1));
        assertEquals(Problem.Code.STILL_USED, problem.code());
        assertTrue(problem.detail().contains(by), problem.detail());
        assertTrue(units.find(new Unit.Id(1)).isPresent());
    }

    @Test
    void aUnitThatOnceWasInASetIsKept() {
        done(sets.add(set("pier", 1)));
        done(sets.change(new Stored<>(new LensSet.Id(1), 1, set("pier"))));
        assertTrue(refused(units.remove(new Unit.Id(1), 1)).detail().contains("set pier"));
        done(units.remove(new Unit.Id(2), 1));
    }

    @ParameterizedTest
    @CsvSource({
        "owned, , , ",
        "owned, , 2027-05-10, 2027-05-09",
        "rented in, 2027-05-01, , 2027-05-01",
        "rented in, 2027-05-01, 2027-05-10, 2027-05-01",
        "rented in, 2027-05-01, 2027-04-20, 2027-04-19",
        "consigned, , , ",
        "consigned, 2027-06-30, , 2027-06-30",
        "consigned, 2027-06-30, 2027-05-10, 2027-05-09"
    })
    void whatIsHeldIsHeldUpToTheEarliestEnd(String kind, LocalDate until, LocalDate left, String heldTo) {
        LocalDate from = LocalDate.parse("2027-01-01");
        Holding holding = switch (kind) {
            case "rented in" -> new Holding.RentedIn("Ostler", "", from, until, until, Optional.empty());
            case "consigned" -> new Holding.Consigned("Ostler", "", from, Optional.ofNullable(until));
            default -> Holding.Owned.UNRECORDED;
        };
        Unit unit = new Unit(
                "held",
                Optional.empty(),
                Optional.empty(),
                holding,
                Optional.empty(),
                Unit.Papers.NONE,
                List.of(),
                Unit.Use.NONE,
                Optional.ofNullable(left).map(day -> new Unit.Departure(day, "sold", Optional.empty())));
        long id = done(units.add(unit)).id().number();
        Object stored = database.reading(sql -> sql.fetchValue("SELECT held_to FROM unit WHERE id = " + id));
        assertEquals(heldTo, stored);
        assertEquals(unit, units.find(new Unit.Id(id)).orElseThrow().facts());
    }
}
