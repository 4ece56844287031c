package dayglass.desk.earned;

import dayglass.app.Rooms;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Stored;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.verdict.Choices;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PricedLine;
import dayglass.desk.price.Wish;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.Promise;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.Rentals;
import dayglass.desk.today.Today;
import dayglass.house.Person;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.worth.Footing;
import dayglass.support.Served;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What processor time it takes to weigh 5,000 own units with 21 bookings each and 3,000 rentals of four units, and to tell
 * the desk its day, beside
 * reading the same rows by bare statements; as a table on standard output.
 */
public final class GlassBenchmark {
    private static final int UNITS = 5_000;
    private static final int BOOKINGS = 20;
    private static final int RENTALS = 3_000;
    private static final int A_RENTAL = 4;
    private static final int ROUNDS = 3;
    private static final LocalDate TODAY = LocalDate.of(2027, 6, 30);

    private GlassBenchmark() {}

    /** Fills a database of its own below the system's folder for temporary files and removes it. */
    public static void main(String[] arguments) throws IOException, SQLException {
        Path folder = Files.createTempDirectory("glass");
        String file = folder.resolve("dayglass.db").toString();
        try (Rooms rooms = Served.roomsAt(folder, TODAY.toString());
                Connection bare = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            units(rooms);
            bookings(bare);
            around(bare);
            rentals(rooms, bare);
            for (int round = 0; round < ROUNDS; round++) {
                row(rooms, bare, round == 0 ? "cold" : "warm");
            }
        } finally {
            try (var files = Files.walk(folder)) {
                files.sorted(java.util.Comparator.reverseOrder())
                        .forEach(each -> each.toFile().delete());
            }
        }
    }

    private static void row(Rooms rooms, Connection bare, String name) throws SQLException {
        long begun = cpu();
        long read = 0;
        for (String table : new String[] {"unit", "occupation", "rental"}) {
            read += read(bare, table);
        }
        long bareRead = cpu();
        int let = rooms.lettingIncome()
                .all(rooms.shelf().units().list(Optional.empty(), Integer.MAX_VALUE))
                .orElseThrow()
                .size();
        long letTold = cpu();
        int shares = rooms.lettingIncome().of(new Unit.Id(7)).shares().size();
        long oneTold = cpu();
        Today today = rooms.gatherToday().of(TODAY);
        long todayTold = cpu();
        int weighed = rooms.myGlass().by(Footing.USUAL).units().size();
        long end = cpu();
        System.out.printf(
                Locale.ROOT,
                "%s: bare statements %d values %.0f ms; all lettings of %d units %.0f ms (ratio %.1f); of one unit, %d"
                        + " shares, %.1f ms; my glass, %d units, %.0f ms (ratio %.1f)%n",
                name,
                read,
                (bareRead - begun) / 1e6,
                let,
                (letTold - bareRead) / 1e6,
                (double) (letTold - bareRead) / (bareRead - begun),
                shares,
                (oneTold - letTold) / 1e6,
                weighed,
                (end - todayTold) / 1e6,
                (double) (end - todayTold) / (bareRead - begun));
        System.out.printf(
                Locale.ROOT,
                "    the day: %d go, %d come, %d late, %d to be looked at: %.0f ms (ratio %.1f)%n",
                pieces(today.out()),
                pieces(today.back()),
                today.late().size(),
                today.testing().size(),
                (todayTold - oneTold) / 1e6,
                (double) (todayTold - oneTold) / (bareRead - begun));
    }

    private static int pieces(List<Today.Passage> passages) {
        return passages.stream().mapToInt(each -> each.pieces().size()).sum();
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long read(Connection bare, String table) throws SQLException {
        long values = 0;
        try (PreparedStatement statement = bare.prepareStatement("SELECT * FROM " + table);
                ResultSet rows = statement.executeQuery()) {
            int columns = rows.getMetaData().getColumnCount();
            while (rows.next()) {
                for (int column = 1; column <= columns; column++) {
                    values += rows.getString(column) == null ? 0 : 1;
                }
            }
        }
        return values;
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new IllegalStateException(problem.toString());
        });
    }

    private static void units(Rooms rooms) {
        done(rooms.transactions().atomically(() -> {
            for (int number = 1; number <= UNITS; number++) {
                Unit plain = Unit.serving("U-" + number, Unit.Use.NONE);
                done(rooms.shelf()
                        .units()
                        .add(new Unit(
                                plain.tag(),
                                plain.model(),
                                plain.serial(),
                                new Holding.Owned(
                                        Optional.of(TODAY.minusYears(1 + number % 5)),
                                        Optional.of(Choices.euros("10000")),
                                        "",
                                        ""),
                                Optional.of(new Unit.Value(Choices.euros(String.valueOf(8000 + number)), TODAY)),
                                plain.papers(),
                                plain.accessories(),
                                plain.use(),
                                plain.departure())));
            }
            return Outcome.done(true);
        }));
    }

    private static void bookings(Connection bare) throws SQLException {
        bare.setAutoCommit(false);
        try (PreparedStatement statement =
                bare.prepareStatement("INSERT INTO occupation (version, unit_id, kind, starts_at, ends_at, free_at,"
                        + " is_cancelled, subject, person_id, recorded_at, went_out_at, came_back_at, facts_json) VALUES"
                        + " (1, ?, 'booking', ?, ?, ?, 0, 'x', 1, 0, ?, ?, '{}')")) {
            long first = TODAY.minusYears(1).toEpochDay() * 86_400;
            for (int unit = 1; unit <= UNITS; unit++) {
                for (int booking = 0; booking < BOOKINGS; booking++) {
                    long out = first + booking * 15L * 86_400;
                    long back = out + (2 + unit % 7) * 86_400L;
                    long[] values = {unit, out, back, back, out, back};
                    for (int at = 0; at < values.length; at++) {
                        statement.setLong(at + 1, values[at]);
                    }
                    statement.addBatch();
                }
            }
            statement.executeBatch();
        }
        bare.commit();
        bare.setAutoCommit(true);
    }

    /**
     * One more booking a unit within two weeks around today, three days each: what went out and should be back came back,
     * but each tenth of it. Each unit has a service plan.
     */
    private static void around(Connection bare) throws SQLException {
        bare.setAutoCommit(false);
        try (PreparedStatement booking =
                        bare.prepareStatement("INSERT INTO occupation (version, unit_id, kind, starts_at, ends_at,"
                                + " free_at, is_cancelled, subject, person_id, recorded_at, went_out_at, came_back_at,"
                                + " facts_json) VALUES (1, ?, 'booking', ?, ?, ?, 0, 'y', 1, 0, ?, ?, '{}')");
                PreparedStatement plan = bare.prepareStatement("INSERT INTO service_plan (version, unit_id,"
                        + " every_days_out, last_done_on) VALUES (1, ?, 400, '2026-01-01')")) {
            long now = TODAY.toEpochDay() * 86_400 + 12 * 3_600;
            for (int unit = 1; unit <= UNITS; unit++) {
                long out = now + 3 * 3_600 + (unit % 15 - 5) * 86_400L;
                long back = out + 3 * 86_400L;
                booking.setLong(1, unit);
                booking.setLong(2, out);
                booking.setLong(3, back);
                booking.setLong(4, back);
                booking.setObject(5, out < now ? out : null);
                booking.setObject(6, back < now && unit % 10 != 0 ? back : null);
                booking.addBatch();
                plan.setLong(1, unit);
                plan.addBatch();
            }
            booking.executeBatch();
            plan.executeBatch();
        }
        bare.commit();
        bare.setAutoCommit(true);
    }

    /** A rental has a line a unit, three days at 240.00 each; the newest hundred are not settled and go about today. */
    private static void rentals(Rooms rooms, Connection bare) throws SQLException {
        bare.setAutoCommit(false);
        try (PreparedStatement statement =
                bare.prepareStatement("INSERT INTO quote (version, number, customer, decision, valid_until, quote_json)"
                        + " VALUES (1, ?, 'Nell Orrin', 'open', '2027-12-31', '{}')")) {
            for (int number = 1; number <= RENTALS; number++) {
                statement.setLong(1, number);
                statement.executeUpdate();
            }
        }
        bare.commit();
        bare.setAutoCommit(true);
        Rentals rentals = rooms.desk().rentals();
        done(rooms.transactions().atomically(() -> {
            for (int number = 1; number <= RENTALS; number++) {
                Stored<Rental.Id, Rental> added = done(rentals.add(rental(number)));
                if (number <= RENTALS - 100) {
                    done(rentals.change(new Stored<>(added.id(), added.version(), settled(added.facts()))));
                }
            }
            return Outcome.done(true);
        }));
    }

    private static Rental settled(Rental rental) {
        return new Rental(
                rental.number(),
                rental.quote(),
                rental.customer(),
                rental.promise(),
                rental.placed(),
                rental.charges(),
                rental.deposit(),
                Optional.of(new Rental.Ending(
                        false, Optional.of(rental.number()), new Person.Id(1), Instant.parse("2027-05-01T10:00:00Z"))),
                List.of());
    }

    private static Rental rental(int number) {
        List<PricedLine> lines = new ArrayList<>();
        List<Rental.Placed> placed = new ArrayList<>();
        Rental.Check check =
                new Rental.Check(List.of("front cap"), "", new Person.Id(1), Instant.parse("2027-04-01T10:00:00Z"));
        for (int line = 0; line < A_RENTAL; line++) {
            int at = (number - 1) * A_RENTAL + line;
            Unit.Id unit = new Unit.Id(1 + at % UNITS);
            lines.add(line(line, unit));
            boolean past = number <= RENTALS - 100;
            placed.add(new Rental.Placed(
                    line,
                    unit,
                    new Occupation.Id(
                            past
                                    ? (unit.number() - 1) * BOOKINGS + at / UNITS + 1
                                    : (long) UNITS * BOOKINGS + unit.number()),
                    false,
                    Optional.of(check).filter(each -> past),
                    Optional.of(check).filter(each -> past)));
        }
        Money none = Choices.euros("0");
        PackagePrice price = new PackagePrice(asked(), none.currency(), TODAY, lines, List.of(), none, List.of());
        return new Rental(
                number,
                new Quote.Id(number),
                new Customer("Nell Orrin", "", "Winter Quarry"),
                new Promise(price, TODAY, new Person.Id(1), TODAY, none, ""),
                placed,
                List.of(),
                new Rental.Deposit(none, none, none),
                Optional.empty(),
                List.of());
    }

    private static PackageAsked asked() {
        return new PackageAsked(
                IntStream.range(0, A_RENTAL)
                        .mapToObj(
                                line -> new PackageAsked.Asked(new Wish.OfUnit(new Unit.Id(1 + line)), 1, Percent.ZERO))
                        .toList(),
                new Schedule(List.of(new Schedule.Span(dates(), DayUse.SHOOT))),
                false,
                Percent.ZERO,
                "");
    }

    private static DateRange dates() {
        return DateRange.inclusive(LocalDate.of(2027, 4, 5), LocalDate.of(2027, 4, 7));
    }

    private static PricedLine line(int line, Unit.Id unit) {
        Money hire = Choices.euros("240");
        Money none = Choices.euros("0");
        return new PricedLine(
                line,
                "Heron 40",
                List.of(unit),
                dates(),
                "3 × 1 day 80.00",
                hire,
                Percent.ZERO,
                none,
                none,
                List.of(),
                hire,
                Choices.euros("80"),
                new Rate(
                        "h40",
                        Map.of(),
                        1,
                        Choices.days("80"),
                        List.of(),
                        Optional.of(new Lets(Lets.Kind.MODEL, 1)),
                        Map.of()),
                Optional.empty());
    }
}
