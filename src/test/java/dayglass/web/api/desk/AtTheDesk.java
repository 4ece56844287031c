package dayglass.web.api.desk;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A {@link DeskHouse} of its own for each test. */
abstract class AtTheDesk {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    DeskHouse house;

    @BeforeEach
    void open() {
        house = new DeskHouse(folder);
    }

    @AfterEach
    void close() {
        house.close();
    }
}
