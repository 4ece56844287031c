package dayglass.planning.ways;

import dayglass.cost.plan.Answer;
import dayglass.optics.Verdict;
import dayglass.planning.glass.JudgedGlass;
import dayglass.planning.glass.PieceCover;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A slot that others complete, which are judged like the way itself.
 *
 * @param by the options that do
 */
public record Completion(String slot, int days, List<By> by) {
    public Completion {
        by = List.copyOf(by);
    }

    /**
     * An option that completes a slot.
     *
     * @param glass that serves there; empty where it is not known, or the slot has no focal length
     * @param verdict on that glass
     * @param reasons why it wants care
     * @param untold why there is no verdict; empty text where none is wanted
     */
    public record By(
            String option, List<String> glass, Optional<Verdict> verdict, List<String> reasons, String untold) {
        public By {
            glass = List.copyOf(glass);
            reasons = List.copyOf(reasons);
        }

        private static By of(String option, String slot, SheetBasis basis) {
            PieceCover cover = basis.others().get(option);
            Set<JudgedGlass> serving = cover == null ? Set.of() : cover.by().getOrDefault(slot, Set.of());
            return new By(
                    option,
                    serving.stream().map(JudgedGlass::name).toList(),
                    serving.stream().flatMap(glass -> glass.verdict().stream()).reduce(Verdict::orWorse),
                    serving.stream().flatMap(glass -> glass.reasons().stream()).toList(),
                    serving.isEmpty() && basis.brief().focalOf(slot).isPresent()
                            ? "its glass is not named, so it is not judged"
                            : "");
        }
    }

    static List<Completion> of(Answer answer, SheetBasis basis) {
        Map<String, Set<String>> options = new LinkedHashMap<>();
        Map<String, Integer> days = new LinkedHashMap<>();
        for (Answer.Coverage each : answer.coverage()) {
            if (each.slot().endsWith(WayQuestion.COMPLETED)) {
                options.computeIfAbsent(each.slot(), slot -> new TreeSet<>()).addAll(each.by());
                days.merge(each.slot(), 1, Integer::sum);
            }
        }
        List<Completion> completions = new ArrayList<>();
        options.forEach((completed, by) -> {
            String slot = WayQuestion.slotOf(completed);
            completions.add(new Completion(
                    slot,
                    days.getOrDefault(completed, 0),
                    by.stream().map(option -> By.of(option, slot, basis)).toList()));
        });
        return completions;
    }
}
