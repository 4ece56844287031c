package dayglass.inventory.picture;

import dayglass.base.Outcome;
import dayglass.base.Problem;

/**
 * What a picture's bytes say of it, found without decoding it; whoever decodes knows before how large it will be.
 *
 * @param width in pixels, as stored
 * @param height in pixels, as stored
 * @param orientation how it is to be turned, 1 to 8 as Exif counts; 1 is as it is
 */
public record PictureHeader(PictureType type, int width, int height, int orientation) {
    /** 20 MiB. */
    public static final int MOST_BYTES = 20 * 1024 * 1024;

    /** More than the cameras of phones make; a preview of so many needs about 200 MB for a moment. */
    public static final long MOST_PIXELS = 64_000_000;

    static final int UPRIGHT = 1;
    private static final int FIRST_ON_ITS_SIDE = 5;

    /** Not what it should be: its message ends a sentence that begins with the picture. */
    static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final String why;

        Broken(String why) {
            super(why, null, false, false);
            this.why = why;
        }
    }

    /** Reads the header and walks the picture to its end; refused where it is no picture, too large or cut off. */
    public static Outcome<PictureHeader> read(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return refused("has " + bytes.length + " bytes: send at most 20 MiB (" + MOST_BYTES + " bytes)");
        }
        try {
            PictureHeader header = parse(new Bytes(bytes));
            if (header.width < 1 || header.height < 1) {
                return refused("has no pixels: send another");
            }
            long pixels = (long) header.width * header.height;
            return pixels > MOST_PIXELS
                    ? refused("has " + header.width + " x " + header.height + " pixels: send at most " + MOST_PIXELS
                            + " in all")
                    : Outcome.done(header);
        } catch (Bytes.CutOff cutOff) {
            return refused("is cut off: send the whole file");
        } catch (Broken broken) {
            return refused(broken.why);
        }
    }

    private static Outcome<PictureHeader> refused(String why) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, why);
    }

    /** The bytes decide, never a name or a type that came with them. */
    private static PictureHeader parse(Bytes bytes) {
        if (bytes.has(0, PngWalk.SIGNATURE)) {
            return PngWalk.of(bytes);
        }
        if (bytes.has(0, JpegWalk.SIGNATURE)) {
            return JpegWalk.of(bytes);
        }
        if (bytes.has(0, "RIFF") && bytes.has(8, "WEBP")) {
            return WebpWalk.of(bytes);
        }
        throw new Broken("is no JPEG, PNG or WebP, whatever its name says: save it as one of these");
    }

    /** It is stored lying: width and height change places when it is turned upright. */
    public boolean onItsSide() {
        return orientation >= FIRST_ON_ITS_SIDE;
    }

    /** In pixels, once it is turned upright. */
    public int uprightWidth() {
        return onItsSide() ? height : width;
    }

    /** In pixels, once it is turned upright. */
    public int uprightHeight() {
        return onItsSide() ? width : height;
    }
}
