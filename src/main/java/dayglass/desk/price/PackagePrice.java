package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.catalogue.Mark;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The price of a package.
 *
 * @param pricedOn by the cards that were in force on this day
 * @param shorts what nobody can supply
 * @param replacementValue of the units that have one
 * @param withoutValue tags of those that have none
 */
public record PackagePrice(
        PackageAsked asked,
        Currency currency,
        LocalDate pricedOn,
        List<PricedLine> lines,
        List<Missing> shorts,
        Money replacementValue,
        List<String> withoutValue) {
    public PackagePrice {
        lines = List.copyOf(lines);
        shorts = List.copyOf(shorts);
        withoutValue = List.copyOf(withoutValue);
    }

    /**
     * So many of what a line asks for are missing.
     *
     * @param rentedIn a supplier's card has it, so that it stands among the lines
     * @param remedy what would mend it, in a sentence; empty where nothing is known
     */
    public record Missing(int line, String what, DateRange dates, boolean rentedIn, String remedy) {}

    public Money total() {
        return sum(PricedLine::total);
    }

    public Money hire() {
        return sum(PricedLine::hire);
    }

    public Money discount() {
        return sum(PricedLine::discount);
    }

    public Money trips() {
        return sum(PricedLine::trip);
    }

    /** Hire, trips and what else is no tax. */
    public Money net() {
        return total().minus(taxes().values().stream().reduce(Money.zero(currency), Money::plus));
    }

    /** What add-ons of a kind come to, by name. */
    public Map<String, Money> addOns(Mark mark) {
        Map<String, Money> sums = new LinkedHashMap<>();
        for (PricedLine line : lines) {
            for (PricedLine.AddOn addOn : line.addOns()) {
                if (addOn.mark() == mark) {
                    sums.merge(addOn.name(), addOn.amount(), Money::plus);
                }
            }
        }
        return sums;
    }

    public Map<String, Money> taxes() {
        return addOns(Mark.TAX);
    }

    /** Whether all that was asked for can be supplied. */
    public boolean whole() {
        return shorts.stream().allMatch(Missing::rentedIn);
    }

    private Money sum(Function<PricedLine, Money> amount) {
        return lines.stream().map(amount).reduce(Money.zero(currency), Money::plus);
    }
}
