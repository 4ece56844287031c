package dayglass.books.post;

import static dayglass.books.BookHouse.EUR;
import static dayglass.books.BookHouse.MONDAY;
import static dayglass.books.BookHouse.done;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.books.BookHouse;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.entry.Split;
import dayglass.books.export.EntryExport;
import dayglass.books.report.CostReport;
import dayglass.books.report.CostReport.Basis;
import dayglass.books.report.CostReport.By;
import dayglass.storage.Database;
import dayglass.storage.books.ChainCheck;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ten thousand random acts, after which entries, report and export agree to the cent. The entries are summed here from the
 * list, the report by the database, the export by reading its CSV back with another library.
 */
class RandomBooksTest {
    private static final int ACTS = 10_500;
    private static final long SEED = 20270405;
    private static final List<String> CODES = List.of("2340", "2350", "2360", "");
    private static final List<String> SUPPLIERS = List.of("Quay House", "Far Freight", "=1+2", "Salt & Sons");
    private static final List<String> EPISODES = List.of("", "E1", "E2");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private final Random random = new Random(SEED);
    private final List<Posted> orders = new ArrayList<>();
    private final List<Posted> others = new ArrayList<>();
    private final Map<String, Integer> acts = new TreeMap<>();
    private int number;

    @Test
    void threeWaysAgreeToTheCent() throws IOException {
        try (BookHouse house = new BookHouse(folder)) {
            // One transaction for many acts keeps the test quick; each act inside it is whole or refused by itself.
            for (int at = 0; at < ACTS; at += 500) {
                done(house.rooms.transactions().atomically(() -> {
                    for (int each = 0; each < 500; each++) {
                        act(house);
                    }
                    return Outcome.done(true);
                }));
            }
            assertTrue(
                    acts.keySet().containsAll(List.of("post", "split", "order", "invoice", "reverse", "close")),
                    acts.toString());
            compare(house);
            try (Database database = Database.open(house.file)) {
                assertEquals(List.of(), ChainCheck.of(database).findings());
            }
        }
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private LocalDate open(BookHouse house) {
        LocalDate closed = house.rooms.books().close().closedThrough(house.job).orElse(MONDAY.minusDays(1));
        return closed.plusDays(1 + random.nextInt(20));
    }

    private Entry entry(BookHouse house, Kind kind) {
        boolean foreign = random.nextInt(3) == 0;
        Currency currency = Currency.of(foreign ? pick(List.of("USD", "JPY", "KWD")) : "EUR");
        LocalDate date = open(house);
        Exchange exchange = foreign
                ? new Exchange(BigDecimal.valueOf(1 + random.nextInt(20_000), 4), "a list", date)
                : Exchange.none(date);
        long net = (long) random.nextInt(2_000_000) - (kind == Kind.ACTUAL ? 200_000L : 0L);
        Money money = Money.ofMinor(currency, net);
        Money tax = Money.ofMinor(currency, net * (long) random.nextInt(25) / 100L);
        return new Entry(
                kind,
                house.job,
                date,
                DateRange.inclusive(date, date.plusDays(random.nextInt(30))),
                new Entry.Coding(pick(CODES), pick(EPISODES), pick(SUPPLIERS)),
                new Entry.Item("thing " + number++, "", "", BigDecimal.ONE, money),
                new Entry.Sum(Amounts.at(exchange, EUR, money, tax), "V", exchange),
                new Entry.Papers("PO-" + random.nextInt(50), "", ""),
                Entry.Links.NONE);
    }

    private void act(BookHouse house) {
        Books books = house.rooms.books();
        int what = random.nextInt(100);
        if (what < 35) {
            count("post", books.post().post(List.of(entry(house, random.nextBoolean() ? Kind.ACTUAL : Kind.ESTIMATE))))
                    .ifPresent(others::addAll);
        } else if (what < 50) {
            List<Split.Part> parts = List.of(
                    new Split.Part(pick(CODES), "E1", BigInteger.valueOf(1 + random.nextInt(9))),
                    new Split.Part(pick(CODES), "E2", BigInteger.valueOf(1 + random.nextInt(9))));
            count("split", books.post().postSplit(entry(house, Kind.ACTUAL), parts, random.nextBoolean()));
        } else if (what < 70) {
            count("order", books.post().post(List.of(entry(house, Kind.COMMITMENT))))
                    .ifPresent(orders::addAll);
        } else if (what < 90 && !orders.isEmpty()) {
            invoice(house, orders.get(Math.max(0, orders.size() - 1 - random.nextInt(40))));
        } else if (what < 97 && !others.isEmpty()) {
            count("reverse", books.post().reverse(pick(others).id(), open(house), "wrong", random.nextBoolean()));
        } else if (random.nextInt(12) == 0) {
            books.close()
                    .next(house.job)
                    .ifPresent(next -> count("close", books.close().close(house.job, next.lastDay())));
        }
    }

    private void invoice(BookHouse house, Posted order) {
        Entry entry = order.entry();
        Money net = entry.amounts().net();
        Money part = Money.ofMinor(net.currency(), net.minor().longValueExact() * random.nextInt(150) / 100);
        Invoice.Line line = new Invoice.Line(
                Optional.of(order.id()),
                Invoice.Text.AS_ORDERED,
                part,
                Money.ofMinor(net.currency(), part.minor().longValueExact() / 5),
                random.nextBoolean(),
                "as it came");
        count(
                        "invoice",
                        house.rooms
                                .books()
                                .matchInvoice()
                                .post(new Invoice(
                                        house.job,
                                        entry.coding().supplier(),
                                        "I-" + number++,
                                        entry.date(),
                                        open(house),
                                        entry.sum().exchange(),
                                        List.of(line))))
                .ifPresent(kept -> others.addAll(house.rooms.books().entries().posting(kept.posting())));
    }

    private <T> Optional<T> count(String what, Outcome<T> outcome) {
        return outcome.fold(
                value -> {
                    acts.merge(what, 1, Integer::sum);
                    return Optional.of(value);
                },
                problem -> Optional.empty());
    }

    private static void compare(BookHouse house) throws IOException {
        Entries entries = house.rooms.books().entries();
        Entries.Which all = Entries.Which.of(house.job);
        Map<String, BigDecimal> listed = new TreeMap<>();
        for (Posted posted : entries.list(all, Optional.empty(), Integer.MAX_VALUE)) {
            Amounts amounts = posted.entry().amounts();
            add(
                    listed,
                    posted.entry().coding().costCode(),
                    posted.entry().kind().word(),
                    amounts.baseGross().major());
        }
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        entries.reading(all, run -> {
            try {
                new EntryExport(all, run).csv(csv);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
            return true;
        });
        Map<String, BigDecimal> exported = new TreeMap<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        for (CSVRecord row : format.parse(new java.io.StringReader(csv.toString(StandardCharsets.UTF_8)))) {
            add(exported, row.get("cost code"), row.get("kind"), new BigDecimal(row.get("base gross")));
        }
        assertEquals(listed, exported);
        CostReport report = CostReport.of(
                By.CODE, Basis.GROSS, EUR, house.rooms.costFigures().of(house.job, Optional.empty()));
        Map<String, BigDecimal> reported = new TreeMap<>();
        report.rows().forEach(row -> {
            add(reported, row.name(), "estimate", row.figures().estimate().major());
            add(reported, row.name(), "commitment", row.figures().committed().major());
            add(reported, row.name(), "actual", row.figures().actual().major());
            add(reported, row.name(), "accrual", row.figures().accrued().major());
        });
        reported.keySet().forEach(key -> listed.putIfAbsent(key, BigDecimal.ZERO.setScale(2)));
        assertEquals(listed, reported);
        assertTrue(listed.size() >= 12, listed.toString());
    }

    private static void add(Map<String, BigDecimal> into, String code, String kind, BigDecimal amount) {
        into.merge(code + " " + kind, amount, BigDecimal::add);
    }
}
