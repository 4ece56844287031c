package dayglass.inventory.booking;

import java.time.Duration;
import java.time.Instant;

/**
 * A time away from the shelf, half-open: gone from {@code out}, back at {@code back}, free for others from
 * {@code freeAt}, when the turnaround is over.
 */
public record Stay(Instant out, Instant back, Instant freeAt) {
    public Stay {
        if (!out.isBefore(back) || freeAt.isBefore(back)) {
            throw new IllegalArgumentException("a stay goes out, comes back and then is free: " + out + ", " + back);
        }
    }

    /** A stay with the house's turnaround after it. */
    public static Stay of(Instant out, Instant back, Duration turnaround) {
        return new Stay(out, back, back.plus(turnaround));
    }

    public boolean overlaps(Stay other) {
        return out.isBefore(other.freeAt) && other.out.isBefore(freeAt);
    }

    /** Nothing stands in the way of it that did not of the other. */
    boolean within(Stay other) {
        return !out.isBefore(other.out) && !back.isAfter(other.back) && !freeAt.isAfter(other.freeAt);
    }

    /** The same stay as long, from another moment on. */
    Stay from(Instant newOut) {
        Duration later = Duration.between(out, newOut);
        return new Stay(newOut, back.plus(later), freeAt.plus(later));
    }
}
