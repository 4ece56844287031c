package dayglass.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/**
 * The entries of a zip file in memory, found by its central directory. The platform reads such a file from a path
 * only; its streaming reader refuses the 64-bit sizes that the workbook writer puts behind small entries.
 *
 * <p>Source of the offsets: PKWARE, .ZIP File Format Specification (APPNOTE.TXT), 4.3.7, 4.3.12 and 4.3.16.
 */
final class ZipContents {
    private static final int END_SIGNATURE = 0x06054b50;
    private static final int END_SIZE = 22;
    private static final int DIRECTORY_SIGNATURE = 0x02014b50;
    private static final int DIRECTORY_SIZE = 46;
    private static final int LOCAL_SIZE = 30;
    private static final int DEFLATED = 8;

    private ZipContents() {}

    /** What lies in a file without comment by name, each entry deflated, in the order of the directory. */
    static Map<String, byte[]> read(byte[] zip) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
        int end = zip.length - END_SIZE;
        require(end >= 0 && bytes.getInt(end) == END_SIGNATURE, "its end");
        int count = Short.toUnsignedInt(bytes.getShort(end + 10));
        int at = bytes.getInt(end + 16);
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (int entry = 0; entry < count; entry++) {
            require(bytes.getInt(at) == DIRECTORY_SIGNATURE, "entry " + entry);
            require(bytes.getShort(at + 10) == DEFLATED, "the method of entry " + entry);
            int nameLength = Short.toUnsignedInt(bytes.getShort(at + 28));
            String name = new String(zip, at + DIRECTORY_SIZE, nameLength, StandardCharsets.UTF_8);
            contents.put(name, inflated(zip, bytes, bytes.getInt(at + 42), bytes.getInt(at + 20)));
            int extraLength = Short.toUnsignedInt(bytes.getShort(at + 30));
            int commentLength = Short.toUnsignedInt(bytes.getShort(at + 32));
            at += DIRECTORY_SIZE + nameLength + extraLength + commentLength;
        }
        return contents;
    }

    private static byte[] inflated(byte[] zip, ByteBuffer bytes, int local, int packedSize) throws IOException {
        int nameLength = Short.toUnsignedInt(bytes.getShort(local + 26));
        int extraLength = Short.toUnsignedInt(bytes.getShort(local + 28));
        int data = local + LOCAL_SIZE + nameLength + extraLength;
        Inflater raw = new Inflater(true);
        try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(zip, data, packedSize), raw)) {
            return in.readAllBytes();
        } finally {
            raw.end();
        }
    }

    private static void require(boolean holds, String what) throws IOException {
        if (!holds) {
            throw new IOException("the workbook's package cannot be read: " + what);
        }
    }
}
