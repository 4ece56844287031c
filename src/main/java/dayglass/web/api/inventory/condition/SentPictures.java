package dayglass.web.api.inventory.condition;

import dayglass.inventory.condition.NoteCondition;
import dayglass.inventory.picture.PictureHeader;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.config.MultipartConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pictures in a request of several parts. */
public final class SentPictures {
    /** The name of the parts that are pictures. */
    public static final String PART = "picture";

    /** All parts together, in bytes. */
    private static final int MOST_BYTES = 64 * 1024 * 1024;

    private SentPictures() {}

    /** What the server lets in. Parts are held in memory, so that nothing is left in the system's temporary folder. */
    public static void limit(MultipartConfig config) {
        config.maxFileSize(PictureHeader.MOST_BYTES, SizeUnit.BYTES);
        config.maxInMemoryFileSize(PictureHeader.MOST_BYTES, SizeUnit.BYTES);
        config.maxTotalRequestSize(MOST_BYTES, SizeUnit.BYTES);
    }

    public static boolean hasParts(Context ctx) {
        return Optional.ofNullable(ctx.header("Content-Type"))
                .orElse("")
                .toLowerCase(Locale.ROOT)
                .startsWith("multipart/form-data");
    }

    /** Refuses parts that did not arrive whole or are too large; goes before the first look at any of them. */
    public static void requireWhole(Context ctx) {
        if (ctx.req().getContentLengthLong() > MOST_BYTES) {
            throw tooLarge();
        }
        try {
            ctx.uploadedFileMap();
        } catch (Exception broken) {
            throw saysTooLarge(broken)
                    ? tooLarge()
                    : new Refusal(
                                    ProblemKind.MALFORMED,
                                    "The parts of the request did not arrive whole: send it again.")
                            .withHeader("Connection", "close");
        }
    }

    /** The server tells a limit that was passed in the words of its exception alone. */
    private static boolean saysTooLarge(Throwable failure) {
        for (Throwable at = failure; at != null; at = at.getCause()) {
            String words = String.valueOf(at.getMessage()).toLowerCase(Locale.ROOT);
            if (words.contains("max")
                    && (words.contains("exceed") || words.contains("length") || words.contains("size"))) {
                return true;
            }
        }
        return false;
    }

    private static Refusal tooLarge() {
        return new Refusal(
                        ProblemKind.TOO_LARGE,
                        "Send at most " + NoteCondition.MOST_PICTURES
                                + " pictures of at most 20 MiB each, and 64 MiB in all.")
                .withHeader("Connection", "close");
    }

    /** Those that hold anything; a form sends an empty part where no file was chosen. */
    public static List<byte[]> of(Context ctx) {
        List<byte[]> pictures = new ArrayList<>();
        for (UploadedFile file : ctx.uploadedFiles(PART)) {
            if (file.size() > 0) {
                pictures.add(bytes(file));
            }
        }
        return pictures;
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream content = file.content()) {
            return content.readAllBytes();
        } catch (IOException cause) {
            throw new UncheckedIOException("a part that arrived cannot be read", cause);
        }
    }
}
