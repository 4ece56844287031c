package dayglass.app.demo;

import dayglass.base.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The files of {@code demo-data}, which the jar carries, and what becomes of a refusal: a fault of those files. */
final class DemoData {
    private static final String FOLDER = "/demo-data/";

    private DemoData() {}

    static byte[] bytes(String name) {
        try (InputStream in = DemoData.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException(FOLDER + name + " is not in the jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static <T> T must(Outcome<T> outcome) {
        return outcome.fold(done -> done, problem -> {
            throw new IllegalStateException("the demo's own data is refused: " + problem);
        });
    }
}
