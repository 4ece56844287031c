package dayglass.books.post;

import static dayglass.books.BookHouse.EUR;
import static dayglass.books.BookHouse.done;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Outcome;
import dayglass.books.BookHouse;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Posted;
import dayglass.books.export.EntryExport;
import dayglass.books.report.CostFigures;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.job.Job;
import dayglass.sheet.FormulaGuard;
import dayglass.storage.Database;
import dayglass.storage.books.ChainCheck;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A hundred thousand random acts, after which entries, report and export agree to the cent. The entries are summed here
 * from the list, the report by the database, the export by reading its CSV back with another library.
 */
class RandomBooksTest {
    private static final int JOBS = 40;
    private static final int ACTS_A_JOB = 1_250;
    private static final List<Long> SEEDS = List.of(20270405L, 20270406L);

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    /** Two houses at once, one a core; each keeps the books of many jobs in one chain. */
    @Test
    void threeWaysAgreeToTheCentAfterAHundredThousandActs() {
        int acts = SEEDS.parallelStream().mapToInt(this::house).sum();
        assertEquals(100_000, acts);
    }

    private int house(long seed) {
        try (BookHouse house = new BookHouse(Files.createDirectory(folder.resolve(String.valueOf(seed))))) {
            int acts = 0;
            for (int at = 0; at < JOBS; at++) {
                Job.Id job =
                        done(house.rooms.jobs().add(BookHouse.job("Job " + at))).id();
                acts += acts(house, job, seed + at * 7L);
                compare(house, job);
            }
            try (Database database = Database.open(house.file)) {
                assertEquals(List.of(), ChainCheck.of(database).findings());
            }
            return acts;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** One transaction for all keeps the test quick; each act inside it is whole or refused by itself. */
    private static int acts(BookHouse house, Job.Id job, long seed) {
        RandomActs random = new RandomActs(house.rooms.books(), job, seed);
        done(house.rooms.transactions().atomically(() -> {
            for (int each = 0; each < ACTS_A_JOB; each++) {
                random.act();
            }
            return Outcome.done(true);
        }));
        assertTrue(
                random.done().keySet().containsAll(List.of("post", "split", "order", "invoice", "reverse", "close")),
                random.done().toString());
        return ACTS_A_JOB;
    }

    private static void compare(BookHouse house, Job.Id job) throws IOException {
        Map<String, BigDecimal> listed = listed(house, job);
        assertEquals(listed, exported(house, job));
        Map<String, BigDecimal> reported = new TreeMap<>();
        CostFigures.Sums sums = house.rooms.costFigures().of(job, Optional.empty());
        for (Basis basis : Basis.values()) {
            for (By by : By.values()) {
                add(reported, CostReport.of(by, basis, EUR, sums));
            }
        }
        reported.keySet().forEach(key -> listed.putIfAbsent(key, BigDecimal.ZERO.setScale(2)));
        assertEquals(listed, reported);
        assertTrue(listed.size() >= 60, listed.toString());
    }

    private static Map<String, BigDecimal> listed(BookHouse house, Job.Id job) {
        Map<String, BigDecimal> listed = new TreeMap<>();
        List<Posted> entries =
                house.rooms.books().entries().list(Entries.Which.of(job), Optional.empty(), Integer.MAX_VALUE);
        for (Posted posted : entries) {
            Amounts amounts = posted.entry().amounts();
            Entry.Coding coding = posted.entry().coding();
            Map<By, String> names =
                    Map.of(By.CODE, coding.costCode(), By.EPISODE, coding.episode(), By.SUPPLIER, coding.supplier());
            String kind = posted.entry().kind().word();
            add(listed, names, Basis.NET, kind, amounts.baseNet().major());
            add(listed, names, Basis.GROSS, kind, amounts.baseGross().major());
        }
        return listed;
    }

    private static Map<String, BigDecimal> exported(BookHouse house, Job.Id job) throws IOException {
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        house.rooms.books().entries().reading(Entries.Which.of(job), run -> {
            try {
                new EntryExport(Entries.Which.of(job), run).csv(csv);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
            return true;
        });
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        Map<String, BigDecimal> exported = new TreeMap<>();
        for (CSVRecord row : format.parse(new StringReader(csv.toString(StandardCharsets.UTF_8)))) {
            Map<By, String> names = Map.of(
                    By.CODE,
                    row.get("cost code"),
                    By.EPISODE,
                    row.get("episode"),
                    By.SUPPLIER,
                    FormulaGuard.asTyped(row.get("supplier")));
            add(exported, names, Basis.NET, row.get("kind"), new BigDecimal(row.get("base net")));
            add(exported, names, Basis.GROSS, row.get("kind"), new BigDecimal(row.get("base gross")));
        }
        return exported;
    }

    private static void add(Map<String, BigDecimal> into, CostReport report) {
        report.rows().forEach(row -> {
            String place = report.basis().word() + " by " + report.by().word() + " " + row.name() + " ";
            CostReport.Figures figures = row.figures();
            add(into, place + "estimate", figures.estimate().major());
            add(into, place + "commitment", figures.committed().major());
            add(into, place + "actual", figures.actual().major());
            add(into, place + "accrual", figures.accrued().major());
        });
    }

    private static void add(
            Map<String, BigDecimal> into, Map<By, String> names, Basis basis, String kind, BigDecimal amount) {
        names.forEach((by, name) -> add(into, basis.word() + " by " + by.word() + " " + name + " " + kind, amount));
    }

    private static void add(Map<String, BigDecimal> into, String place, BigDecimal amount) {
        into.merge(place, amount, BigDecimal::add);
    }
}
