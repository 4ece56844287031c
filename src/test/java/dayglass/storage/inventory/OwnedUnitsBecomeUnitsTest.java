package dayglass.storage.inventory;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Stored;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.job.JooqJobs;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A database of the first three migrations, filled, opens as one of today with nothing lost. */
class OwnedUnitsBecomeUnitsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private String url = "";

    @BeforeEach
    void migrateToTheThird() {
        url = "jdbc:sqlite:" + folder.resolve("house.db");
        Flyway.configure()
                .dataSource(url, "", "")
                .locations("classpath:migrations")
                .sqlMigrationPrefix("0")
                .sqlMigrationSeparator("_")
                .target("003")
                .load()
                .migrate();
    }

    private void fill(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }

    private static String unit(long id, String tag, String more) {
        return "INSERT INTO owned_unit VALUES (" + id + ", 3, '" + tag + "', '{\n  \"id\": \"" + tag
                + "\",\n  \"covers\": {\"40 mm\": 2, \"50 mm – ß\": 1}" + more + "\n}')";
    }

    private static String job(long id) {
        return "INSERT INTO job VALUES (" + id + ", 1, 'Long Pier', 'EUR', '0', NULL,"
                + " '[{\"from\": \"2027-06-07\", \"use\": \"shoot\"}]', '[{\"slot\": \"40 mm\", \"count\": 1}]', '[]')";
    }

    @Test
    void unitsKeepTheirIdsVersionsAndFacts() throws SQLException {
        fill(unit(2, "a", ""), unit(5, "b", ", \"available\": [{\"from\": \"2027-04-12\", \"to\": \"2027-04-30\"}]"));
        try (Database database = Database.open(folder.resolve("house.db"))) {
            List<Stored<Unit.Id, Unit>> units = new JooqUnits(database).list(Optional.empty(), 10);
            assertEquals(
                    List.of(2L, 5L),
                    units.stream().map(each -> each.id().number()).toList());
            assertEquals(3, units.get(0).version());
            assertEquals(
                    Unit.serving("a", new Unit.Use(Map.of("40 mm", 2, "50 mm – ß", 1), List.of())),
                    units.get(0).facts());
            assertEquals(
                    "2027-04-30",
                    units.get(1).facts().use().available().get(0).lastDay().toString());
        }
    }

    @Test
    void jobsConsiderTheSameUnitsInTheSameOrderAndNoSets() throws SQLException {
        fill(
                unit(2, "a", ""),
                unit(5, "b", ""),
                job(7),
                "INSERT INTO job_owned_unit VALUES (7, 0, 5)",
                "INSERT INTO job_owned_unit VALUES (7, 1, 2)");
        try (Database database = Database.open(folder.resolve("house.db"))) {
            Job.Sources sources = new JooqJobs(database)
                    .find(new Job.Id(7))
                    .orElseThrow()
                    .facts()
                    .sources();
            assertEquals(List.of(new Unit.Id(5), new Unit.Id(2)), sources.units());
            assertEquals(List.<LensSet.Id>of(), sources.lensSets());
            String refusal = new JooqUnits(database)
                    .remove(new Unit.Id(5), 3)
                    .fold(removed -> "removed", problem -> problem.detail());
            assertEquals("This unit is still used by job 7; remove that first.", refusal);
        }
    }

    @Test
    void anIdThatWasRemovedBeforeIsNotUsedAgain() throws SQLException {
        fill(unit(9, "gone", ""), "DELETE FROM owned_unit");
        try (Database database = Database.open(folder.resolve("house.db"))) {
            long id = new JooqUnits(database)
                    .add(Unit.serving("new", Unit.Use.NONE))
                    .fold(unit -> unit.id().number(), problem -> 0L);
            assertEquals(10, id);
        }
    }
}
