package dayglass.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook's package packed anew so that it holds nothing of the moment or the machine: the time of creation is the
 * one given, entries bear one fixed date, and they are stored rather than compressed, because compressors
 * differ between releases.
 */
final class StablePackage {
    /** For the format's very first moment the platform also writes an instant, which depends on the time zone. */
    private static final LocalDateTime FIXED_DATE = LocalDateTime.of(1980, 2, 1, 0, 0);

    private static final Pattern CREATED = Pattern.compile("(<dcterms:created [^>]*>)[^<]*(</dcterms:created>)");

    private StablePackage() {}

    static byte[] of(byte[] workbook, Instant createdAt) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(workbook.length * 4);
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.setMethod(ZipOutputStream.STORED);
            for (Map.Entry<String, byte[]> entry : ZipContents.read(workbook).entrySet()) {
                boolean properties = entry.getKey().equals("docProps/core.xml");
                store(out, entry.getKey(), properties ? createdAt(entry.getValue(), createdAt) : entry.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static void store(ZipOutputStream out, String name, byte[] content) throws IOException {
        CRC32 crc = new CRC32();
        crc.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(FIXED_DATE);
        entry.setSize(content.length);
        entry.setCrc(crc.getValue());
        out.putNextEntry(entry);
        out.write(content);
        out.closeEntry();
    }

    private static byte[] createdAt(byte[] content, Instant createdAt) {
        Matcher created = CREATED.matcher(new String(content, StandardCharsets.UTF_8));
        if (!created.find()) {
            throw new IllegalStateException("the workbook does not say when it was created");
        }
        return created.replaceFirst("$1" + createdAt + "$2").getBytes(StandardCharsets.UTF_8);
    }
}
