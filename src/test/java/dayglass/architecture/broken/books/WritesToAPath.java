package dayglass.architecture.broken.books;

import java.nio.file.Path;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class WritesToAPath {
    static Path home() {
        return Path.of("x");
    }
}
