package dayglass.planning.ways;

import dayglass.cost.plan.Costing;
import dayglass.wire.costing.CostingProblems;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Why a way cannot be had, in one sentence. */
final class NoPlan {
    private static final int MOST_NAMED = 3;

    private NoPlan() {}

    static String why(Costing.Impossible why) {
        Set<String> slots = new LinkedHashSet<>();
        why.shortages().forEach(shortage -> slots.add(WayQuestion.slotOf(shortage.slot()) + " on " + shortage.date()));
        return slots.isEmpty()
                ? CostingProblems.why(why)
                : "Neither this way nor the job's other options cover "
                        + slots.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                        + (slots.size() > MOST_NAMED ? " and " + (slots.size() - MOST_NAMED) + " more." : ".");
    }
}
