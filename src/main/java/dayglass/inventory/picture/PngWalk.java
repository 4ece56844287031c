package dayglass.inventory.picture;

import java.util.zip.CRC32;

/** A PNG from chunk to chunk. Source: PNG specification (third edition), sections 5 and 11. */
final class PngWalk {
    static final String SIGNATURE = "\u0089PNG\r\n\u001A\n";

    private static final int AROUND_DATA = 12;
    private static final int HEADER_LENGTH = 13;

    private PngWalk() {}

    static PictureHeader of(Bytes bytes) {
        long at = SIGNATURE.length();
        if (!bytes.has(at + 4, "IHDR") || bytes.big32(at) != HEADER_LENGTH) {
            throw new PictureHeader.Broken("is a PNG without a header: save it again");
        }
        int width = size(bytes.big32(at + 8));
        int height = size(bytes.big32(at + 12));
        int orientation = PictureHeader.UPRIGHT;
        boolean hasData = false;
        while (!bytes.has(at + 4, "IEND")) {
            long length = bytes.big32(at);
            requireWhole(bytes, at, length);
            hasData |= bytes.has(at + 4, "IDAT");
            if (bytes.has(at + 4, "eXIf")) {
                orientation = ExifOrientation.of(bytes, at + 8, length);
            }
            at += length + AROUND_DATA;
        }
        requireWhole(bytes, at, bytes.big32(at));
        if (!hasData) {
            throw new PictureHeader.Broken("is a PNG without a picture in it: save it again");
        }
        return new PictureHeader(PictureType.PNG, width, height, orientation);
    }

    /** At most 2 to the power of 31, less one. */
    private static int size(long value) {
        if (value < 1 || value > Integer.MAX_VALUE) {
            throw new PictureHeader.Broken("is a PNG of an impossible size: save it again");
        }
        return (int) value;
    }

    private static void requireWhole(Bytes bytes, long at, long length) {
        long end = at + 8 + length;
        long told = bytes.big32(end);
        CRC32 sum = new CRC32();
        sum.update(bytes.whole(), (int) at + 4, (int) length + 4);
        if (sum.getValue() != told) {
            throw new PictureHeader.Broken("is a damaged PNG, as its check sums show: send it again");
        }
    }
}
