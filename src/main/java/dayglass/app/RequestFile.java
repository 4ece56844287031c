package dayglass.app;

import dayglass.base.Fault;
import dayglass.wire.Checked;
import dayglass.wire.JsonText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The text of a file that a user names; what cannot be read is the user's to mend, in words. */
final class RequestFile {
    private RequestFile() {}

    /**
     * Reads one byte more than a request may have and no further, so that no input is too long.
     *
     * @param name a path, or - for standard input
     */
    static Checked<byte[]> read(String name, InputStream standardInput) {
        try {
            if (name.equals("-")) {
                return new Checked.Good<>(standardInput.readNBytes(JsonText.MOST_BYTES + 1));
            }
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                return unreadable(name + " is a folder: name a file");
            }
            try (InputStream file = Files.newInputStream(path)) {
                return new Checked.Good<>(file.readNBytes(JsonText.MOST_BYTES + 1));
            }
        } catch (NoSuchFileException e) {
            return unreadable("There is no file " + name + ": check its name and folder");
        } catch (AccessDeniedException e) {
            return unreadable("The file " + name + " may not be read: change its permissions");
        } catch (InvalidPathException e) {
            return unreadable("The name of the file holds a character that no file name may hold: check it");
        } catch (IOException e) {
            return unreadable("The file " + name + " cannot be read (" + e.getMessage() + ")");
        }
    }

    private static Checked<byte[]> unreadable(String message) {
        return Checked.faulty(new Fault("", message));
    }
}
