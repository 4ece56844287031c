package dayglass.planning;

import java.util.Optional;

/**
 * One thing that differs between two costings.
 *
 * @param name of the thing: dates, a slot, an option's id, a row of the comparison
 * @param part of it that differs, as a path such as {@code blocks/0/price}; empty for the whole
 * @param before empty where it was not there
 * @param after empty where it is gone
 */
public record Change(Subject subject, String name, String part, Optional<String> before, Optional<String> after) {
    /** What kind of thing differs. */
    public enum Subject {
        /** A term of the whole request, such as the cash limit. */
        TERM,
        DAYS,
        NEED,
        RENTAL,
        PURCHASE,
        OWNED,
        /** A total, a bound or a row of the comparison in the answer. */
        AMOUNT,
        CHOICE
    }
}
