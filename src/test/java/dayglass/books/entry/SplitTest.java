package dayglass.books.entry;

import static dayglass.books.BookHouse.EUR;
import static dayglass.books.BookHouse.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.books.period.PeriodCalendar;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SplitTest {
    private static Entry entry(String currency, long netMinor, int days) {
        Money net = Money.ofMinor(dayglass.base.Currency.of(currency), netMinor);
        Exchange exchange = new Exchange(new BigDecimal("0.93"), "a bank's list", MONDAY);
        Amounts amounts = Amounts.at(exchange, EUR, net, net.times(2));
        return new Entry(
                Kind.ACTUAL,
                new Job.Id(1),
                MONDAY,
                DateRange.inclusive(MONDAY, MONDAY.plusDays(days - 1L)),
                new Entry.Coding("", "", "Quay House"),
                new Entry.Item("hire", "", "", BigDecimal.ONE, net),
                new Entry.Sum(amounts, "", exchange),
                Entry.Papers.NONE,
                Entry.Links.NONE);
    }

    /**
     * Source: 0.05 by 3:7 and 10.00 by 1:1:1 from Fowler, Patterns of Enterprise Application Architecture, Money; 10 by
     * 1:6 and the seats by the largest-remainder (Hamilton) method, recomputed for the house's check values.
     */
    @ParameterizedTest
    @CsvSource({
        "EUR, 5, 3:7, 2:3",
        "EUR, 1000, 1:1:1, 334:333:333",
        "JPY, 10, 1:6, 1:9",
        "JPY, 25, 1500:1500:900:500:500:200, 7:7:4:3:3:1",
        "JPY, 26, 1500:1500:900:500:500:200, 8:8:5:2:2:1",
        "EUR, -5, 3:7, -1:-4"
    })
    void aSplitGoesByLargestRemainder(String currency, long minor, String weights, String parts) {
        List<Split.Part> shares = List.of(weights.split(":", -1)).stream()
                .map(weight -> new Split.Part("2340", "E" + weight, new BigInteger(weight)))
                .toList();
        List<String> nets = Split.over(entry(currency, minor, 1), shares).stream()
                .map(part -> part.amounts().net().minor().toString())
                .toList();
        assertEquals(parts, String.join(":", nets));
    }

    @Property(tries = 500)
    void everyAmountAddsUpToTheWhole(
            @ForAll @LongRange(min = -1_000_000_000L, max = 1_000_000_000L) long minor,
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 1000) Integer> weights) {
        Entry whole = entry("USD", minor, 1);
        List<Split.Part> parts = weights.stream()
                .map(weight -> new Split.Part("a", "b", BigInteger.valueOf(weight)))
                .toList();
        assertEquals(
                whole.amounts(),
                Split.over(whole, parts).stream()
                        .map(Entry::amounts)
                        .reduce(Amounts::plus)
                        .orElseThrow());
    }

    @Property(tries = 200)
    void periodsAddUpToTheWholeAndCoverEachDayOnce(
            @ForAll @LongRange(min = -1_000_000L, max = 1_000_000L) long minor,
            @ForAll @IntRange(min = 1, max = 60) int days) {
        Entry whole = entry("USD", minor, days);
        List<Entry> parts =
                Split.overPeriods(whole, day -> PeriodCalendar.WEEKS.of(day).orElseThrow());
        assertEquals(
                whole.amounts(),
                parts.stream().map(Entry::amounts).reduce(Amounts::plus).orElseThrow());
        assertEquals(
                whole.service().stream().toList(),
                parts.stream().flatMap(part -> part.service().stream()).toList());
        assertEquals((days + 6) / 7, parts.size());
    }
}
