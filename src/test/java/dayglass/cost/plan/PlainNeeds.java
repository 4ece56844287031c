package dayglass.cost.plan;

import dayglass.base.DateRange;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How many of each slot a question asks for on each day, slots in the order in which they are first asked for. */
final class PlainNeeds {
    private final Map<String, int[]> counts = new LinkedHashMap<>();

    PlainNeeds(Question question) {
        int days = question.schedule().days();
        for (Question.Need need : question.needs()) {
            int[] perDay = counts.computeIfAbsent(need.slot(), slot -> new int[days]);
            for (int day = 0; day < days; day++) {
                if (asks(question, need, day)) {
                    perDay[day] += need.count();
                }
            }
        }
    }

    private static boolean asks(Question question, Question.Need need, int day) {
        LocalDate date = question.schedule().dateOf(day);
        return question.schedule().scheduledUseOn(day).map(need.on()::contains).orElse(false)
                || need.dates().stream().anyMatch(range -> range.contains(date));
    }

    List<String> slots() {
        return List.copyOf(counts.keySet());
    }

    int count(String slot, int day) {
        int[] perDay = counts.get(slot);
        return perDay == null ? 0 : perDay[day];
    }

    /** Whether a date lies in one of the windows, of which none means always. */
    static boolean open(List<DateRange> windows, LocalDate date) {
        return windows.isEmpty() || windows.stream().anyMatch(window -> window.contains(date));
    }

    /** Whether the dates from the first to the last lie inside one window. */
    static boolean insideOneWindow(List<DateRange> windows, LocalDate first, LocalDate last) {
        return windows.isEmpty()
                || windows.stream().anyMatch(window -> window.contains(first) && window.contains(last));
    }
}
