package dayglass.books.file;

import dayglass.books.CostingLines;
import dayglass.sheet.CsvTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The files of one costing. Each method writes one file to a stream, leaves the stream open, and writes the same bytes
 * whenever and wherever it is called.
 */
public final class LineExport {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            // The platform's line ends would make other bytes on another system.
            .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();

    private final CostingLines lines;

    public LineExport(CostingLines lines) {
        this.lines = lines;
    }

    /** The payable lines as CSV: rows that can be posted and nothing else. */
    public void csv(OutputStream out) throws IOException {
        CsvTable.write(LineTable.payable(lines), out);
    }

    /** What the plan weighs, as a CSV of its own: never to be posted. */
    public void weighedCsv(OutputStream out) throws IOException {
        CsvTable.write(LineTable.weighed(lines), out);
    }

    /** The payable lines with their totals, the weighed plan and the control totals, each on a sheet of its own. */
    public void xlsx(OutputStream out) throws IOException {
        out.write(LineWorkbook.bytes(lines, controlTotals()));
        out.flush();
    }

    /** The companion of {@link #csv}: what it should hold. */
    public void controlJson(OutputStream out) throws IOException {
        JSON.writeValue(out, controlTotals().facts());
        out.write('\n');
        out.flush();
    }

    private ControlTotals controlTotals() {
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        try {
            csv(csv);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(csv.toByteArray());
            return new ControlTotals(lines, HexFormat.of().formatHex(digest));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
