package dayglass.desk.rental;

import java.util.Locale;

/** Where a rental stands. */
public enum State {
    CONFIRMED,
    OUT,
    BACK,
    SETTLED,
    CANCELLED;

    /** Nothing more can be done to it. */
    public boolean ended() {
        return this == SETTLED || this == CANCELLED;
    }

    /** As it is written: {@code confirmed}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
