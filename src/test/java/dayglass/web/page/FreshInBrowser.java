package dayglass.web.page;

import dayglass.support.Served;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A browser and a server on an empty database for each test. */
public abstract class FreshInBrowser {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    protected Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    protected Served served;

    @SuppressWarnings("NullAway.Init") // set before each test
    protected Browser browser;

    @BeforeEach
    void startBoth() {
        browser = Browser.start(folder.resolve("profile"));
        served = serve();
    }

    /** What is served; an empty database where a test says nothing else. */
    protected Served serve() {
        return Served.in(folder);
    }

    @AfterEach
    @SuppressWarnings("NullAway") // where no browser is installed, nothing was started
    void stopBoth() {
        if (browser != null) {
            browser.close();
        }
        if (served != null) {
            served.close();
        }
    }

    protected final void open(String path) {
        browser.open("http://127.0.0.1:" + served.port() + path);
    }
}
