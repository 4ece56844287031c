package dayglass.web.page.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is drawn on a label is read back from its picture. */
class SymbolTest {
    private static final int SCALE = 4;
    private static final int BAR_HEIGHT = 40;
    private static final int WHITE = 0xFFFFFF;
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z");

    /** The path as a printer would put it on paper: dark where it says so, white elsewhere. */
    private static BinaryBitmap printed(Symbol symbol) {
        int width = symbol.width() * SCALE;
        int rows = symbol.height() == 1 ? BAR_HEIGHT : symbol.height();
        int[] pixels = new int[width * rows * SCALE];
        Arrays.fill(pixels, WHITE);
        Matcher run = RUN.matcher(symbol.path());
        while (run.find()) {
            int x = Integer.parseInt(run.group(1)) * SCALE;
            int y = Integer.parseInt(run.group(2));
            int length = Integer.parseInt(run.group(3)) * SCALE;
            int last = symbol.height() == 1 ? BAR_HEIGHT : y + 1;
            for (int row = y * SCALE; row < last * SCALE; row++) {
                Arrays.fill(pixels, row * width + x, row * width + x + length, 0);
            }
        }
        return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, rows * SCALE, pixels)));
    }

    private static Result read(Symbol symbol) throws NotFoundException {
        return new MultiFormatReader().decode(printed(symbol));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "DG-014",
                "dg 014",
                "7",
                "LENS/50mm:2#a",
                "000012345678",
                "Größe-50",
                "レンズ-1",
                "a tag that somebody made as long as a sentence, for reasons that nobody knows any more, number 12"
            })
    void aQrCodeSaysTheTag(String tag) throws NotFoundException {
        Result read = read(Symbol.of(tag, Symbol.Kind.QR).orElseThrow());
        assertEquals(BarcodeFormat.QR_CODE, read.getBarcodeFormat());
        assertEquals(tag, read.getText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"DG-014", "dg 014", "7", "LENS/50mm:2#a", "000012345678", "~tag~"})
    void aCode128SaysTheTag(String tag) throws NotFoundException {
        Result read = read(Symbol.of(tag, Symbol.Kind.CODE_128).orElseThrow());
        assertEquals(BarcodeFormat.CODE_128, read.getBarcodeFormat());
        assertEquals(tag, read.getText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Größe-50", "レンズ-1", "tab\there", "x\u007f"})
    void code128RefusesWhatItCannotHold(String tag) {
        assertEquals(Optional.empty(), Symbol.of(tag, Symbol.Kind.CODE_128));
    }

    /** ISO/IEC 18004 (QR code): 4 modules on every side; ISO/IEC 15417 (Code 128): 10 on the left and on the right. */
    @ParameterizedTest
    @EnumSource(Symbol.Kind.class)
    void theQuietZoneIsKept(Symbol.Kind kind) {
        Symbol symbol = Symbol.of("DG-014", kind).orElseThrow();
        int quiet = kind == Symbol.Kind.QR ? 4 : 10;
        int least = symbol.width();
        int most = 0;
        Matcher run = RUN.matcher(symbol.path());
        while (run.find()) {
            least = Math.min(least, Integer.parseInt(run.group(1)));
            most = Math.max(most, Integer.parseInt(run.group(1)) + Integer.parseInt(run.group(3)));
        }
        assertTrue(least >= quiet, "left " + least);
        assertTrue(symbol.width() - most >= quiet, "right " + (symbol.width() - most));
    }
}
