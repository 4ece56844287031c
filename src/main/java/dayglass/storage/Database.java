package dayglass.storage;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Transactions;
import dayglass.house.Person;
import dayglass.house.WhoActs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.util.function.Function;
import java.util.function.Supplier;
import org.flywaydb.core.Flyway;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.impl.DSL;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * One SQLite file. A single connection writes, and takes the write lock when its transaction begins, so that what was
 * read in it still holds when it writes; other connections read beside it, each transaction seeing one state.
 */
public final class Database implements Transactions, AutoCloseable {
    private static final int READERS = 4;
    private static final int BUSY_TIMEOUT_MS = 10_000;

    private final HikariDataSource writer;
    private final HikariDataSource reader;
    private final Recording recording;

    /** The transaction under way on a thread; a field of each database, as a test may have several open. */
    @SuppressWarnings("ThreadLocalUsage")
    private final ThreadLocal<DSLContext> current = new ThreadLocal<>();

    private Database(HikariDataSource writer, HikariDataSource reader, Recording recording) {
        this.writer = writer;
        this.reader = reader;
        this.recording = recording;
    }

    /** Opens the file for the first person of the house, on the machine's clock. */
    public static Database open(Path file) {
        return open(file, new Recording(new WhoActs(new Person.Id(1)), Clock.systemUTC()));
    }

    /**
     * Opens the file, makes it where there is none, and brings its tables up to date.
     *
     * @throws DatabaseUnusable where it cannot be opened or is no database of this program
     */
    public static Database open(Path file, Recording recording) {
        Path path = file.toAbsolutePath();
        unpackNativeLibraryBeside(path);
        String url = "jdbc:sqlite:" + path;
        try {
            migrate(url);
            return new Database(
                    pool("dayglass-writer", 1, source(url, SQLiteConfig.TransactionMode.IMMEDIATE)),
                    pool("dayglass-reader", READERS, source(url, SQLiteConfig.TransactionMode.DEFERRED)),
                    recording);
        } catch (RuntimeException cause) {
            throw new DatabaseUnusable(path, cause);
        }
    }

    /**
     * Copies a database as it stands at one moment, whoever else writes it meanwhile, and brings nothing up to date.
     *
     * @param to a file that is not there yet
     */
    public static void copy(Path from, Path to) throws SQLException, IOException {
        unpackNativeLibraryBeside(from.toAbsolutePath());
        try (Connection connection = source(
                                "jdbc:sqlite:" + from.toAbsolutePath(), SQLiteConfig.TransactionMode.DEFERRED)
                        .getConnection();
                PreparedStatement copying = connection.prepareStatement("VACUUM INTO ?")) {
            copying.setString(1, to.toAbsolutePath().toString());
            copying.executeUpdate();
        }
        try (FileChannel copied = FileChannel.open(to, StandardOpenOption.WRITE)) {
            copied.force(true);
        }
    }

    /** By default it would be left in the system's folder for temporary files, outside of what is ours. */
    private static void unpackNativeLibraryBeside(Path file) {
        Path folder = file.resolveSibling("." + file.getFileName() + ".native");
        try {
            Files.createDirectories(folder);
        } catch (IOException cause) {
            throw new DatabaseUnusable(file, new UncheckedIOException(cause));
        }
        System.setProperty("org.sqlite.tmpdir", folder.toString());
    }

    private static void migrate(String url) {
        Flyway.configure()
                .dataSource(source(url, SQLiteConfig.TransactionMode.IMMEDIATE))
                .locations("classpath:migrations")
                .sqlMigrationPrefix("0")
                .sqlMigrationSeparator("_")
                .load()
                .migrate();
    }

    private static SQLiteDataSource source(String url, SQLiteConfig.TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_TIMEOUT_MS);
        config.setTransactionMode(mode);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl(url);
        return source;
    }

    private static HikariDataSource pool(String name, int connections, SQLiteDataSource source) {
        HikariConfig config = new HikariConfig();
        config.setPoolName(name);
        config.setDataSource(source);
        config.setMaximumPoolSize(connections);
        config.setMinimumIdle(1);
        return new HikariDataSource(config);
    }

    /** Reads one state of the database; inside a transaction, the state that it has made so far. */
    public <T> T reading(Function<DSLContext, T> work) {
        DSLContext joined = current.get();
        if (joined != null) {
            return work.apply(joined);
        }
        return DSL.using(reader, SQLDialect.SQLITE).transactionResult(transaction -> work.apply(transaction.dsl()));
    }

    /** Writes in a transaction: the one under way on this thread, or one of its own. */
    public <T> Outcome<T> writing(Function<DSLContext, Outcome<T>> work) {
        DSLContext joined = current.get();
        return joined != null ? work.apply(joined) : transaction(DSL.using(writer, SQLDialect.SQLITE), work);
    }

    /** What is refused is taken back; inside a transaction that is this part of it alone. */
    private <T> Outcome<T> transaction(DSLContext on, Function<DSLContext, Outcome<T>> work) {
        DSLContext outer = current.get();
        try {
            return on.transactionResult(transaction -> {
                current.set(transaction.dsl());
                return work.apply(transaction.dsl()).fold(Outcome::done, problem -> {
                    throw new TakenBack(problem);
                });
            });
        } catch (TakenBack refused) {
            return Outcome.refused(refused.problem);
        } finally {
            current.set(outer);
        }
    }

    /** Where each change is kept with who made it. */
    public Recording recording() {
        return recording;
    }

    @Override
    public <T> Outcome<T> atomically(Supplier<Outcome<T>> work) {
        DSLContext outer = current.get();
        return transaction(outer != null ? outer : DSL.using(writer, SQLDialect.SQLITE), part -> work.get());
    }

    @Override
    public void close() {
        reader.close();
        writer.close();
    }

    /** Carries a refusal out of a transaction, which jOOQ takes back on any exception. */
    private static final class TakenBack extends RuntimeException {
        private final transient Problem problem;

        TakenBack(Problem problem) {
            super(problem.detail(), null, false, false);
            this.problem = problem;
        }
    }
}
