package dayglass.cost;

import java.util.Locale;
import java.util.Optional;

/** What the production does on a day. */
public enum DayUse {
    PREP,
    SHOOT,
    DARK,
    TRAVEL,
    WRAP;

    /** The word on the wire: lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<DayUse> find(String word) {
        for (DayUse use : values()) {
            if (use.word().equals(word)) {
                return Optional.of(use);
            }
        }
        return Optional.empty();
    }
}
