package dayglass.web.page;

import dayglass.support.OneServer;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** A browser on a server whose database was empty at first, both shared by all tests of a class. */
public abstract class OneBrowser extends OneServer {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    static Path profile;

    @SuppressWarnings("NullAway.Init") // set before the first test
    protected static Browser browser;

    @BeforeAll
    static void startBrowser() {
        browser = Browser.start(profile);
    }

    @AfterAll
    @SuppressWarnings("NullAway") // where no browser is installed, nothing was started
    static void stopBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    protected static void open(String path) {
        browser.open("http://127.0.0.1:" + served.port() + path);
    }
}
