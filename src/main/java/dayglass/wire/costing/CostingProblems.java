package dayglass.wire.costing;

import dayglass.cost.plan.Costing;
import dayglass.wire.Json;
import dayglass.wire.Problem;

/** The problem documents that stand for a plan where there is none. */
public final class CostingProblems {
    private CostingProblems() {}

    /** No plan exists: every slot and day that stays short, or that the cash limit alone stands in the way. */
    public static Problem impossible(Costing.Impossible impossible) {
        Json.Members more = Json.object()
                .put(
                        "uncovered",
                        Json.list(impossible.shortages().stream()
                                .map(shortage -> Json.object()
                                        .put("slot", shortage.slot())
                                        .put("date", shortage.date().toString())
                                        .put("short", shortage.missing())
                                        .build())
                                .toList()));
        if (impossible.cashLimitOnly()) {
            more.put("cashLimitOnly", true);
        }
        return new Problem("no-plan", "No plan exists", 422, why(impossible), more.build());
    }

    /** One sentence for people. */
    public static String why(Costing.Impossible impossible) {
        if (impossible.cashLimitOnly()) {
            return "Everything could be covered, but not with purchases within the cash limit: raise the limit or add "
                    + "a rental.";
        }
        return impossible.shortages().isEmpty()
                ? "No set of rentals, purchases and owned units covers every slot on every day."
                : "All options together leave some slots short on some days: add options or copies, or ask for less.";
    }

    public static Problem outOfTime() {
        return Problem.of(
                "out-of-time",
                "No plan was found in time",
                503,
                "The time limit came before any plan was found; one may exist. Allow more time.");
    }
}
