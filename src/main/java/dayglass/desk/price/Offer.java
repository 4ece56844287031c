package dayglass.desk.price;

import dayglass.catalogue.BudgetRate;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalTerms;
import dayglass.inventory.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One way of supplying demands, and what it is by the card.
 *
 * @param demand the first that it serves
 * @param what as people say it
 * @param foreign the rate as the card has it and how it was converted, where the card is in another currency
 * @param units the very units that go, where they are fixed; empty for any of the model that the rate lets
 */
record Offer(
        Question.Rental option, Rate rate, Demand demand, String what, List<Unit.Id> units, Optional<Foreign> foreign) {
    /** A line of a card in another currency. */
    record Foreign(Rate rate, BudgetRate at) {}

    Offer {
        units = List.copyOf(units);
    }

    /** The model that a unit is picked from, where none is fixed. */
    LensModel.Id model() {
        return new LensModel.Id(rate.lets().orElseThrow().number());
    }

    /** The terms without what a customer with proof of insurance does not pay. */
    static RentalTerms terms(Rate rate, boolean insured) {
        return terms(rate, insured, Set.of());
    }

    /** The same, without the add-ons of some marks. */
    static RentalTerms terms(Rate rate, boolean insured, Set<Mark> without) {
        RentalTerms terms = rate.terms();
        Set<String> dropped = new HashSet<>();
        for (RentalTerms.AddOn addOn : terms.addOns()) {
            Mark mark = rate.mark(addOn.name());
            if (without.contains(mark) || (insured && mark == Mark.WAIVER)) {
                dropped.add(addOn.name());
            }
        }
        List<RentalTerms.AddOn> kept = terms.addOns().stream()
                .filter(addOn -> !dropped.contains(addOn.name()))
                .map(addOn -> without(addOn, dropped))
                .toList();
        return new RentalTerms(
                terms.blocks(),
                terms.extraDay(),
                terms.dayFactors(),
                terms.longHire(),
                terms.minimumCharge(),
                terms.perTrip(),
                kept);
    }

    private static RentalTerms.AddOn without(RentalTerms.AddOn addOn, Set<String> waivers) {
        Set<String> on = new HashSet<>(addOn.on());
        on.removeAll(waivers);
        return new RentalTerms.AddOn(addOn.name(), addOn.percent(), on);
    }
}
