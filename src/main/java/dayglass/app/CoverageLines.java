package dayglass.app;

import dayglass.base.DateRange;
import dayglass.cost.plan.Answer.Coverage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Who serves each slot: days that follow on each other with the same cover stand in one line. */
final class CoverageLines {
    private CoverageLines() {}

    static void print(List<Coverage> coverage, TextLayout lines) {
        Map<String, List<Run>> runs = new LinkedHashMap<>();
        for (Coverage day : coverage) {
            List<Run> ofSlot = runs.computeIfAbsent(day.slot(), slot -> new ArrayList<>());
            Run last = ofSlot.isEmpty() ? null : ofSlot.get(ofSlot.size() - 1);
            if (last != null
                    && last.days().until().equals(day.date())
                    && last.by().equals(day.by())) {
                ofSlot.set(
                        ofSlot.size() - 1,
                        new Run(DateRange.inclusive(last.days().from(), day.date()), last.by()));
            } else {
                ofSlot.add(new Run(DateRange.inclusive(day.date(), day.date()), day.by()));
            }
        }
        runs.forEach((slot, ofSlot) -> {
            lines.sentence(2, slot);
            ofSlot.forEach(run -> lines.sentence(6, DayWords.counted(run.days()) + ": " + String.join(", ", run.by())));
        });
    }

    private record Run(DateRange days, List<String> by) {}
}
