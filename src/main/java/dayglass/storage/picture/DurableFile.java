package dayglass.storage.picture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Files that are there whole or not at all, also after the power went. */
public final class DurableFile {
    private DurableFile() {}

    /** Writes under another name, forces the bytes to the disk, and only then gives the file its name. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException(file + " has no folder");
        }
        Files.createDirectories(folder);
        Path unnamed = Files.createTempFile(folder, ".coming-", ".part");
        try {
            try (FileChannel channel = FileChannel.open(unnamed, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            Files.move(unnamed, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unnamed);
        }
        force(folder);
    }

    /** The name itself lies in the folder; systems that cannot open folders keep names by themselves. */
    private static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException cannotBeOpened) {
            // Nothing more can be done there.
        }
    }
}
