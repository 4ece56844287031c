package dayglass.sheet;

import dayglass.base.Outcome;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A table read from CSV by RFC 4180 in UTF-8, with or without a byte order mark. Beyond the standard, semicolons or tabs
 * may stand between fields (as programs write them where the comma is the decimal mark) and lines may end in LF; empty
 * lines are passed over. Guards before what a spreadsheet would run are taken away.
 *
 * @param separator the one that parts the heading into most fields
 * @param heading the first row
 * @param rows the others
 */
public record CsvText(char separator, Row heading, List<Row> rows) {
    private static final char[] SEPARATORS = {',', ';', '\t'};
    private static final char QUOTE = '"';
    private static final String MARK = "\uFEFF";

    public CsvText {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param line the line of the text that it begins on, from 1
     */
    public record Row(long line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Reads the whole table; refused, with the line, where it is no CSV or no UTF-8 or has no heading. */
    public static Outcome<CsvText> read(byte[] bytes) {
        return text(bytes).then(CsvText::parse);
    }

    private static Outcome<String> text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Outcome.done(text.startsWith(MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException other) {
            return faulty("The text is not in UTF-8: save it again as CSV in UTF-8");
        }
    }

    private static Outcome<CsvText> parse(String text) {
        if (text.isBlank()) {
            return faulty("The table is empty: it needs a row of headings and rows below it");
        }
        char separator = separator(text);
        long open = unclosedQuote(text, separator);
        if (open > 0) {
            return faulty("Line " + open + ": a quote is opened and never closed: close it, or double a quote that"
                    + " belongs to the text");
        }
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text)) {
            for (CsvRecord each : reader) {
                rows.add(new Row(
                        each.getStartingLineNumber(),
                        each.getFields().stream().map(FormulaGuard::asTyped).toList()));
            }
        } catch (CsvParseException broken) {
            return faulty("After line "
                    + (rows.isEmpty() ? 0 : rows.get(rows.size() - 1).line())
                    + ": text stands behind a closing quote: double a quote that belongs to the text");
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory could not be read", e);
        }
        return Outcome.done(new CsvText(separator, rows.get(0), rows.subList(1, rows.size())));
    }

    private static <T> Outcome<T> faulty(String message) {
        return Outcome.faulty("", message);
    }

    private static char separator(String text) {
        char best = SEPARATORS[0];
        for (char each : SEPARATORS) {
            best = separators(text, each) > separators(text, best) ? each : best;
        }
        return best;
    }

    /** How often a character stands outside of quotes in the first line. */
    private static int separators(String text, char wanted) {
        int count = 0;
        boolean quoted = false;
        for (char letter : text.replaceFirst("^[\r\n]+", "").toCharArray()) {
            quoted ^= letter == QUOTE;
            if (!quoted && (letter == '\n' || letter == '\r')) {
                break;
            }
            count += !quoted && letter == wanted ? 1 : 0;
        }
        return count;
    }

    /** The line of a quote that opens a field and is never closed; 0 where there is none. The library passes over it. */
    private static long unclosedQuote(String text, char separator) {
        long line = 1;
        long openedOn = 0;
        boolean mayOpen = true;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            boolean closes = openedOn > 0 && letter == QUOTE;
            if (closes) {
                openedOn = 0;
            } else if (openedOn == 0 && letter == QUOTE && mayOpen) {
                openedOn = line;
            }
            // A doubled quote closes and opens again at once.
            mayOpen = closes || letter == separator || letter == '\n' || letter == '\r';
            line += letter == '\n' ? 1 : 0;
        }
        return openedOn;
    }
}
