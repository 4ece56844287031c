package dayglass.sheet;

import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes the danger out of text that a spreadsheet would run as a formula when it opens a CSV: an apostrophe is put
 * before it, and taken away again when the CSV comes back.
 *
 * <p>Source: OWASP, CSV Injection: cells that begin with = + - @ tab or carriage return, and the same after a field
 * separator inside the text (a semicolon is one where the comma is the decimal mark). The full-width forms and signs
 * behind spaces and invisible characters are guarded alike, since programs fold or trim them. Text that begins with
 * apostrophes before such a sign gets one more, so that what is taken away is always what was added.
 */
public final class FormulaGuard {
    private static final char GUARD = '\'';
    private static final String SIGN = "[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]";
    private static final Pattern OPENING = Pattern.compile("'*+[\\s\\p{Z}\\p{Cf}\\p{Cc}]*+(?=" + SIGN + ")");
    private static final Pattern RISKY = Pattern.compile(OPENING.pattern() + ".*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private static final String BREAKS = "\t\r\n";

    private FormulaGuard() {}

    /** The text itself where it is harmless; a plain number, negative ones too, is. */
    public static String harmless(String text) {
        return NUMBER.matcher(text).matches() ? text : inParts(text, part -> GUARD + part, false);
    }

    /** The text as it was before {@link #harmless}. */
    public static String asTyped(String text) {
        return inParts(text, part -> part.substring(1), true);
    }

    /** Changes what opens the text with a sign, and each part between separators that would be run. */
    private static String inParts(String text, UnaryOperator<String> change, boolean guarded) {
        Matcher sign = OPENING.matcher(text);
        boolean opens = sign.lookingAt();
        String opening = opens ? text.substring(0, sign.end()) : "";
        StringBuilder changed =
                new StringBuilder(opens && mayBeChanged(opening, guarded) ? change.apply(opening) : opening);
        int start = opening.length();
        for (int at = start; at <= text.length(); at++) {
            if (at == text.length() || text.charAt(at) == ';' || isBreak(text, at)) {
                String part = text.substring(start, at);
                boolean breaksFirst = start == 0 && at < text.length() && isBreak(text, at);
                boolean isOpening = opens && start == opening.length();
                changed.append(!isOpening && isRun(part, breaksFirst, guarded) ? change.apply(part) : part);
                if (at < text.length()) {
                    changed.append(text.charAt(at));
                }
                start = at + 1;
            }
        }
        return changed.toString();
    }

    private static boolean mayBeChanged(String part, boolean guarded) {
        return !guarded || (!part.isEmpty() && part.charAt(0) == GUARD);
    }

    private static boolean isBreak(String text, int at) {
        return BREAKS.indexOf(text.charAt(at)) >= 0;
    }

    /** @param breaksFirst it stands before a line end or tab at the beginning of the text */
    private static boolean isRun(String part, boolean breaksFirst, boolean guarded) {
        return mayBeChanged(part, guarded)
                && (RISKY.matcher(part).matches()
                        || (breaksFirst && part.chars().allMatch(letter -> letter == GUARD)));
    }
}
