package dayglass.inventory.picture;

/** A WebP from chunk to chunk. Source: RFC 9649, sections 2 and 3; RFC 6386, section 9.1. */
final class WebpWalk {
    private static final int FIRST_CHUNK = 12;
    private static final int ANIMATED = 0x02;
    private static final int FOURTEEN_BITS = 0x3FFF;
    private static final int LOSSLESS_SIGNATURE = 0x2F;

    private final Bytes bytes;
    private int canvasWidth;
    private int canvasHeight;
    private int width;
    private int height;
    private int orientation = PictureHeader.UPRIGHT;

    private WebpWalk(Bytes bytes) {
        this.bytes = bytes;
    }

    static PictureHeader of(Bytes bytes) {
        WebpWalk walk = new WebpWalk(bytes);
        walk.toTheEnd();
        if (walk.width == 0) {
            throw new PictureHeader.Broken("is a WebP without a picture in it: save it again");
        }
        // What is decoded is the picture inside, whatever the canvas around it claims to be.
        boolean fits = walk.canvasWidth == 0 || (walk.canvasWidth == walk.width && walk.canvasHeight == walk.height);
        if (!fits) {
            throw new PictureHeader.Broken("is a WebP whose two sizes disagree: save it again");
        }
        return new PictureHeader(PictureType.WEBP, walk.width, walk.height, walk.orientation);
    }

    private void toTheEnd() {
        long end = 8 + bytes.little32(4);
        if (end > bytes.length()) {
            throw new Bytes.CutOff();
        }
        long at = FIRST_CHUNK;
        while (at + 8 <= end) {
            long length = bytes.little32(at + 4);
            if (at + 8 + length > end) {
                throw new Bytes.CutOff();
            }
            look(at, at + 8, length);
            // Chunks begin at even places.
            at += 8 + length + length % 2;
        }
    }

    private void look(long chunk, long data, long length) {
        if (bytes.has(chunk, "VP8X")) {
            if ((bytes.at(data) & ANIMATED) != 0) {
                throw new PictureHeader.Broken("moves: send a picture that stands still");
            }
            canvasWidth = bytes.little24(data + 4) + 1;
            canvasHeight = bytes.little24(data + 7) + 1;
        } else if (bytes.has(chunk, "VP8 ")) {
            lossy(data);
        } else if (bytes.has(chunk, "VP8L")) {
            lossless(data);
        } else if (bytes.has(chunk, "EXIF")) {
            orientation = ExifOrientation.of(bytes, data, length);
        }
    }

    private void requireTheOnlyPicture() {
        if (width != 0) {
            throw new PictureHeader.Broken("holds two pictures: send one");
        }
    }

    private void lossy(long data) {
        requireTheOnlyPicture();
        boolean keyFrame = (bytes.at(data) & 1) == 0;
        if (!keyFrame || !bytes.has(data + 3, "\u009D\u0001*")) {
            throw new PictureHeader.Broken("is a damaged WebP: save it again");
        }
        width = bytes.little16(data + 6) & FOURTEEN_BITS;
        height = bytes.little16(data + 8) & FOURTEEN_BITS;
    }

    private void lossless(long data) {
        requireTheOnlyPicture();
        if (bytes.at(data) != LOSSLESS_SIGNATURE) {
            throw new PictureHeader.Broken("is a damaged WebP: save it again");
        }
        long bits = bytes.little32(data + 1);
        width = (int) (bits & FOURTEEN_BITS) + 1;
        height = (int) (bits >> 14 & FOURTEEN_BITS) + 1;
    }
}
