package dayglass.storage.inventory.booking;

import dayglass.base.Outcome;
import dayglass.catalogue.LensModel;
import dayglass.inventory.booking.Stay;
import dayglass.storage.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * How long the question which units are free takes beside the bare statement for it, on 5,000 units with 20 bookings
 * each, of one run; as a table on standard output. A second statement that people would write first, without the rule
 * that the last occupation alone decides, stands beside both.
 */
public final class AvailabilityBenchmark {
    private static final int UNITS = 5_000;
    private static final int BOOKINGS = 20;
    private static final int MODELS = 50;
    private static final int ROUNDS = 30;
    private static final Instant BEGIN = Instant.parse("2027-01-01T15:00:00Z");

    private static final String LAST_DECIDES =
            "SELECT count(*) FROM unit u WHERE u.lens_model_id WHICH AND coalesce((SELECT"
                    + " free_at FROM occupation o WHERE o.unit_id = u.id AND o.is_cancelled = 0 AND o.starts_at < ? ORDER BY"
                    + " starts_at DESC LIMIT 1), 0) <= ?";
    private static final String NOT_EXISTS =
            "SELECT count(*) FROM unit u WHERE u.lens_model_id WHICH AND NOT EXISTS (SELECT 1"
                    + " FROM occupation o WHERE o.unit_id = u.id AND o.is_cancelled = 0 AND o.starts_at < ? AND o.free_at > ?)";

    private AvailabilityBenchmark() {}

    /** Fills a database of its own below the system's folder for temporary files and removes it. */
    public static void main(String[] arguments) throws IOException, SQLException {
        Path folder = Files.createTempDirectory("availability");
        String file = folder.resolve("bench.db").toString();
        try (Database database = Database.open(Path.of(file));
                Connection bare = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            fill(database);
            for (boolean one : new boolean[] {false, true}) {
                row(database, bare, one);
            }
        } finally {
            try (var files = Files.walk(folder)) {
                files.sorted(java.util.Comparator.reverseOrder())
                        .forEach(each -> each.toFile().delete());
            }
        }
    }

    private static void row(Database database, Connection bare, boolean oneModel) throws SQLException {
        Optional<LensModel.Id> model = oneModel ? Optional.of(new LensModel.Id(7)) : Optional.empty();
        String which = oneModel ? "= 7" : "IS NOT NULL";
        JooqUnitStates states = new JooqUnitStates(database);
        long[] nanos = new long[3];
        long free = 0;
        for (int round = -ROUNDS; round < ROUNDS; round++) {
            Instant out = BEGIN.plus(Duration.ofDays(40 + (round + ROUNDS) * 2L));
            Stay stay = Stay.of(out, out.plus(Duration.ofDays(3)), Duration.ofHours(2));
            long begun = System.nanoTime();
            long counted = states.during(stay, model).stream()
                    .filter(unit -> unit.busyUntil().isEmpty())
                    .count();
            long told = System.nanoTime();
            long last = count(bare, LAST_DECIDES.replace("WHICH", which), stay);
            long bareTold = System.nanoTime();
            long exists = count(bare, NOT_EXISTS.replace("WHICH", which), stay);
            long end = System.nanoTime();
            if (counted != last || counted != exists) {
                throw new IllegalStateException("they disagree: " + counted + ", " + last + ", " + exists);
            }
            if (round >= 0) {
                nanos[0] += told - begun;
                nanos[1] += bareTold - told;
                nanos[2] += end - bareTold;
                free += counted;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%-10s free %6.1f on average; Dayglass with every unit's state %8.3f ms, bare statement %7.3f ms (ratio"
                        + " %.1f), NOT EXISTS %7.3f ms (%.1f times the bare one)%n",
                oneModel ? "one model" : "all units",
                (double) free / ROUNDS,
                nanos[0] / 1e6 / ROUNDS,
                nanos[1] / 1e6 / ROUNDS,
                (double) nanos[0] / nanos[1],
                nanos[2] / 1e6 / ROUNDS,
                (double) nanos[2] / nanos[1]);
    }

    private static long count(Connection bare, String query, Stay stay) throws SQLException {
        try (PreparedStatement statement = bare.prepareStatement(query)) {
            statement.setLong(1, stay.freeAt().getEpochSecond());
            statement.setLong(2, stay.out().getEpochSecond());
            try (ResultSet rows = statement.executeQuery()) {
                return rows.getLong(1);
            }
        }
    }

    private static void fill(Database database) {
        Random random = new Random(5);
        Outcome<Integer> filled = database.writing(sql -> {
            for (int model = 1; model <= MODELS; model++) {
                sql.execute(
                        "INSERT INTO lens_model (version, maker, name, kind, record_json) VALUES (1, 'Maker', ?,"
                                + " 'spherical prime', '{}')",
                        "model " + model);
            }
            for (int unit = 1; unit <= UNITS; unit++) {
                sql.execute(
                        "INSERT INTO unit (version, tag, lens_model_id, holding, facts_json) VALUES (1, ?, ?, 'owned',"
                                + " '{}')",
                        "U-" + unit,
                        1 + unit % MODELS);
                long at = BEGIN.getEpochSecond() + random.nextInt(86_400 * 5);
                for (int booking = 0; booking < BOOKINGS; booking++) {
                    long length = 86_400L * (1 + random.nextInt(6));
                    sql.execute(
                            "INSERT INTO occupation (version, unit_id, kind, starts_at, ends_at, free_at, is_cancelled,"
                                    + " subject, person_id, recorded_at, facts_json) VALUES (1, ?, 'booking', ?, ?, ?, 0,"
                                    + " 'x', 1, 0, '{}')",
                            unit,
                            at,
                            at + length,
                            at + length + 7_200);
                    at += length + 7_200 + random.nextInt(86_400 * 6);
                }
            }
            return Outcome.done(UNITS);
        });
        filled.fold(done -> done, problem -> {
            throw new IllegalStateException(problem.detail());
        });
    }
}
