package dayglass.inventory.picture;

import java.nio.charset.StandardCharsets;

/** Numbers and words inside a picture's bytes; what lies beyond their end is told by {@link CutOff}. */
final class Bytes {
    private final byte[] bytes;

    Bytes(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The picture says that there is more of it than there is. */
    static final class CutOff extends RuntimeException {
        private static final long serialVersionUID = 1;

        CutOff() {
            super("the picture ends before it should", null, false, false);
        }
    }

    int length() {
        return bytes.length;
    }

    /** The same bytes, for those who take them whole. */
    byte[] whole() {
        return bytes;
    }

    int at(long offset) {
        if (offset < 0 || offset >= bytes.length) {
            throw new CutOff();
        }
        return bytes[(int) offset] & 0xFF;
    }

    /** Two bytes, the greater first. */
    int big16(long offset) {
        return at(offset) << 8 | at(offset + 1);
    }

    /** Four bytes without a sign, the greatest first. */
    long big32(long offset) {
        return (long) big16(offset) << 16 | big16(offset + 2);
    }

    /** Two bytes, the lesser first. */
    int little16(long offset) {
        return at(offset) | at(offset + 1) << 8;
    }

    /** Three bytes, the least first. */
    int little24(long offset) {
        return little16(offset) | at(offset + 2) << 16;
    }

    /** Four bytes without a sign, the least first. */
    long little32(long offset) {
        return little16(offset) | (long) little16(offset + 2) << 16;
    }

    /** True where these characters, one byte each, stand there whole. */
    boolean has(long offset, String text) {
        byte[] wanted = text.getBytes(StandardCharsets.ISO_8859_1);
        if (offset < 0 || offset + wanted.length > bytes.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if (bytes[(int) offset + i] != wanted[i]) {
                return false;
            }
        }
        return true;
    }
}
