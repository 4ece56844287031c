package dayglass.web.page.form;

import dayglass.base.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where in a form the faults of its JSON belong. The two are alike but for what is covered, whose members are slots and
 * whose fields are rows, and for rows of which nothing was filled in, which the JSON lacks altogether.
 */
final class FaultPlaces {
    private static final Pattern COVERED = Pattern.compile("/covers/([^/]*)");
    private static final Pattern GOOD_COUNT = Pattern.compile("[1-9][0-9]?|100");
    private static final Pattern SLOT = Pattern.compile("(/covers/[0-9]+)/slot");

    /** The field that stands first in what a form may leave blank altogether. */
    private static final Map<String, String> FIRST_FIELDS = Map.of(
            "/covers", "/covers/0/slot",
            "/blocks", "/blocks/0/days",
            "/resale", "/resale/lossPercentPerYear");

    private final Map<String, String> values;

    FaultPlaces(Map<String, String> values) {
        this.values = values;
    }

    /** True of a field that a form shows even where nothing was typed into its row. */
    static boolean isFirstField(String name) {
        return FIRST_FIELDS.containsValue(name);
    }

    List<Fault> of(List<Fault> faults) {
        List<Fault> placed = new ArrayList<>();
        for (Fault fault : faults) {
            placed.add(new Fault(place(fault.pointer()), fault.message()));
        }
        return placed;
    }

    private String place(String pointer) {
        Matcher covered = COVERED.matcher(pointer);
        if (covered.matches()) {
            return rowOf(covered.group(1).replace("~1", "/").replace("~0", "~"))
                    .map(row -> row + (hasGoodCount(row) ? "/slot" : "/count"))
                    .orElse(pointer);
        }
        return FIRST_FIELDS.getOrDefault(pointer, pointer);
    }

    /** The last row of the slot, which is the one at fault where a slot is given twice. */
    private Optional<String> rowOf(String slot) {
        return values.entrySet().stream()
                .filter(field -> field.getValue().strip().equals(slot))
                .map(field -> SLOT.matcher(field.getKey()))
                .filter(Matcher::matches)
                .map(row -> row.group(1))
                .reduce((earlier, later) -> later);
    }

    private boolean hasGoodCount(String row) {
        return GOOD_COUNT
                .matcher(values.getOrDefault(row + "/count", "").strip())
                .matches();
    }
}
