package dayglass.storage;

import java.nio.file.Path;

/** The database file cannot be opened, read or brought up to date. */
public final class DatabaseUnusable extends RuntimeException {
    DatabaseUnusable(Path file, Throwable cause) {
        super("The database " + file + " cannot be used: " + root(cause).getMessage(), cause);
    }

    private static Throwable root(Throwable cause) {
        Throwable root = cause;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root;
    }
}
