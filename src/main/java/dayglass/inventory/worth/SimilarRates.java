package dayglass.inventory.worth;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.cost.rental.RentalTerms;
import dayglass.inventory.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * At what rates something that serves as a unit does could be rented from others instead: by their cards in force on a
 * day. A rate that says for which model it is goes by that, another by the slots that it covers.
 */
final class SimilarRates {
    private static final int MOST = 200;
    private static final int WEEK = 7;

    private final List<RateCard> inForce = new ArrayList<>();

    /** @param house whose own cards say what it lets for, and not what renting costs it */
    SimilarRates(RateCards cards, Optional<Supplier.Id> house, LocalDate day) {
        Optional<RateCard.Id> after = Optional.empty();
        List<Stored<RateCard.Id, RateCard>> some;
        do {
            some = cards.list(after, MOST);
            for (Stored<RateCard.Id, RateCard> each : some) {
                cards.inForce(each.facts(), day)
                        .filter(valid -> valid.id().equals(each.id()))
                        .filter(valid ->
                                house.filter(valid.facts().supplier()::equals).isEmpty())
                        .ifPresent(valid -> inForce.add(valid.facts()));
                after = Optional.of(each.id());
            }
        } while (some.size() == MOST);
    }

    /**
     * Rates with where they come from.
     *
     * @param from the codes of the cards' rates, or empty for the rule of thumb
     */
    record Found(List<RentalTerms> terms, List<String> from) {}

    /** What the cards have for a unit, else the rule of thumb on its value; empty where there is neither. */
    Optional<Found> of(Unit unit, Money value, Footing footing) {
        List<RentalTerms> terms = new ArrayList<>();
        List<String> from = new ArrayList<>();
        for (RateCard card : inForce) {
            for (Rate rate : card.rates()) {
                if (serves(rate, card.currency(), unit, value.currency())) {
                    terms.add(rate.terms());
                    from.add(rate.code());
                }
            }
        }
        return terms.isEmpty()
                ? footing.ruleOfThumb().map(rule -> new Found(List.of(byThumb(rule, value)), List.of()))
                : Optional.of(new Found(terms, from));
    }

    private static boolean serves(Rate rate, Currency of, Unit unit, Currency wanted) {
        return of.equals(wanted)
                && rate.lets().map(lets -> isOf(lets, unit)).orElseGet(() -> covers(rate, unit))
                && rate.terms().blocks().stream()
                        .anyMatch(block -> block.startsOn().isEmpty());
    }

    private static boolean isOf(Lets lets, Unit unit) {
        return lets.kind() == Lets.Kind.MODEL
                && unit.model().filter(model -> model.number() == lets.number()).isPresent();
    }

    private static boolean covers(Rate rate, Unit unit) {
        Map<String, Integer> slots = unit.use().covers();
        return !slots.isEmpty()
                && slots.entrySet().stream()
                        .allMatch(slot -> rate.covers().getOrDefault(slot.getKey(), 0) >= slot.getValue());
    }

    static RentalTerms byThumb(Footing.RuleOfThumb rule, Money value) {
        Money none = Money.zero(value.currency());
        return new RentalTerms(
                List.of(
                        new RentalTerms.Block(1, rule.day().of(value), Optional.empty()),
                        new RentalTerms.Block(WEEK, rule.week().of(value), Optional.empty())),
                Optional.empty(),
                Map.of(),
                List.of(),
                none,
                none,
                List.of());
    }
}
