package dayglass.books.export;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What an export holds, so that its reader can check that all of it arrived: counted as its entries go by. */
final class ControlTotals {
    /** Of an export without entries. */
    private static final Instant NO_MOMENT = Instant.parse("1980-02-01T00:00:00Z");

    private final Map<Kind, Sums> byKind = new EnumMap<>(Kind.class);
    private final Map<String, Sums> byCurrency = new TreeMap<>();
    private long rows;
    private long first;
    private long last;
    private Instant lastAt = NO_MOMENT;

    private ControlTotals() {}

    /** Net and tax of some entries. */
    record Sums(Money net, Money tax) {
        Money gross() {
            return net.plus(tax);
        }

        private Sums plus(Sums other) {
            return new Sums(net.plus(other.net), tax.plus(other.tax));
        }
    }

    static ControlTotals of(Entries.Run entries) {
        ControlTotals totals = new ControlTotals();
        entries.each(totals::add);
        return totals;
    }

    private void add(Posted posted) {
        Amounts amounts = posted.entry().amounts();
        byKind.merge(posted.entry().kind(), new Sums(amounts.baseNet(), amounts.baseTax()), Sums::plus);
        byCurrency.merge(amounts.net().currency().code(), new Sums(amounts.net(), amounts.tax()), Sums::plus);
        rows++;
        first = first == 0 ? posted.id().number() : first;
        last = posted.id().number();
        lastAt = posted.at();
    }

    long rows() {
        return rows;
    }

    /** The number of the first entry; 0 where there is none. */
    long first() {
        return first;
    }

    long last() {
        return last;
    }

    /** When the last entry was posted; files bear it as their date. */
    Instant lastAt() {
        return lastAt;
    }

    /** Of each kind, in the base currency. */
    Map<Kind, Sums> byKind() {
        return new EnumMap<>(byKind);
    }

    /** Of each currency, in it. */
    Map<String, Sums> byCurrency() {
        return new TreeMap<>(byCurrency);
    }

    Optional<Currency> base() {
        return byKind.values().stream().map(sums -> sums.net().currency()).findFirst();
    }

    Optional<Money> baseNet() {
        return byKind.values().stream().map(Sums::net).reduce(Money::plus);
    }

    Optional<Money> baseTax() {
        return byKind.values().stream().map(Sums::tax).reduce(Money::plus);
    }

    Optional<Money> baseGross() {
        return byKind.values().stream().map(Sums::gross).reduce(Money::plus);
    }
}
