package dayglass.catalogue;

import dayglass.base.DateRange;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalTerms;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One line of a rate card.
 *
 * @param code the id that the option has in a costing
 * @param covers how many of each slot one copy serves
 * @param copies how many can be held on one day
 * @param available the windows, each of which a rental period must lie inside of; empty for always
 * @param lets the model, set or unit that it is for, where that is said; one that covers no slot serves no job
 * @param marks what each add-on is, by its name; those that are left out are charges
 */
public record Rate(
        String code,
        Map<String, Integer> covers,
        int copies,
        RentalTerms terms,
        List<DateRange> available,
        Optional<Lets> lets,
        Map<String, Mark> marks) {
    public Rate {
        marks = Map.copyOf(marks);
        covers = Map.copyOf(covers);
        available = List.copyOf(available);
    }

    public static Rate of(Question.Rental option) {
        return of(option, Optional.empty(), Map.of());
    }

    public static Rate of(Question.Rental option, Optional<Lets> lets, Map<String, Mark> marks) {
        return new Rate(option.id(), option.covers(), option.copies(), option.terms(), option.available(), lets, marks);
    }

    /** What an add-on is. */
    public Mark mark(String addOn) {
        return marks.getOrDefault(addOn, Mark.CHARGE);
    }

    /** The option that it is in a costing. */
    public Question.Rental from(Supplier supplier) {
        return new Question.Rental(code, supplier.name(), covers, copies, terms, available, Map.of());
    }
}
