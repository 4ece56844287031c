package dayglass.books.entry;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/**
 * The chain of hashes over the entries.
 *
 * <p>The canonical form of an entry is, for each column in the stated order, the column's name, a colon, the count of the
 * bytes of its value, a colon, the value in UTF-8 and a line end; a column without a value is its name and a line end.
 * The hash of an entry is the SHA-256 of the hash before it in hexadecimal, a line end, and that form.
 */
public final class Chain {
    /** What stands before the first entry. */
    public static final String BEGINNING = "0".repeat(64);

    private Chain() {}

    /**
     * The hash of an entry.
     *
     * @param before the hash of the entry before it, or {@link #BEGINNING}
     * @param columns in the stated order; one without a value is empty
     */
    public static String link(String before, Map<String, Optional<String>> columns) {
        MessageDigest digest = sha256();
        digest.update(utf8(before + "\n"));
        columns.forEach((name, value) -> {
            digest.update(utf8(name));
            value.ifPresent(text -> {
                byte[] bytes = utf8(text);
                digest.update(utf8(":" + bytes.length + ":"));
                digest.update(bytes);
            });
            digest.update((byte) '\n');
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
