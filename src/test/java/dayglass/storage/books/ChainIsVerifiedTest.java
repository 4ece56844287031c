package dayglass.storage.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.books.BookHouse;
import dayglass.books.entry.Kind;
import dayglass.storage.Database;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the database refuses, and what is found once somebody goes around it. */
class ChainIsVerifiedTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private Path file = Path.of("unset");

    @BeforeEach
    void fillTheBooks() {
        try (BookHouse house = new BookHouse(folder)) {
            for (int at = 1; at <= 5; at++) {
                house.post(house.entry(Kind.ESTIMATE, "2340", "10" + at + ".00"));
            }
            BookHouse.done(house.rooms.books().close().close(house.job, BookHouse.MONDAY.plusDays(6)));
            house.post(house.entry(Kind.ACTUAL, "2340", "7.00").on(BookHouse.MONDAY.plusDays(7)));
            file = house.file;
        }
    }

    private List<String> findings() {
        try (Database database = Database.open(file)) {
            return ChainCheck.of(database).findings();
        }
    }

    private void around(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }

    @Test
    void booksAsTheyWerePostedAreWhole() {
        try (Database database = Database.open(file)) {
            ChainCheck.Report report = ChainCheck.of(database);
            assertEquals(List.of(), report.findings());
            assertEquals(6, report.entries());
            assertEquals(1, report.closes());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE book_entry SET net_minor = 1 WHERE id = 3",
                "DELETE FROM book_entry WHERE id = 6",
                "INSERT OR REPLACE INTO book_entry SELECT * FROM book_entry WHERE id = 2",
                "UPDATE period_act SET reason = 'x'",
                "DELETE FROM period_act",
                "INSERT INTO book_entry SELECT 99, 99, job_id, kind, '2027-04-11', service_from, service_to, cost_code,"
                        + " episode, supplier, description, tag, serial, quantity, rate_minor, net_minor, tax_code,"
                        + " tax_minor, currency, exchange_rate, exchange_source, exchange_date, base_currency,"
                        + " base_net_minor, base_tax_minor, purchase_order, invoice, note, NULL, NULL, NULL, person_id,"
                        + " recorded_at, hash FROM book_entry WHERE id = 1"
            })
    void theDatabaseItselfRefuses(String statement) {
        assertThrows(SQLException.class, () -> around(statement));
        assertEquals(List.of(), findings());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "net_minor = net_minor + 1",
                "quantity = '1.0'",
                "description = description || ' '",
                "note = 'x'",
                "person_id = person_id, recorded_at = recorded_at + 1",
                "hash = replace(hash, substr(hash, 1, 1), 'g')"
            })
    void oneAlteredByteIsFound(String change) throws SQLException {
        around("DROP TRIGGER book_entry_never_changes", "UPDATE book_entry SET " + change + " WHERE id = 3");
        List<String> findings = findings();
        assertTrue(findings.get(0).startsWith("Entry 3 is not as it was posted"), findings.toString());
    }

    /** Whoever alters an entry and works out every hash behind it anew is betrayed by the kept heads. */
    @Test
    void aChainForgedToItsEndDoesNotFitTheKeptHead() throws SQLException {
        around("DROP TRIGGER book_entry_never_changes", "UPDATE book_entry SET net_minor = 1 WHERE id = 3");
        try (Database database = Database.open(file)) {
            BookHouse.done(database.writing(sql -> {
                String before = dayglass.books.entry.Chain.BEGINNING;
                for (var row : sql.selectFrom(dayglass.storage.schema.Tables.BOOK_ENTRY)
                        .orderBy(dayglass.storage.schema.Tables.BOOK_ENTRY.ID)
                        .fetch()) {
                    before = EntryRows.hash(before, row);
                    row.setHash(before);
                    row.update();
                }
                return dayglass.base.Outcome.done(before);
            }));
        }
        List<String> findings = findings();
        assertEquals(1, findings.size(), findings.toString());
        assertTrue(findings.get(0).startsWith("The head kept at the close of 2027-04-11"), findings.toString());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 6})
    void aCutTailIsFound(int from) throws SQLException {
        around("DROP TRIGGER book_entry_is_never_removed", "DELETE FROM book_entry WHERE id >= " + from);
        List<String> findings = findings();
        assertTrue(findings.stream().anyMatch(each -> each.contains("the tail was cut")), findings.toString());
    }

    /** Behind a close the kept head finds it, even where the database's own count was set back. */
    @Test
    void aTailCutWithTheCountSetBackIsFound() throws SQLException {
        around(
                "DROP TRIGGER book_entry_is_never_removed",
                "DELETE FROM book_entry WHERE id >= 5",
                "UPDATE sqlite_sequence SET seq = 4 WHERE name = 'book_entry'");
        List<String> findings = findings();
        assertEquals(1, findings.size(), findings.toString());
        assertTrue(findings.get(0).contains("kept entry 5 as the head"), findings.toString());
    }

    @Test
    void aGapIsFound() throws SQLException {
        around("DROP TRIGGER book_entry_is_never_removed", "DELETE FROM book_entry WHERE id = 2");
        assertTrue(findings().contains("Entries 2 to 2 are gone."));
    }
}
