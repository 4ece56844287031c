package dayglass.books;

import dayglass.base.DateRange;
import dayglass.base.Money;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One thing that must be paid and can be posted: a rental period of one copy, or one purchase.
 *
 * @param date of the payment: a rental's first day, the day from which a purchase serves
 * @param service the days held; of goods, the one day of their supply
 * @param kind rental or purchase
 * @param slots what it serves, in the order in which the job asks for them; empty where it serves none
 * @param costCode the production's own, as typed; empty where none was given
 * @param blocks how the hire is made up, in words; empty for a purchase
 * @param amounts at least one, all of one currency, in the order of the charge; a discount is negative, so that a line adds across
 */
public record PayableLine(
        LocalDate date,
        DateRange service,
        LineKind kind,
        String supplier,
        String option,
        List<String> slots,
        String costCode,
        String blocks,
        Map<AmountColumn, Money> amounts) {

    public PayableLine {
        slots = List.copyOf(slots);
        amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
        if (kind == LineKind.OWNED) {
            throw new IllegalArgumentException("an owned unit moves no money: " + option);
        }
        if (amounts.isEmpty()) {
            throw new IllegalArgumentException("a payable line needs an amount: " + option);
        }
    }

    public Optional<Money> amount(AmountColumn column) {
        return Optional.ofNullable(amounts.get(column));
    }

    /** Before tax and add-ons. */
    public Money net() {
        return amounts.entrySet().stream()
                .filter(entry -> entry.getKey().purpose().isNet())
                .map(Map.Entry::getValue)
                .reduce(zero(), Money::plus);
    }

    /** Everything: what is paid. */
    public Money total() {
        return amounts.values().stream().reduce(zero(), Money::plus);
    }

    private Money zero() {
        return Money.zero(amounts.values().iterator().next().currency());
    }
}
