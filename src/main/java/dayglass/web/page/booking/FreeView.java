package dayglass.web.page.booking;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is free from one moment to another, in words.
 *
 * @param when from when to when
 * @param others units that are not free
 */
public record FreeView(
        String when, List<OneUnit> free, List<OneModel> models, List<OneSet> sets, List<OneUnit> others) {
    private static final int MOST_SHOWN = 500;

    public FreeView {
        free = List.copyOf(free);
        models = List.copyOf(models);
        sets = List.copyOf(sets);
        others = List.copyOf(others);
    }

    /**
     * A unit.
     *
     * @param why it is not free, in sentences; empty for one that is
     * @param warnings what to mind
     * @param next when it next would be; empty where that is not known
     */
    public record OneUnit(
            long id, String tag, String model, String set, List<String> why, List<String> warnings, String next) {
        public OneUnit {
            why = List.copyOf(why);
            warnings = List.copyOf(warnings);
        }

        /** Whether each word stands in its tag, model or set, in capitals or not. */
        boolean has(String words) {
            String all = String.join("\n", tag, model, set).toLowerCase(Locale.ROOT);
            return Stream.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+", -1))
                    .allMatch(all::contains);
        }
    }

    /** How many of a model are free. */
    public record OneModel(String name, long free, long all) {}

    /** A set, whole or not. */
    public record OneSet(long id, String name, int free, int members, String next) {
        public boolean whole() {
            return free == members;
        }
    }

    /** Those that are shown; the rest asks for more words. */
    public List<OneUnit> shownFree() {
        return free.subList(0, Math.min(MOST_SHOWN, free.size()));
    }

    public List<OneUnit> shownOthers() {
        return others.subList(0, Math.min(MOST_SHOWN, others.size()));
    }

    /** Says that not all are shown. */
    public Optional<String> cut() {
        return Math.max(free.size(), others.size()) > MOST_SHOWN
                ? Optional.of("The first " + MOST_SHOWN + " are shown: say more to see the others.")
                : Optional.empty();
    }
}
