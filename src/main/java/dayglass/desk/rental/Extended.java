package dayglass.desk.rental;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a line of a rental was kept longer so far; an extension that was taken back counts no more. */
record Extended(Rental rental, int line) {
    /** The places of the charges that stand, from 0, each with days that count from the promise. */
    private List<Integer> standing() {
        List<Charge> charges = rental.charges();
        return IntStream.range(0, charges.size())
                .filter(at ->
                        isOfLine(charges.get(at)) && charges.get(at).reverses().isEmpty())
                .filter(at -> charges.stream().noneMatch(each -> each.reverses().equals(Optional.of(at))))
                .boxed()
                .toList();
    }

    private boolean isOfLine(Charge charge) {
        return charge.kind() == Charge.Kind.EXTENSION && charge.line().equals(Optional.of(line));
    }

    LocalDate lastDay() {
        return lastDayWithout(-1);
    }

    /** The last day of use as it would be without the charge at a place. */
    LocalDate lastDayWithout(int place) {
        LocalDate promised = promised();
        return standing().stream()
                .filter(at -> at != place)
                .reduce((earlier, later) -> later)
                .map(at -> promised.plusDays(rental.charges().get(at).days()))
                .orElse(promised);
    }

    LocalDate promised() {
        return rental.promise().price().lines().get(line).dates().lastDay();
    }

    boolean isLatest(int place) {
        List<Integer> standing = standing();
        return !standing.isEmpty() && standing.get(standing.size() - 1) == place;
    }

    /** What was charged for all of them, what was taken back off it. */
    Money charged() {
        return rental.charges().stream()
                .filter(this::isOfLine)
                .map(Charge::total)
                .reduce(Money.zero(rental.promise().price().currency()), Money::plus);
    }

    /** The taxes in that, by code; what was charged before taxes stood apart has none. */
    Map<String, Money> taxes() {
        Map<String, Money> taxes = new LinkedHashMap<>();
        rental.charges().stream()
                .filter(this::isOfLine)
                .flatMap(charge -> charge.taxes().stream())
                .forEach(tax -> taxes.merge(tax.code(), tax.amount(), Money::plus));
        return taxes;
    }
}
