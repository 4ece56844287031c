package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.books.BookHouse;
import dayglass.books.entry.Kind;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code books verify} as somebody calls it. */
class VerifyBooksTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private int run(String... arguments) {
        out.reset();
        err.reset();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        return Main.run(terminal, System.nanoTime(), arguments);
    }

    @Test
    void itSaysWhetherEveryEntryIsAsItWasPosted() throws Exception {
        Path file;
        try (BookHouse house = new BookHouse(folder)) {
            house.post(house.entry(Kind.ACTUAL, "2340", "1.00"));
            file = house.file;
        }
        assertEquals(0, run("books", "verify", "--db", file.toString()), err.toString(StandardCharsets.UTF_8));
        assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("1 entries are as they were posted"));
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("DROP TRIGGER book_entry_never_changes");
            statement.executeUpdate("UPDATE book_entry SET note = 'x'");
        }
        assertEquals(1, run("books", "verify", "--db", file.toString()));
        assertTrue(err.toString(StandardCharsets.UTF_8).startsWith("Entry 1 is not as it was posted"));
    }

    @Test
    void aDatabaseThatIsNotThereIsNotMade() {
        Path none = folder.resolve("none.db");
        assertEquals(1, run("books", "verify", "--db", none.toString()));
        assertTrue(Files.notExists(none));
        assertEquals(2, run("books"));
    }
}
