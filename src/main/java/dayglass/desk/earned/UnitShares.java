package dayglass.desk.earned;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Shares;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Rental;
import dayglass.inventory.Unit;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What a rental brings each unit: a line's income shared over the units that went out or are to go on it, by their
 * replacement values where all have one in one currency, else evenly; to the minor unit, by largest remainder. What was
 * rented in for the customer brings the shelf nothing, and nor does a rental that was cancelled.
 */
final class UnitShares {
    private UnitShares() {}

    static Map<Unit.Id, Money> of(Rental rental, Function<Unit.Id, Optional<Money>> value) {
        Map<Unit.Id, Money> shares = new LinkedHashMap<>();
        boolean cancelled = rental.ending().filter(Rental.Ending::cancelled).isPresent();
        List<PricedLine> lines = rental.promise().price().lines();
        for (int line = 0; line < lines.size() && !cancelled; line++) {
            List<Unit.Id> units = units(rental, line);
            if (lines.get(line).rentedIn().isEmpty() && !units.isEmpty()) {
                Money income = LineIncome.of(rental, line);
                List<BigInteger> parts = Shares.byWeight(income.minor(), weights(units, value));
                IntStream.range(0, units.size())
                        .forEach(at ->
                                shares.merge(units.get(at), new Money(income.currency(), parts.get(at)), Money::plus));
            }
        }
        return shares;
    }

    /** One that gave way to another before it went out has no part in it. */
    private static List<Unit.Id> units(Rental rental, int line) {
        return rental.placed().stream()
                .filter(placed -> placed.line() == line)
                .filter(placed -> !placed.replaced() || placed.out().isPresent())
                .map(Rental.Placed::unit)
                .distinct()
                .toList();
    }

    private static List<BigInteger> weights(List<Unit.Id> units, Function<Unit.Id, Optional<Money>> value) {
        List<Money> values = units.stream()
                .flatMap(unit -> value.apply(unit).stream())
                .filter(amount -> amount.signum() > 0)
                .toList();
        List<Currency> currencies =
                values.stream().map(Money::currency).distinct().toList();
        return values.size() == units.size() && currencies.size() == 1
                ? values.stream().map(Money::minor).toList()
                : units.stream().map(unit -> BigInteger.ONE).toList();
    }
}
