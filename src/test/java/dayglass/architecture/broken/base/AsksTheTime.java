package dayglass.architecture.broken.base;

import java.time.Instant;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class AsksTheTime {
    static String now() {
        return Instant.now() + " " + System.nanoTime();
    }
}
