package dayglass.sheet;

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
public final class CsvTable {
    private CsvTable() {}

    /** Writes the table and leaves the stream open. */
    public static <L> void write(SheetTable<L> table, OutputStream out) throws IOException {
        write(table.columns(), table.rows()::forEach, out);
    }

    /** The same for rows that are never in memory together. */
    public static <L> void write(List<SheetTable.Column<L>> columns, SheetTable.Rows<L> rows, OutputStream out)
            throws IOException {
        // Flushed, not closed: the stream is the caller's.
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out, StandardCharsets.UTF_8);
        csv.writeRecord(columns.stream()
                .map(column -> FormulaGuard.harmless(column.heading()))
                .toList());
        rows.each(row -> csv.writeRecord(texts(columns, row)));
        csv.flush();
    }

    private static <L> List<String> texts(List<SheetTable.Column<L>> columns, L row) {
        return columns.stream().map(column -> text(column.cell().apply(row))).toList();
    }

    private static String text(SheetTable.Cell cell) {
        if (cell instanceof SheetTable.Text text) {
            return FormulaGuard.harmless(text.text());
        }
        if (cell instanceof SheetTable.Day day) {
            return day.date().toString();
        }
        if (cell instanceof SheetTable.Amount amount) {
            return amount.money().amount();
        }
        if (cell instanceof SheetTable.PlainNumber number) {
            return number.value().toPlainString();
        }
        return "";
    }
}
