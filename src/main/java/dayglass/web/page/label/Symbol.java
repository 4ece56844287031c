package dayglass.web.page.label;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.QRCodeWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A tag that a scanner reads, and nothing else beside it, so that one which types what it reads opens the unit.
 *
 * @param width in modules, with the quiet zones
 * @param height in modules; 1 for bars, which may be drawn as high as one likes
 * @param path of the dark modules in SVG, a unit a module
 */
public record Symbol(int width, int height, String path) {
    /** Four modules on each side: ISO/IEC 18004. */
    static final int QR_QUIET_MODULES = 4;

    /** Ten modules on each side: ISO/IEC 15417. */
    static final int CODE_128_QUIET_MODULES = 10;

    private static final int MOST_CODE_128_CHARACTERS = 80;
    private static final int FIRST_PRINTED = 0x20;
    private static final int LAST_PRINTED = 0x7E;

    /** Which symbol. */
    public enum Kind {
        QR("QR code"),
        CODE_128("Code 128");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        static Optional<Kind> of(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word.equals(word))
                    .findFirst();
        }
    }

    /** Empty where the symbol cannot hold the tag: Code 128 takes printed ASCII alone. */
    public static Optional<Symbol> of(String tag, Kind kind) {
        return switch (kind) {
            case QR -> Optional.of(qr(tag));
            case CODE_128 -> fitsCode128(tag) ? Optional.of(code128(tag)) : Optional.empty();
        };
    }

    private static boolean fitsCode128(String tag) {
        return tag.length() <= MOST_CODE_128_CHARACTERS
                && tag.chars().allMatch(each -> each >= FIRST_PRINTED && each <= LAST_PRINTED);
    }

    private static Symbol qr(String tag) {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        hints.put(EncodeHintType.MARGIN, QR_QUIET_MODULES);
        boolean ascii = StandardCharsets.US_ASCII.newEncoder().canEncode(tag);
        if (!ascii) {
            hints.put(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
        }
        try {
            return drawn(new QRCodeWriter().encode(tag, BarcodeFormat.QR_CODE, 0, 0, hints));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("a tag is too long for a symbol: " + tag, tooLong);
        }
    }

    private static Symbol code128(String tag) {
        // The library parts the margin between both sides.
        Map<EncodeHintType, Object> hints = Map.of(EncodeHintType.MARGIN, 2 * CODE_128_QUIET_MODULES);
        return drawn(new Code128Writer().encode(tag, BarcodeFormat.CODE_128, 0, 1, hints));
    }

    /** Runs of dark modules, row by row. */
    private static Symbol drawn(BitMatrix modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append('M')
                            .append(from)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(x - from);
                    path.append("v1h-").append(x - from).append('z');
                }
                x++;
            }
        }
        return new Symbol(modules.getWidth(), modules.getHeight(), path.toString());
    }
}
