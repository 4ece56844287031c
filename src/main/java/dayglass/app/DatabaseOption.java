package dayglass.app;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** {@code --db FILE}, for every command that works on stored things. */
final class DatabaseOption {
    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "dayglass.db",
            description = "the database; made where there is none (default: ${DEFAULT-VALUE})")
    private Path file = Path.of("dayglass.db");

    Path file() {
        return file;
    }
}
