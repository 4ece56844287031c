package dayglass.architecture.broken.base;

import java.nio.file.Files;
import java.nio.file.Path;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class ReadsFile {
    static boolean there() {
        return Files.exists(Path.of("x"));
    }
}
