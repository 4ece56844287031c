package dayglass.books.file;

import java.util.regex.Pattern;

/**
 * Takes the danger out of text that a spreadsheet would run as a formula when it opens a CSV: an apostrophe is put
 * before it.
 *
 * <p>Source: OWASP, CSV Injection: cells that begin with = + - @ tab or carriage return, and the same after a field
 * separator inside the text (a semicolon is one where the comma is the decimal mark). The full-width forms and signs
 * behind spaces and invisible characters are guarded alike, since programs fold or trim them.
 */
final class FormulaGuard {
    private static final String INVISIBLE = "[\\s\\p{Z}\\p{Cf}\\p{Cc}]*+";
    private static final Pattern SIGN =
            Pattern.compile("(^|[;\\t\\r\\n])(" + INVISIBLE + ")(?=[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20])");
    private static final Pattern BREAK_FIRST = Pattern.compile("^(?=[\\t\\r\\n])");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private FormulaGuard() {}

    /** The text itself where it is harmless; a plain number, negative ones too, is. */
    static String harmless(String text) {
        if (NUMBER.matcher(text).matches()) {
            return text;
        }
        String guarded = SIGN.matcher(text).replaceAll("$1'$2");
        return BREAK_FIRST.matcher(guarded).replaceAll("'");
    }
}
