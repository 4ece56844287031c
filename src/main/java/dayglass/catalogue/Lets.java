package dayglass.catalogue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What a rate is for.
 *
 * @param number the id of that model, set or unit
 */
public record Lets(Kind kind, long number) {
    /** Any unit of a model, a whole set, or one unit alone. */
    public enum Kind {
        MODEL,
        SET,
        UNIT;

        /** As it is written: {@code model}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> of(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst();
        }
    }
}
