package dayglass.storage;

import static dayglass.storage.schema.Tables.COSTING;
import static dayglass.storage.schema.Tables.RATE_CARD;
import static dayglass.storage.schema.Tables.SUPPLIER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.Supplier;
import dayglass.planning.KeptCosting;
import dayglass.storage.catalogue.JooqSuppliers;
import dayglass.storage.planning.JooqCostings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.exception.DataAccessException;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the database itself guarantees, whoever calls. */
class DatabaseTest {
    @TempDir
    Path folder;

    private Database database;
    private JooqSuppliers suppliers;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("house.db"));
        suppliers = new JooqSuppliers(database);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void itIsOpenedTheWayThatKeepsWhatWasWritten() {
        database.writing(sql -> {
            assertEquals("wal", sql.fetchValue("PRAGMA journal_mode"));
            assertEquals(2, sql.fetchValue("PRAGMA synchronous"));
            assertEquals(1, sql.fetchValue("PRAGMA foreign_keys"));
            return Outcome.done(1);
        });
        database.reading(sql -> {
            assertEquals(1, sql.fetchValue("PRAGMA foreign_keys"));
            return 1;
        });
    }

    @Test
    void whatIsWrittenIsThereWhenOpenedAgain() {
        suppliers.add(new Supplier("Quay"));
        database.close();
        database = Database.open(folder.resolve("house.db"));
        assertTrue(new JooqSuppliers(database).named("Quay").isPresent());
    }

    @Test
    void whatIsTriedIsTakenBackAloneWithinATransaction() {
        Outcome<Integer> kept = database.atomically(() -> {
            suppliers.add(new Supplier("Before"));
            Outcome<Integer> tried = database.tried(() -> {
                suppliers.add(new Supplier("Tried"));
                return database.tried(() -> {
                    suppliers.add(new Supplier("Tried within"));
                    return Outcome.done(1);
                });
            });
            suppliers.add(new Supplier("After"));
            return tried;
        });
        assertEquals(Outcome.done(1), kept);
        assertTrue(suppliers.named("Before").isPresent());
        assertTrue(suppliers.named("After").isPresent());
        assertTrue(suppliers.named("Tried").isEmpty());
        assertTrue(suppliers.named("Tried within").isEmpty());
    }

    @Test
    void nothingIsLeftOutsideOfItsFolder() throws Exception {
        try (var files = Files.list(folder)) {
            assertTrue(files.allMatch(file -> file.getFileName().toString().contains("house.db")));
        }
        assertTrue(System.getProperty("org.sqlite.tmpdir").endsWith(".house.db.native"));
    }

    @Test
    void aFileThatIsNoDatabaseIsRefusedInWords() throws Exception {
        Path file = Files.writeString(folder.resolve("notes.txt"), "nothing of the kind".repeat(100));
        DatabaseUnusable unusable = assertThrows(DatabaseUnusable.class, () -> Database.open(file));
        assertTrue(String.valueOf(unusable.getMessage()).contains("notes.txt"));
        assertThrows(DatabaseUnusable.class, () -> Database.open(folder.resolve("notes.txt/below.db")));
    }

    @Test
    void aRefusalTakesEveryChangeBack() {
        Outcome<Integer> outcome = database.atomically(() -> {
            suppliers.add(new Supplier("Quay"));
            assertTrue(suppliers.named("Quay").isPresent());
            return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "on purpose");
        });
        assertEquals("on purpose", outcome.fold(value -> "", Problem::detail));
        assertFalse(suppliers.named("Quay").isPresent());
    }

    @Test
    void aFailureTakesEveryChangeBack() {
        assertThrows(
                IllegalStateException.class,
                () -> database.atomically(() -> {
                    suppliers.add(new Supplier("Quay"));
                    throw new IllegalStateException("on purpose");
                }));
        assertFalse(suppliers.named("Quay").isPresent());
        suppliers.add(new Supplier("Quay"));
        assertTrue(suppliers.named("Quay").isPresent());
    }

    @Test
    void aCostingIsNeverChangedEvenInSql() {
        KeptCosting.Document text = new KeptCosting.Document("{}", "0".repeat(64));
        KeptCosting.Id id = new JooqCostings(database)
                .add(new KeptCosting(
                        new KeptCosting.Summary(
                                Optional.empty(),
                                "a job",
                                Instant.parse("2026-11-25T10:00:00Z"),
                                "1",
                                Optional.empty(),
                                Money.ofMinor(Currency.of("EUR"), 1),
                                true),
                        text,
                        text));
        DataAccessException refused = assertThrows(
                DataAccessException.class,
                () -> database.writing(sql -> Outcome.done(sql.update(COSTING)
                        .set(COSTING.TOTAL, "2.00")
                        .where(COSTING.ID.eq(id.number()))
                        .execute())));
        assertTrue(String.valueOf(refused.getMessage()).contains("never changed"));
        assertEquals(
                "0.01",
                new JooqCostings(database)
                        .find(id)
                        .orElseThrow()
                        .facts()
                        .summary()
                        .total()
                        .amount());
    }

    @Test
    void nothingPointsNowhereEvenInSql() {
        assertThrows(
                IntegrityConstraintViolationException.class,
                () -> database.writing(sql -> Outcome.done(sql.insertInto(RATE_CARD)
                        .set(RATE_CARD.VERSION, 1L)
                        .set(RATE_CARD.SUPPLIER_ID, 99L)
                        .set(RATE_CARD.NAME, "card")
                        .set(RATE_CARD.CURRENCY, "EUR")
                        .set(RATE_CARD.EFFECTIVE_FROM, "2027-01-01")
                        .set(RATE_CARD.RATES_JSON, "[]")
                        .execute())));
    }

    @Test
    void readThenWriteNeverFailsAsBusyAndLosesNothing() throws Exception {
        Supplier.Id id = suppliers.add(new Supplier("0")).fold(Stored::id, problem -> new Supplier.Id(0));
        int writers = 8;
        int rounds = 25;
        ExecutorService pool = Executors.newFixedThreadPool(writers);
        try {
            List<Callable<Integer>> work = new ArrayList<>();
            for (int writer = 0; writer < writers; writer++) {
                work.add(() -> {
                    for (int round = 0; round < rounds; round++) {
                        countUp(id);
                    }
                    return rounds;
                });
            }
            for (Future<Integer> each : pool.invokeAll(work)) {
                assertEquals(rounds, each.get());
            }
        } finally {
            pool.shutdownNow();
        }
        Stored<Supplier.Id, Supplier> counted = suppliers.find(id).orElseThrow();
        assertEquals(Integer.toString(writers * rounds), counted.facts().name());
        assertEquals(writers * rounds + 1, counted.version());
    }

    private void countUp(Supplier.Id id) {
        database.atomically(() -> {
            Stored<Supplier.Id, Supplier> before = suppliers.find(id).orElseThrow();
            int next = Integer.parseInt(before.facts().name()) + 1;
            return suppliers.change(new Stored<>(id, before.version(), new Supplier(Integer.toString(next))));
        });
    }

    @Test
    void theVersionIsCheckedInTheStatementItself() {
        suppliers.add(new Supplier("Quay"));
        database.writing(sql ->
                Outcome.done(sql.update(SUPPLIER).set(SUPPLIER.VERSION, 5L).execute()));
        Outcome<Stored<Supplier.Id, Supplier>> stale =
                suppliers.change(new Stored<>(new Supplier.Id(1), 1, new Supplier("Pier")));
        assertEquals(Problem.Code.STALE, stale.fold(value -> Problem.Code.FAULTY, Problem::code));
        assertEquals(
                "Quay", suppliers.find(new Supplier.Id(1)).orElseThrow().facts().name());
    }
}
