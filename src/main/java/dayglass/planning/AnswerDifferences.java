package dayglass.planning;

import dayglass.planning.Change.Subject;
import dayglass.wire.Json;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What differs between two answers: their amounts, and the choices that only one of them makes. */
final class AnswerDifferences {
    private static final List<String> AMOUNTS = List.of("total", "lowerBound", "optimal", "payable");

    private AnswerDifferences() {}

    static List<Change> between(Json before, Json after) {
        List<Change> changes = new ArrayList<>();
        CompareCostings.compare(Subject.AMOUNT, amounts(before), amounts(after), changes);
        CompareCostings.compare(Subject.CHOICE, choices(before), choices(after), changes);
        return changes;
    }

    private static Map<String, String> amounts(Json answer) {
        Map<String, String> amounts = Leaves.of(answer);
        amounts.keySet().removeIf(name -> !AMOUNTS.contains(name) && !name.startsWith("comparison/"));
        return amounts;
    }

    /** The choices by what they are, with what all that are alike come to; a plan may take one thing twice. */
    private static Map<String, String> choices(Json answer) {
        Map<String, String> choices = new TreeMap<>();
        if (((Json.Obj) answer).members().get("choices") instanceof Json.Arr list) {
            for (Json choice : list.entries()) {
                Map<String, String> leaves = Leaves.of(choice);
                String dates = leaves.containsKey("to") ? " " + leaves.get("from") + " to " + leaves.get("to") : "";
                String name = leaves.get("kind") + " " + leaves.get("option") + dates;
                String cost = leaves.getOrDefault("total", leaves.getOrDefault("netCost", "taken"));
                choices.merge(name, cost, (one, other) -> one + " + " + other);
            }
        }
        return choices;
    }
}
