package dayglass.desk.price;

import dayglass.app.Rooms;
import dayglass.base.DateRange;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.catalogue.LensModel;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.inventory.LensSet;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

/**
 * How long the price of a package takes on the shelf of {@link BigHouse}, alone and with what is worth saying of it, as
 * a table on standard output: by the clock the first round, which is cold, the median and the longest of the later
 * half, the median of that half in processor time, and its ratio to the bare statement that counts free units of as many models in the same run.
 */
public final class PriceBenchmark {
    private static final int ROUNDS = 60;
    private static final LocalDate TODAY = LocalDate.parse("2027-01-01");
    private static final String BARE =
            "SELECT count(*) FROM unit u WHERE u.lens_model_id BETWEEN ? AND ? AND coalesce((SELECT free_at FROM"
                    + " occupation o WHERE o.unit_id = u.id AND o.is_cancelled = 0 AND o.starts_at < ? ORDER BY starts_at"
                    + " DESC LIMIT 1), 0) <= ?";

    private final PricePackage pricing;
    private final Connection bare;

    private PriceBenchmark(PricePackage pricing, Connection bare) {
        this.pricing = pricing;
        this.bare = bare;
    }

    /** Fills a database of its own below the system's folder for temporary files and removes it. */
    public static void main(String[] arguments) throws IOException, SQLException {
        Path folder = Files.createTempDirectory("price");
        Path file = folder.resolve("bench.db");
        Clock clock = Clock.fixed(TODAY.atTime(9, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        try (Rooms rooms = Rooms.open(file, clock);
                Connection bare = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            BigHouse.fill(file, TODAY);
            new PriceBenchmark(rooms.desk().pricing(), bare).run();
        } finally {
            try (var files = Files.walk(folder)) {
                files.sorted(java.util.Comparator.reverseOrder())
                        .forEach(each -> each.toFile().delete());
            }
        }
    }

    private void run() throws SQLException {
        rows("a set and three models", 1);
        rows("twenty of each of three", 20);
    }

    private void rows(String what, int count) throws SQLException {
        Times alone = new Times();
        Times withAlternatives = new Times();
        Times statement = new Times();
        int lines = 0;
        int said = 0;
        for (int round = 0; round < ROUNDS; round++) {
            PackageAsked asked = asked(TODAY.plusDays(10 + 5L * round), round, count);
            lines += alone.of(() -> done(pricing.price(asked)).lines().size());
            said += withAlternatives.of(
                    () -> done(pricing.withAlternatives(asked)).alternatives().size());
            statement.of(() -> count(asked.schedule().horizon()));
        }
        System.out.printf("%s, %d rounds, %d lines, %d alternatives%n", what, ROUNDS, lines, said);
        statement.row("bare statement", statement);
        alone.row("price", statement);
        withAlternatives.row("with alternatives", statement);
    }

    /** Of each round by the clock and by the processor. */
    private static final class Times {
        private final List<Long> clock = new ArrayList<>();
        private final List<Long> processor = new ArrayList<>();

        int of(Callable<Integer> work) {
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            long used = threads.getCurrentThreadCpuTime();
            long begun = System.nanoTime();
            try {
                return work.call();
            } catch (Exception cause) {
                throw new IllegalStateException(cause);
            } finally {
                clock.add(System.nanoTime() - begun);
                processor.add(threads.getCurrentThreadCpuTime() - used);
            }
        }

        private static List<Long> later(List<Long> nanos) {
            return nanos.subList(nanos.size() / 2, nanos.size());
        }

        private static long median(List<Long> nanos) {
            List<Long> sorted = later(nanos).stream().sorted().toList();
            return sorted.get(sorted.size() / 2);
        }

        void row(String what, Times bare) {
            System.out.printf(
                    Locale.ROOT,
                    "  %-18s first %8.2f ms, median %7.2f ms, longest %7.2f ms; processor %7.2f ms (%.1f"
                            + " times the bare statement)%n",
                    what,
                    clock.get(0) / 1e6,
                    median(clock) / 1e6,
                    Collections.max(later(clock)) / 1e6,
                    median(processor) / 1e6,
                    (double) median(processor) / median(bare.processor));
        }
    }

    /** A set of a family of models and one model of three others; or so many of those three without the set. */
    private static PackageAsked asked(LocalDate first, int round, int count) {
        int family = round % BigHouse.FAMILIES;
        List<PackageAsked.Asked> lines = new ArrayList<>();
        for (int next = 1; next <= 3; next++) {
            int model = BigHouse.model((family + next) % BigHouse.FAMILIES, 2);
            lines.add(new PackageAsked.Asked(new Wish.OfModel(new LensModel.Id(model)), count, Percent.ZERO));
        }
        if (count == 1) {
            lines.add(0, new PackageAsked.Asked(new Wish.OfSet(new LensSet.Id(1 + family)), 1, Percent.ZERO));
        }
        Schedule days =
                new Schedule(List.of(new Schedule.Span(DateRange.inclusive(first, first.plusDays(13)), DayUse.SHOOT)));
        return new PackageAsked(lines, days, false, Percent.ZERO, "");
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new IllegalStateException(problem.detail());
        });
    }

    private int count(DateRange days) throws SQLException {
        try (PreparedStatement statement = bare.prepareStatement(BARE)) {
            statement.setLong(1, BigHouse.model(1, 0));
            statement.setLong(2, BigHouse.model(1, 0) + 8);
            statement.setLong(3, moment(days.until()));
            statement.setLong(4, moment(days.from().minusDays(1)));
            try (ResultSet rows = statement.executeQuery()) {
                return rows.getInt(1);
            }
        }
    }

    private static long moment(LocalDate day) {
        return Instant.from(day.atTime(12, 0).atOffset(ZoneOffset.UTC)).getEpochSecond();
    }
}
