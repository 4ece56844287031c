package dayglass.sheet;

import java.util.regex.Pattern;

/**
 * Text as a workbook must hold it, so that it is shown as it is. A text cell is never run as a formula, so nothing is
 * put before it.
 */
public final class SheetText {
    /** What a cell can hold; more makes the file unreadable. Source: ECMA-376 implementations' published limit. */
    public static final int LONGEST = 32_767;

    private static final String CUT = " ... (cut; the CSV holds all of it)";
    /** {@code _x0041_} stands for the letter A (ECMA-376 part 1, 22.9.2.19, ST_Xstring); its own underscore is escaped. */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private SheetText() {}

    public static String shown(String text) {
        String escaped = ESCAPE.matcher(text).replaceAll("_x005F_");
        if (escaped.length() <= LONGEST) {
            return escaped;
        }
        int end = LONGEST - CUT.length();
        return escaped.substring(0, Character.isHighSurrogate(escaped.charAt(end - 1)) ? end - 1 : end) + CUT;
    }
}
