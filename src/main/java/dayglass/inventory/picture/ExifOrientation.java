package dayglass.inventory.picture;

/** The orientation among a picture's Exif facts. Source: Exif 2.32, sections 4.5 and 4.6.4; TIFF 6.0, section 2. */
final class ExifOrientation {
    private static final int TAG = 0x0112;
    private static final int ENTRY_LENGTH = 12;
    private static final int MOST = 8;

    private ExifOrientation() {}

    /** 1 to 8; 1 where it is not said or the facts cannot be read, as they decide nothing else. */
    static int of(Bytes bytes, long start, long length) {
        long from = bytes.has(start, "Exif\0\0") ? start + 6 : start;
        boolean little = bytes.has(from, "II");
        if (!little && !bytes.has(from, "MM")) {
            return PictureHeader.UPRIGHT;
        }
        try {
            return find(bytes, from, start + length, little);
        } catch (Bytes.CutOff unreadable) {
            return PictureHeader.UPRIGHT;
        }
    }

    private static int find(Bytes bytes, long from, long end, boolean little) {
        long directory = from + (little ? bytes.little32(from + 4) : bytes.big32(from + 4));
        int entries = sixteen(bytes, directory, little);
        for (int entry = 0; entry < entries; entry++) {
            long at = directory + 2 + (long) entry * ENTRY_LENGTH;
            if (at + ENTRY_LENGTH > end) {
                break;
            }
            if (sixteen(bytes, at, little) == TAG) {
                int value = sixteen(bytes, at + 8, little);
                return value >= 1 && value <= MOST ? value : PictureHeader.UPRIGHT;
            }
        }
        return PictureHeader.UPRIGHT;
    }

    private static int sixteen(Bytes bytes, long at, boolean little) {
        return little ? bytes.little16(at) : bytes.big16(at);
    }
}
