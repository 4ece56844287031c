package dayglass.app;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a command reads and prints. What is printed is UTF-8 whatever the platform's own encoding is.
 *
 * @param interactive somebody is watching, so that progress may be shown on {@code err}
 */
record Terminal(InputStream in, PrintStream out, PrintStream err, boolean interactive) {

    static Terminal ofProcess() {
        return new Terminal(
                System.in,
                utf8(new FileOutputStream(FileDescriptor.out)),
                utf8(new FileOutputStream(FileDescriptor.err)),
                isWatched());
    }

    /** Up to JDK 21 a console is there only at a terminal; from 22 on it always is and says itself which it is. */
    @SuppressWarnings("SystemConsoleNull") // the later JDKs' answer is asked for as well
    private static boolean isWatched() {
        Console console = System.console();
        try {
            return console != null
                    && Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    private static PrintStream utf8(FileOutputStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
