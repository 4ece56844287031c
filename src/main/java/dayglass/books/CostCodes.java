package dayglass.books;

import dayglass.base.Fault;
import dayglass.cost.plan.Question;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The production's own cost codes as the user typed them, by the id of the option.
 *
 * @param byOption none is blank
 */
public record CostCodes(Map<String, String> byOption) {
    public static final CostCodes NONE = new CostCodes(Map.of());

    /** In code points. */
    public static final int LONGEST = 200;

    public CostCodes {
        byOption = byOption.entrySet().stream()
                .filter(entry -> !entry.getValue().isBlank())
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey, entry -> entry.getValue().strip()));
    }

    /** These codes, and those of another, which count where both have one. */
    public CostCodes with(CostCodes other) {
        Map<String, String> both = new TreeMap<>(byOption);
        both.putAll(other.byOption);
        return new CostCodes(both);
    }

    /** These codes but for the ones of some options. */
    public CostCodes without(Collection<String> options) {
        Map<String, String> left = new TreeMap<>(byOption);
        left.keySet().removeAll(options);
        return new CostCodes(left);
    }

    /** The code of an option, or empty text where none was typed. */
    public String of(String option) {
        return byOption.getOrDefault(option, "");
    }

    /**
     * What is wrong with these codes for that question, by id; empty where all is well.
     *
     * @param pointer of the object that holds them
     */
    public List<Fault> faults(Question question, String pointer) {
        Set<String> known = Stream.concat(
                        question.rentals().stream().map(Question.Rental::id),
                        Stream.concat(
                                question.purchases().stream().map(Question.Purchase::id),
                                question.owned().stream().map(Question.Owned::id)))
                .collect(Collectors.toSet());
        List<Fault> faults = new ArrayList<>();
        new TreeMap<>(byOption).forEach((option, code) -> {
            String at = pointer + "/" + option.replace("~", "~0").replace("/", "~1");
            if (!known.contains(option)) {
                faults.add(
                        new Fault(at, "No rental, purchase or owned unit of this costing has this id; drop the code."));
            } else if (code.codePointCount(0, code.length()) > LONGEST) {
                faults.add(new Fault(at, "A cost code has at most " + LONGEST + " characters; shorten it."));
            } else if (code.codePoints().anyMatch(CostCodes::isUnwritable)) {
                faults.add(new Fault(at, "A cost code is one line of text; take out the control characters."));
            }
        });
        return List.copyOf(faults);
    }

    private static boolean isUnwritable(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.CONTROL || type == Character.SURROGATE;
    }
}
