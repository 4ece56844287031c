package dayglass.catalogue;

import dayglass.base.DateRange;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalTerms;
import java.util.List;
import java.util.Map;

/**
 * One line of a rate card.
 *
 * @param code the id that the option has in a costing
 * @param covers how many of each slot one copy serves
 * @param copies how many can be held on one day
 * @param available the windows, each of which a rental period must lie inside of; empty for always
 */
public record Rate(String code, Map<String, Integer> covers, int copies, RentalTerms terms, List<DateRange> available) {
    public Rate {
        covers = Map.copyOf(covers);
        available = List.copyOf(available);
    }

    public static Rate of(Question.Rental option) {
        return new Rate(option.id(), option.covers(), option.copies(), option.terms(), option.available());
    }

    /** The option that it is in a costing. */
    public Question.Rental from(Supplier supplier) {
        return new Question.Rental(code, supplier.name(), covers, copies, terms, available, Map.of());
    }
}
