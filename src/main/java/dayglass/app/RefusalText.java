package dayglass.app;

import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import dayglass.wire.FaultLines;
import dayglass.wire.costing.CostingProblems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Why there is no plan, in words. */
final class RefusalText {
    private RefusalText() {}

    /** What is short, slot by slot; days that follow on each other stand in one line. */
    static String impossible(Question question, Costing.Impossible impossible) {
        TextLayout lines = new TextLayout().sentence(0, question.job() + ": no plan exists.");
        lines.sentence(0, CostingProblems.why(impossible));
        if (impossible.shortages().isEmpty()) {
            return lines.toString();
        }
        lines.blank().heading("What is short", "how many short");
        Map<String, List<Run>> runs = new LinkedHashMap<>();
        for (Costing.Shortage shortage : impossible.shortages()) {
            add(runs.computeIfAbsent(shortage.slot(), slot -> new ArrayList<>()), shortage);
        }
        runs.forEach((slot, ofSlot) -> {
            lines.sentence(2, slot);
            ofSlot.forEach(run -> lines.row(6, DayWords.counted(run.days()), Integer.toString(run.missing())));
        });
        return lines.toString();
    }

    /** Each fault with its line, its pointer and its mend. */
    static String faulty(byte[] text, List<Fault> faults) {
        FaultLines places = FaultLines.of(text, faults);
        TextLayout lines = new TextLayout()
                .sentence(
                        0,
                        faults.size() == 1
                                ? "The request has a fault; nothing was computed."
                                : "The request has " + faults.size() + " faults; nothing was computed.");
        for (Fault fault : faults) {
            OptionalInt line = places.lineOf(fault);
            String where = (line.isPresent() ? "line " + line.getAsInt() + ", " : "")
                    + (fault.pointer().isEmpty() ? "the whole text" : printable(fault.pointer()));
            lines.sentence(2, where).sentence(6, printable(fault.message()));
        }
        return lines.toString();
    }

    /** A pointer may hold whatever a member's name does; what would move the cursor is shown as its escape. */
    private static String printable(String words) {
        StringBuilder shown = new StringBuilder();
        words.codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean harmless = type != Character.CONTROL && type != Character.SURROGATE && type != Character.FORMAT;
            shown.append(harmless ? Character.toString(c) : String.format("\\u%04x", c));
        });
        return shown.toString();
    }

    private static void add(List<Run> runs, Costing.Shortage shortage) {
        Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
        if (last != null && last.days().until().equals(shortage.date()) && last.missing() == shortage.missing()) {
            runs.set(
                    runs.size() - 1, new Run(DateRange.inclusive(last.days().from(), shortage.date()), last.missing()));
        } else {
            runs.add(new Run(DateRange.inclusive(shortage.date(), shortage.date()), shortage.missing()));
        }
    }

    private record Run(DateRange days, int missing) {}
}
