package dayglass.storage.inventory.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The database itself refuses that a unit is in two places: under bare SQL, and whoever writes beside whom. */
class OverlapIsRefusedTest {
    @TempDir
    Path folder;

    private static Connection connect(String file) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA busy_timeout = 10000");
        }
        return connection;
    }

    private static void insert(Connection to, String kind, long unit, long from, long until) throws SQLException {
        try (PreparedStatement insert = to.prepareStatement(
                "INSERT INTO occupation (version, unit_id, kind, starts_at, ends_at, free_at, is_cancelled, subject,"
                        + " person_id, recorded_at, facts_json) VALUES (1, ?, ?, ?, ?, ?, 0, 'x', 1, 0, '{}')")) {
            insert.setLong(1, unit);
            insert.setString(2, kind);
            insert.setLong(3, from);
            insert.setLong(4, until);
            insert.setLong(5, until);
            insert.executeUpdate();
        }
    }

    private static void refused(org.junit.jupiter.api.function.Executable write) {
        SQLException refusal = assertThrows(SQLException.class, write);
        assertTrue(
                String.valueOf(refusal.getMessage()).contains("the unit is in another place then"),
                String.valueOf(refusal.getMessage()));
    }

    private String house(int units) {
        try (BookedHouse house = new BookedHouse(folder, units, "UTC")) {
            assertEquals(units, house.units.size());
        }
        return folder.resolve("house.db").toString();
    }

    @ParameterizedTest
    @CsvSource({"booking, bench", "bench, absence", "absence, booking", "booking, booking", "bench, bench"})
    void noTwoKindsMeetOnOneUnit(String kind, String other) throws SQLException {
        try (Connection sql = connect(house(2))) {
            insert(sql, kind, 1, 100, 200);
            refused(() -> insert(sql, other, 1, 199, 300));
            refused(() -> insert(sql, other, 1, 0, 101));
            refused(() -> insert(sql, other, 1, 150, 160));
            refused(() -> insert(sql, other, 1, 0, 1000));
            insert(sql, other, 1, 200, 300);
            insert(sql, other, 1, 0, 100);
            insert(sql, other, 2, 150, 160);
        }
    }

    @Test
    void aChangeThatWouldOverlapIsRefusedToo() throws SQLException {
        try (Connection sql = connect(house(2));
                Statement statement = sql.createStatement()) {
            insert(sql, "booking", 1, 100, 200);
            insert(sql, "bench", 1, 200, 300);
            insert(sql, "absence", 2, 100, 300);
            refused(() -> statement.executeUpdate("UPDATE occupation SET ends_at = 201, free_at = 201 WHERE id = 1"));
            refused(() -> statement.executeUpdate("UPDATE occupation SET starts_at = 199 WHERE id = 2"));
            refused(() -> statement.executeUpdate("UPDATE occupation SET unit_id = 2 WHERE id = 1"));
            statement.executeUpdate("UPDATE occupation SET is_cancelled = 1 WHERE id = 1");
            statement.executeUpdate("UPDATE occupation SET starts_at = 150 WHERE id = 2");
            refused(() -> statement.executeUpdate("UPDATE occupation SET is_cancelled = 0 WHERE id = 1"));
            assertThrows(SQLException.class, () -> statement.executeUpdate("DELETE FROM occupation WHERE id = 3"));
            assertThrows(
                    SQLException.class,
                    () -> statement.executeUpdate("REPLACE INTO occupation (id, version, unit_id, kind, starts_at,"
                            + " ends_at, free_at, is_cancelled, subject, person_id, recorded_at, facts_json) VALUES"
                            + " (1, 1, 1, 'booking', 250, 260, 260, 0, 'x', 1, 0, '{}')"));
        }
    }

    /** Two processes write random stays of few units; what stands in the end shares no second. */
    @Test
    void twoProcessesNeverPutAUnitInTwoPlaces() throws Exception {
        String file = house(3);
        List<Process> processes = new ArrayList<>();
        for (int seed = 1; seed <= 2; seed++) {
            processes.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            OverlapIsRefusedTest.class.getName(),
                            file,
                            String.valueOf(seed))
                    .redirectErrorStream(true)
                    .redirectOutput(new File(folder.toFile(), "writer" + seed))
                    .start());
        }
        for (Process process : processes) {
            assertEquals(0, process.waitFor());
        }
        try (Connection sql = connect(file);
                Statement statement = sql.createStatement()) {
            assertEquals(
                    0,
                    count(
                            statement,
                            "SELECT count(*) FROM occupation a JOIN occupation b ON a.unit_id = b.unit_id"
                                    + " AND a.id < b.id AND a.starts_at < b.free_at AND b.starts_at < a.free_at"));
            assertTrue(count(statement, "SELECT count(*) FROM occupation WHERE subject = 'writer 1'") > 10);
            assertTrue(count(statement, "SELECT count(*) FROM occupation WHERE subject = 'writer 2'") > 10);
        }
    }

    private static int count(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            return rows.getInt(1);
        }
    }

    /** The other process: writes random stays, and counts as failed on anything but a refused overlap. */
    public static void main(String[] arguments) throws SQLException {
        Random random = new Random(Long.parseLong(arguments[1]));
        try (Connection sql = connect(arguments[0]);
                Statement statement = sql.createStatement()) {
            for (int round = 0; round < 400; round++) {
                long from = random.nextInt(3_000);
                try {
                    insert(sql, "booking", 1 + random.nextInt(3), from, from + 1 + random.nextInt(20));
                    statement.executeUpdate("UPDATE occupation SET subject = 'writer " + arguments[1]
                            + "' WHERE id = last_insert_rowid()");
                } catch (SQLException refusal) {
                    if (!String.valueOf(refusal.getMessage()).contains("the unit is in another place then")) {
                        throw refusal;
                    }
                }
            }
        }
    }
}
