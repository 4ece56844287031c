package dayglass.inventory;

import dayglass.base.DateRange;
import dayglass.cost.plan.Question;
import java.util.List;
import java.util.Map;

/**
 * One physical thing that the house owns.
 *
 * @param tag the house's asset tag, unique; the id that the option has in a costing
 * @param covers how many of each slot it serves
 * @param available when it can be had; empty for always
 */
public record OwnedUnit(String tag, Map<String, Integer> covers, List<DateRange> available) {
    public OwnedUnit {
        covers = Map.copyOf(covers);
        available = List.copyOf(available);
    }

    /** The number of an owned unit. */
    public record Id(long number) implements dayglass.base.Id {}

    public static OwnedUnit of(Question.Owned option) {
        return new OwnedUnit(option.id(), option.covers(), option.available());
    }

    /** The option that it is in a costing. */
    public Question.Owned option() {
        return new Question.Owned(tag, covers, available);
    }
}
