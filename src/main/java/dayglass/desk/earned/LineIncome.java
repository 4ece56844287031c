package dayglass.desk.earned;

import dayglass.base.Money;
import dayglass.desk.DeskRules;
import dayglass.desk.price.Extension;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a line of a rental brings the glass on it: hire less discount, and what keeping it longer or late added. Waivers,
 * other add-ons, trips and taxes are not the glass's. A day late counts whole, as it was charged for having it.
 */
final class LineIncome {
    private final Rental rental;
    private final int line;
    private final PricedLine priced;

    private LineIncome(Rental rental, int line) {
        this.rental = rental;
        this.line = line;
        this.priced = rental.promise().price().lines().get(line);
    }

    static Money of(Rental rental, int line) {
        LineIncome income = new LineIncome(rental, line);
        return income.priced
                .hire()
                .minus(income.priced.discount())
                .plus(income.late())
                .plus(income.extensions());
    }

    private Money none() {
        return Money.zero(priced.hire().currency());
    }

    private boolean isOfLine(Charge charge, Charge.Kind kind) {
        return charge.kind() == kind && charge.line().equals(Optional.of(line));
    }

    private Money late() {
        return rental.charges().stream()
                .filter(charge -> isOfLine(charge, Charge.Kind.LATE))
                .map(Charge::net)
                .reduce(none(), Money::plus);
    }

    /**
     * An extension is charged with its add-ons inside and its taxes, less what earlier ones of the line came to; its hire
     * follows in the same way from the rate and the days that the rental keeps.
     */
    private Money extensions() {
        List<Charge> charges = rental.charges();
        Map<Integer, Money> hires = new HashMap<>();
        Money sum = none();
        for (int at = 0; at < charges.size(); at++) {
            Charge charge = charges.get(at);
            if (isOfLine(charge, Charge.Kind.EXTENSION)) {
                Money more = charge.reverses().isPresent()
                        ? hires.getOrDefault(charge.reverses().get(), none()).times(-1)
                        : hire(charge.days()).minus(sum);
                hires.put(at, more);
                sum = sum.plus(more);
            }
        }
        return sum;
    }

    /** The rules price nothing of a line from the shelf. */
    private Money hire(int days) {
        return Extension.of(
                        priced,
                        rental.promise().price().asked(),
                        priced.dates().lastDay().plusDays(days),
                        DeskRules.USUAL)
                .map(Extension.Cost::hire)
                .orElseThrow();
    }
}
