package dayglass.inventory.picture;

/** A JPEG from marker to marker. Source: ITU-T T.81, annex B. */
final class JpegWalk {
    static final String SIGNATURE = "\u00FF\u00D8\u00FF";

    private static final int MARKER = 0xFF;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int APPLICATION_1 = 0xE1;
    private static final String EXIF = "Exif\0\0";

    private final Bytes bytes;
    private int width;
    private int height;
    private int orientation = PictureHeader.UPRIGHT;
    private boolean hasScan;

    private JpegWalk(Bytes bytes) {
        this.bytes = bytes;
    }

    static PictureHeader of(Bytes bytes) {
        JpegWalk walk = new JpegWalk(bytes);
        walk.toTheEnd();
        if (!walk.hasScan) {
            throw new PictureHeader.Broken("is a JPEG without a picture in it: save it again");
        }
        return new PictureHeader(PictureType.JPEG, walk.width, walk.height, walk.orientation);
    }

    private void toTheEnd() {
        long at = 2;
        while (true) {
            if (bytes.at(at) != MARKER) {
                throw new PictureHeader.Broken("is a damaged JPEG: save it again");
            }
            while (bytes.at(at) == MARKER) {
                at++;
            }
            int marker = bytes.at(at);
            if (marker == END) {
                return;
            }
            at = standsAlone(marker) ? at + 1 : afterSegment(marker, at + 1);
        }
    }

    private static boolean standsAlone(int marker) {
        return marker == 0x01 || (marker >= 0xD0 && marker <= 0xD8);
    }

    /** True of SOF0 to SOF15, which are neither tables (DHT, DAC) nor reserved (JPG). */
    private static boolean beginsFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private long afterSegment(int marker, long at) {
        int length = bytes.big16(at);
        if (length < 2) {
            throw new PictureHeader.Broken("is a damaged JPEG: save it again");
        }
        if (beginsFrame(marker)) {
            if (width != 0) {
                throw new PictureHeader.Broken("is a JPEG that says its size twice: save it again");
            }
            height = bytes.big16(at + 3);
            width = bytes.big16(at + 5);
        } else if (marker == APPLICATION_1 && bytes.has(at + 2, EXIF)) {
            orientation = ExifOrientation.of(bytes, at + 2 + EXIF.length(), length - 2L - EXIF.length());
        }
        return marker == SCAN ? afterScan(at + length) : at + length;
    }

    /** In coded data a marker's first byte is followed by nought, by a restart or by the next marker. */
    private long afterScan(long from) {
        if (width == 0 || height == 0) {
            throw new PictureHeader.Broken("is a JPEG that does not say its size: save it again");
        }
        hasScan = true;
        long at = from;
        while (bytes.at(at) != MARKER || bytes.at(at + 1) == 0 || standsAlone(bytes.at(at + 1))) {
            at++;
        }
        return at;
    }
}
