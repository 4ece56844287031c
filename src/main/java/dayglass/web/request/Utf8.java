package dayglass.web.request;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Whether bytes are text: what is decoded leniently gets replacement marks, and these would be stored. */
public final class Utf8 {
    private static final int HEX = 16;

    private Utf8() {}

    public static boolean isText(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException broken) {
            return false;
        }
    }

    /** The same for bytes of which some are written as a per-cent sign and two hexadecimal digits. */
    public static boolean isEncodedText(byte[] encoded) {
        ByteArrayOutputStream decoded = new ByteArrayOutputStream(encoded.length);
        for (int at = 0; at < encoded.length; at++) {
            if (encoded[at] != '%') {
                decoded.write(encoded[at]);
                continue;
            }
            int high = digit(encoded, at + 1);
            int low = digit(encoded, at + 2);
            if (high < 0 || low < 0) {
                return false;
            }
            decoded.write(high * HEX + low);
            at += 2;
        }
        return isText(decoded.toByteArray());
    }

    private static int digit(byte[] bytes, int at) {
        return at < bytes.length ? Character.digit((char) (bytes[at] & 0xFF), HEX) : -1;
    }
}
