package dayglass.books.file;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A table as CSV by RFC 4180 in UTF-8 without a byte order mark: a header, then rows and nothing else. Dates are ISO
 * 8601, amounts plain decimals with all the currency's decimals.
 */
final class CsvTable {
    private CsvTable() {}

    /** Writes the table and leaves the stream open. */
    static <L> void write(LineTable<L> table, OutputStream out) throws IOException {
        // Flushed, not closed: the stream is the caller's.
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out, StandardCharsets.UTF_8);
        csv.writeRecord(table.columns().stream()
                .map(column -> FormulaGuard.harmless(column.heading()))
                .toList());
        for (L row : table.rows()) {
            csv.writeRecord(texts(table, row));
        }
        csv.flush();
    }

    private static <L> List<String> texts(LineTable<L> table, L row) {
        return table.columns().stream()
                .map(column -> text(column.cell().apply(row)))
                .toList();
    }

    private static String text(LineTable.Cell cell) {
        if (cell instanceof LineTable.Text text) {
            return FormulaGuard.harmless(text.text());
        }
        if (cell instanceof LineTable.Day day) {
            return day.date().toString();
        }
        if (cell instanceof LineTable.Amount amount) {
            return amount.money().amount();
        }
        return "";
    }
}
