package dayglass.support;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A server on an empty database, anew for each test. */
public abstract class FreshServer {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    protected Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    protected Served served;

    @BeforeEach
    void startServer() {
        served = Served.in(folder);
    }

    @AfterEach
    void stopServer() {
        served.close();
    }
}
