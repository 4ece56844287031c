package dayglass.storage.picture;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.PictureHeader;
import dayglass.inventory.picture.Pictures;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Pictures as files named by their SHA-256, in folders named by its first two digits: {@code ab/abc….jpg}, with previews
 * beside it that can be made again.
 */
public final class PictureFolder implements Pictures {
    private static final int WIDEST = PREVIEW_WIDTHS.get(PREVIEW_WIDTHS.size() - 1);

    private final Path folder;

    /** One at a time is decoded, so that many large ones sent at once do not take all memory. */
    private final Object decoding = new Object();

    private PictureFolder(Path folder) {
        this.folder = folder;
    }

    /** The pictures that belong to a database. */
    public static PictureFolder beside(Path databaseFile) {
        return new PictureFolder(folderOf(databaseFile));
    }

    /** Where the pictures of a database lie: {@code house.db.pictures}. */
    public static Path folderOf(Path databaseFile) {
        Path file = databaseFile.toAbsolutePath();
        return file.resolveSibling(file.getFileName() + ".pictures");
    }

    /** Where a picture lies, from its folder on. */
    public static Path placeOf(Picture picture) {
        return Path.of(
                picture.sha256().substring(0, 2),
                picture.sha256() + "." + picture.type().ending());
    }

    @Override
    public Outcome<Picture> keep(byte[] bytes) {
        return PictureHeader.read(bytes).then(header -> keep(bytes, header));
    }

    private Outcome<Picture> keep(byte[] bytes, PictureHeader header) {
        Picture picture = new Picture(sha256(bytes), header.type(), header.uprightWidth(), header.uprightHeight());
        Optional<BufferedImage> widest = decode(bytes, header);
        if (widest.isEmpty()) {
            return Outcome.refused(
                    Problem.Code.CANNOT_BE_DONE, "cannot be decoded: save it again, in colours for a screen");
        }
        write(folder.resolve(placeOf(picture)), bytes);
        writePreviews(picture, widest.get());
        return Outcome.done(picture);
    }

    private Optional<BufferedImage> decode(byte[] bytes, PictureHeader header) {
        synchronized (decoding) {
            return Preview.of(bytes, header, WIDEST);
        }
    }

    private void writePreviews(Picture picture, BufferedImage widest) {
        for (int width : PREVIEW_WIDTHS) {
            write(previewFile(picture, width), Preview.jpeg(Preview.smaller(widest, width)));
        }
    }

    @Override
    public Optional<byte[]> original(Picture picture) {
        return read(folder.resolve(placeOf(picture)));
    }

    @Override
    public Optional<byte[]> preview(Picture picture, int width) {
        Optional<byte[]> made = read(previewFile(picture, width));
        return made.isPresent() ? made : original(picture).flatMap(bytes -> madeAgain(picture, bytes, width));
    }

    private Optional<byte[]> madeAgain(Picture picture, byte[] original, int width) {
        Optional<BufferedImage> widest =
                PictureHeader.read(original).fold(header -> decode(original, header), problem -> Optional.empty());
        widest.ifPresent(image -> writePreviews(picture, image));
        return widest.flatMap(image -> read(previewFile(picture, width)));
    }

    private Path previewFile(Picture picture, int width) {
        return folder.resolve(
                Path.of(picture.sha256().substring(0, 2), picture.sha256() + "." + width + ".preview.jpg"));
    }

    private static Optional<byte[]> read(Path file) {
        try {
            return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (IOException cause) {
            throw new UncheckedIOException("a picture cannot be read", cause);
        }
    }

    private static void write(Path file, byte[] bytes) {
        try {
            DurableFile.write(file, bytes);
        } catch (IOException cause) {
            throw new UncheckedIOException("a picture cannot be kept", cause);
        }
    }

    /** The name that bytes have here. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
