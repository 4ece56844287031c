package dayglass.cost.verdict;

import dayglass.base.DateRange;
import dayglass.base.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * For whoever does not know how often the glass will be needed: buy in place of the rental that would bring the rent
 * paid to the price or above. What it costs is then at most twice the best in hindsight, whatever comes. That is
 * proved for a fixed purchase price without running costs and without resale, and claimed for nothing else.
 *
 * <p>Proof: until it buys, less than the price was paid, and the best in hindsight cost as much; once it buys, less
 * than the price and the price were paid, and the best in hindsight cost the price. (Ski rental: Karlin, Manasse,
 * Rudolph and Sleator 1988.)
 */
public final class BreakEvenRule {
    private BreakEvenRule() {}

    /**
     * A rental that was or would have been needed.
     *
     * @param last day of it
     */
    public record Hire(LocalDate date, LocalDate last, Money rent) {
        /** Of one day. */
        public Hire(LocalDate date, Money rent) {
            this(date, date, rent);
        }
    }

    /** Every day on which something was rented. */
    public static NavigableSet<LocalDate> days(List<Hire> history) {
        return history.stream()
                .flatMap(hire -> DateRange.inclusive(hire.date(), hire.last()).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * What the rule would have done.
     *
     * @param buysOn the day of the rental in whose place it buys; empty where it never does
     * @param cost of following the rule
     * @param hindsight the lesser of renting always and buying at once
     */
    public record Ruling(Optional<LocalDate> buysOn, Money rentPaid, Money cost, Money hindsight) {}

    /** The rule along a history, by date. */
    public static Ruling along(Money price, List<Hire> history) {
        List<Hire> byDate =
                history.stream().sorted(Comparator.comparing(Hire::date)).toList();
        Money zero = Money.zero(price.currency());
        Money all = byDate.stream().map(Hire::rent).reduce(zero, Money::plus);
        Money hindsight = all.compareTo(price) < 0 ? all : price;
        Money paid = zero;
        for (Hire hire : byDate) {
            if (paid.plus(hire.rent()).compareTo(price) >= 0) {
                return new Ruling(Optional.of(hire.date()), paid, paid.plus(price), hindsight);
            }
            paid = paid.plus(hire.rent());
        }
        return new Ruling(Optional.empty(), paid, paid, hindsight);
    }
}
