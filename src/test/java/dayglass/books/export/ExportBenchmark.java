package dayglass.books.export;

import static dayglass.books.BookHouse.MONDAY;
import static dayglass.books.BookHouse.done;

import dayglass.base.Outcome;
import dayglass.books.BookHouse;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * How long an export takes beside bare reading of the same rows by JDBC, as a ratio. Run by its {@code main}, with the
 * number of entries; a million in a process of -Xmx256m shows that nothing is held.
 */
public final class ExportBenchmark {
    private static final int BATCH = 5_000;

    private ExportBenchmark() {}

    private interface Writing {
        void to(EntryExport export, OutputStream out) throws IOException;
    }

    public static void main(String[] arguments) throws Exception {
        int entries = arguments.length == 0 ? 100_000 : Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("dayglass-export");
        try (BookHouse house = new BookHouse(folder)) {
            long begun = System.nanoTime();
            fill(house, entries);
            tell("posting " + entries + " entries", begun);
            for (int round = 0; round < 2; round++) {
                long bare = System.nanoTime();
                read(house.file);
                double bareSeconds = tell("bare JDBC", bare);
                export(house, "csv", EntryExport::csv, bareSeconds);
                export(house, "json", EntryExport::json, bareSeconds);
                export(house, "xlsx", EntryExport::xlsx, bareSeconds);
            }
        }
    }

    private static void fill(BookHouse house, int entries) {
        for (int at = 0; at < entries; at += BATCH) {
            List<Entry> batch = new ArrayList<>();
            for (int each = 0; each < BATCH; each++) {
                batch.add(house.entry(Kind.ACTUAL, "23" + each % 40, "123.45").on(MONDAY.plusDays(at / BATCH)));
            }
            done(house.rooms
                    .transactions()
                    .atomically(
                            () -> house.rooms.books().post().post(batch).then(posted -> Outcome.done(posted.size()))));
        }
    }

    private static void read(Path file) throws Exception {
        long cells = 0;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT * FROM book_entry ORDER BY id")) {
            int columns = rows.getMetaData().getColumnCount();
            while (rows.next()) {
                for (int column = 1; column <= columns; column++) {
                    cells += rows.getString(column) == null ? 0 : 1;
                }
            }
        }
        System.out.println(cells + " cells");
    }

    private static void export(BookHouse house, String what, Writing writing, double bareSeconds) {
        long begun = System.nanoTime();
        Entries.Which all = Entries.Which.of(house.job);
        boolean written = house.rooms.books().entries().reading(all, run -> {
            try {
                writing.to(new EntryExport(all, run), OutputStream.nullOutputStream());
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
            return true;
        });
        double seconds = tell(what + " " + written, begun);
        System.out.printf(java.util.Locale.ROOT, "  %.1f times bare reading%n", seconds / bareSeconds);
    }

    private static double tell(String what, long begun) {
        double seconds = (System.nanoTime() - begun) / 1e9;
        System.out.printf(java.util.Locale.ROOT, "%s: %.1f s%n", what, seconds);
        return seconds;
    }
}
