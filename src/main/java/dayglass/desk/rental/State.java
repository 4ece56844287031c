package dayglass.desk.rental;

import java.util.Locale;

/** Where a rental stands. */
public enum State {
    CONFIRMED,
    OUT,
    BACK,
    SETTLED,
    CANCELLED;

    /** As it is written: {@code confirmed}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
