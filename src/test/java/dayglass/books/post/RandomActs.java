package dayglass.books.post;

import static dayglass.books.BookHouse.EUR;
import static dayglass.books.BookHouse.MONDAY;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.entry.Split;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/** Random acts on the books of one job; those that are refused count as tried. */
final class RandomActs {
    private static final List<String> CODES = List.of("2340", "2350", "2360", "");
    private static final List<String> SUPPLIERS = List.of("Quay House", "Far Freight", "=1+2", "Salt & Sons");
    private static final List<String> EPISODES = List.of("", "E1", "E2");

    private final Books books;
    private final Job.Id job;
    private final Random random;
    private final List<Posted> orders = new ArrayList<>();
    private final List<Posted> others = new ArrayList<>();
    private final Map<String, Integer> done = new TreeMap<>();
    private LocalDate closed = MONDAY.minusDays(1);
    private int number;

    RandomActs(Books books, Job.Id job, long seed) {
        this.books = books;
        this.job = job;
        this.random = new Random(seed);
    }

    /** How often each kind of act was done. */
    Map<String, Integer> done() {
        return new TreeMap<>(done);
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private LocalDate open() {
        return closed.plusDays(1 + random.nextInt(20));
    }

    private Entry entry(Kind kind) {
        boolean foreign = random.nextInt(3) == 0;
        Currency currency = Currency.of(foreign ? pick(List.of("USD", "JPY", "KWD")) : "EUR");
        LocalDate date = open();
        Exchange exchange = foreign
                ? new Exchange(BigDecimal.valueOf(1 + random.nextInt(20_000), 4), "a list", date)
                : Exchange.none(date);
        long net = (long) random.nextInt(2_000_000) - (kind == Kind.ACTUAL ? 200_000L : 0L);
        Money money = Money.ofMinor(currency, net);
        Money tax = Money.ofMinor(currency, net * (long) random.nextInt(25) / 100L);
        return new Entry(
                kind,
                job,
                date,
                DateRange.inclusive(date, date.plusDays(random.nextInt(30))),
                new Entry.Coding(pick(CODES), pick(EPISODES), pick(SUPPLIERS)),
                new Entry.Item("thing " + number++, "", "", BigDecimal.ONE, money),
                new Entry.Sum(Amounts.at(exchange, EUR, money, tax), "V", exchange),
                new Entry.Papers("PO-" + random.nextInt(50), "", ""),
                Entry.Links.NONE);
    }

    void act() {
        int what = random.nextInt(100);
        if (what < 35) {
            count("post", books.post().post(List.of(entry(random.nextBoolean() ? Kind.ACTUAL : Kind.ESTIMATE))))
                    .ifPresent(others::addAll);
        } else if (what < 50) {
            List<Split.Part> parts = List.of(
                    new Split.Part(pick(CODES), "E1", BigInteger.valueOf(1 + random.nextInt(9))),
                    new Split.Part(pick(CODES), "E2", BigInteger.valueOf(1 + random.nextInt(9))));
            count("split", books.post().postSplit(entry(Kind.ACTUAL), parts, random.nextBoolean()));
        } else if (what < 70) {
            count("order", books.post().post(List.of(entry(Kind.COMMITMENT)))).ifPresent(orders::addAll);
        } else if (what < 90 && !orders.isEmpty()) {
            invoice(orders.get(Math.max(0, orders.size() - 1 - random.nextInt(40))));
        } else if (what < 97 && !others.isEmpty()) {
            count("reverse", books.post().reverse(pick(others).id(), open(), "wrong", random.nextBoolean()));
        } else if (random.nextInt(5) == 0) {
            books.close()
                    .next(job)
                    .ifPresent(next -> count("close", books.close().close(job, next.lastDay()))
                            .ifPresent(act -> closed = next.lastDay()));
        }
    }

    private void invoice(Posted order) {
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
        Invoice invoice = new Invoice(
                job,
                entry.coding().supplier(),
                "I-" + number++,
                entry.date(),
                open(),
                entry.sum().exchange(),
                List.of(line));
        count("invoice", books.matchInvoice().post(invoice))
                .ifPresent(kept -> others.addAll(books.entries().posting(kept.posting())));
    }

    private <T> Optional<T> count(String what, Outcome<T> outcome) {
        return outcome.fold(
                value -> {
                    done.merge(what, 1, Integer::sum);
                    return Optional.of(value);
                },
                problem -> Optional.empty());
    }
}
