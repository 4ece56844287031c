package dayglass.app;

import java.util.ArrayList;
import java.util.List;

/** Lines of text for people: labels on the left, wrapped where they are long, amounts flush right. */
final class TextLayout {
    /** No line is wider, in columns. */
    static final int WIDTH = 96;

    private static final int AMOUNT_AT_LEAST = 14;

    private final StringBuilder text = new StringBuilder();

    TextLayout blank() {
        text.append('\n');
        return this;
    }

    /** A heading, underlined so that it is found by eye; with a word over the amounts. */
    TextLayout heading(String words, String overAmounts) {
        row(0, words, overAmounts);
        text.append("-".repeat(WIDTH)).append('\n');
        return this;
    }

    TextLayout sentence(int indent, String words) {
        for (String line : wrap(words, WIDTH - indent)) {
            text.append(" ".repeat(indent)).append(line).append('\n');
        }
        return this;
    }

    /** A label with an amount, which stands on the label's last line. */
    TextLayout row(int indent, String label, String amount) {
        int amountWidth = Math.max(AMOUNT_AT_LEAST, columns(amount)) + 2;
        List<String> lines = wrap(label, WIDTH - indent - amountWidth);
        for (int i = 0; i < lines.size(); i++) {
            boolean last = i == lines.size() - 1;
            String line = " ".repeat(indent + (i == 0 ? 0 : 2)) + lines.get(i);
            int gap = WIDTH - columns(line) - columns(amount);
            String end = last && !amount.isEmpty() ? " ".repeat(Math.max(1, gap)) + amount : "";
            text.append((line + end).stripTrailing()).append('\n');
        }
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    /** The first part of a text where it is too long, marked by an ellipsis. */
    static String cut(String words, int columns) {
        if (columns(words) <= columns) {
            return words;
        }
        StringBuilder kept = new StringBuilder();
        int used = 1;
        for (int c : words.codePoints().toArray()) {
            used += columns(c);
            if (used > columns) {
                break;
            }
            kept.appendCodePoint(c);
        }
        return kept.append('…').toString();
    }

    /** At spaces where that can be, inside a word where it must. */
    private static List<String> wrap(String words, int columns) {
        int room = Math.max(20, columns - 2);
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            String rest = word;
            while (columns(rest) > room) {
                flush(lines, line);
                String head = cut(rest, room);
                head = head.substring(0, head.length() - 1);
                lines.add(head);
                rest = rest.substring(head.length());
            }
            if (line.length() > 0 && columns(line.toString()) + 1 + columns(rest) > room) {
                flush(lines, line);
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        flush(lines, line);
        return lines.isEmpty() ? List.of("") : lines;
    }

    private static void flush(List<String> lines, StringBuilder line) {
        if (line.length() > 0) {
            lines.add(line.toString());
            line.setLength(0);
        }
    }

    static int columns(String words) {
        return words.codePoints().map(TextLayout::columns).sum();
    }

    /** Two for what terminals draw wide, none for what they draw over its neighbour; common practice, not exact. */
    private static int columns(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = (c >= 0x1100 && c <= 0x115F)
                || (c >= 0x2E80 && c <= 0xA4CF)
                || (c >= 0xAC00 && c <= 0xD7A3)
                || (c >= 0xF900 && c <= 0xFAFF)
                || (c >= 0xFE30 && c <= 0xFE6F)
                || (c >= 0xFF00 && c <= 0xFF60)
                || (c >= 0x1F300 && c <= 0x1FAFF)
                || (c >= 0x20000 && c <= 0x3FFFD);
        return wide ? 2 : 1;
    }
}
