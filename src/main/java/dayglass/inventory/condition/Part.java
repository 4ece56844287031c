package dayglass.inventory.condition;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where on a unit something was seen. */
public enum Part {
    FRONT_GLASS,
    INNER_GROUPS,
    REAR_GLASS,
    COATING,
    IRIS,
    FOCUS,
    HOUSING,
    MOUNT,
    ACCESSORIES,
    WHOLE;

    /** As it is written: {@code front glass}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Part> of(String word) {
        return Arrays.stream(values()).filter(part -> part.word().equals(word)).findFirst();
    }
}
