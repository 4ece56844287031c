package dayglass.support;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** A server on a database that was empty at first, shared by all tests of a class. */
public abstract class OneServer {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    protected static Path folder;

    @SuppressWarnings("NullAway.Init") // set before the first test
    protected static Served served;

    @BeforeAll
    static void startServer() {
        served = Served.in(folder);
    }

    @AfterAll
    static void stopServer() {
        served.close();
    }
}
