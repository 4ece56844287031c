package dayglass.house;

import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * That somebody added, changed or removed a thing.
 *
 * @param noun what kind of thing: {@code rate card}
 * @param thing the number of the thing
 * @param facts as they were after it, as JSON; empty after a removal
 */
public record Change(Instant madeAt, Person.Id by, String noun, long thing, Deed deed, Optional<String> facts) {
    /** The number of a change. */
    public record Id(long number) implements dayglass.base.Id {}

    /** What was done to the thing. */
    public enum Deed {
        ADDED,
        CHANGED,
        REMOVED;

        /** As it is written: {@code added}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Deed> of(String word) {
            return Arrays.stream(values())
                    .filter(deed -> deed.word().equals(word))
                    .findFirst();
        }
    }
}
