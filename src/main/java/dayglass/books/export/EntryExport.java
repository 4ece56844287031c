package dayglass.books.export;

import dayglass.books.entry.Entries;
import dayglass.books.entry.Posted;
import dayglass.sheet.CsvTable;
import dayglass.sheet.SheetTable;
import dayglass.sheet.SheetTable.Column;
import dayglass.sheet.StreamBook;
import java.io.IOException;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The files of an export. Each method writes one to a stream, leaves the stream open, and never holds more than a row.
 */
public final class EntryExport {
    private static final JsonMapper JSON =
            JsonMapper.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

    private final Entries.Which which;
    private final Entries.Run entries;
    private final ControlTotals totals;
    private final Optional<Layout> layout;
    private final List<Column<Posted>> columns;

    /**
     * The export of some entries.
     *
     * @param entries what {@code which} asks for, the same each time it is gone through
     */
    public EntryExport(Entries.Which which, Entries.Run entries) {
        this(which, entries, Optional.empty());
    }

    /** The same in a layout of the user's. */
    public EntryExport(Entries.Which which, Entries.Run entries, Optional<Layout> layout) {
        this.which = which;
        this.entries = entries;
        this.totals = ControlTotals.of(entries);
        this.layout = layout;
        this.columns = layout.map(named -> EntryColumns.of(totals, named)).orElseGet(() -> EntryColumns.of(totals));
    }

    private Map<String, Object> control() throws IOException {
        Map<String, Object> facts = Control.of(which, totals, csvSha256());
        layout.ifPresent(named -> facts.put("layout", named.name()));
        return facts;
    }

    /** Rows that can be posted and nothing else. */
    public void csv(OutputStream out) throws IOException {
        CsvTable.write(columns, entries::each, out);
    }

    /** The entries with their totals, and the control totals on a sheet of their own. */
    public void xlsx(OutputStream out) throws IOException {
        StreamBook.write(
                "Entries of job " + which.job().number(),
                totals.lastAt(),
                List.of(
                        new StreamBook.TableSheet<>("Entries", columns, entries::each),
                        new StreamBook.FactSheet("Control totals", facts())),
                out);
    }

    /** The entries, each an object whose members are the columns; numbers of money are text, so that none is rounded. */
    public void json(OutputStream out) throws IOException {
        try (JsonGenerator json = JSON.createGenerator(out)) {
            json.writeStartObject();
            json.writeName("control");
            json.writeRawValue(JSON.writeValueAsString(control()));
            json.writeName("entries");
            json.writeStartArray();
            entries.each(each -> {
                json.writeRaw('\n');
                json.writeStartObject();
                columns.forEach(
                        column -> member(json, column.heading(), column.cell().apply(each)));
                json.writeEndObject();
            });
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void member(JsonGenerator json, String heading, SheetTable.Cell cell) {
        if (cell instanceof SheetTable.Text text) {
            json.writeStringProperty(heading, text.text());
        } else if (cell instanceof SheetTable.Day day) {
            json.writeStringProperty(heading, day.date().toString());
        } else if (cell instanceof SheetTable.Amount amount) {
            json.writeStringProperty(heading, amount.money().amount());
        } else if (cell instanceof SheetTable.PlainNumber number) {
            json.writeStringProperty(heading, number.value().toPlainString());
        } else {
            json.writeNullProperty(heading);
        }
    }

    /** The companion of {@link #csv}: what it should hold. */
    public void controlJson(OutputStream out) throws IOException {
        out.write(JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(control()));
        out.write('\n');
    }

    private String csvSha256() throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            csv(new DigestOutputStream(OutputStream.nullOutputStream(), digest));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    private List<List<String>> facts() throws IOException {
        List<List<String>> facts = new ArrayList<>();
        control().forEach((name, value) -> {
            if (value instanceof Map<?, ?> sums) {
                facts.add(List.of(name, "net", "tax", "gross"));
                sums.forEach((of, each) -> {
                    List<String> row = new ArrayList<>(List.of(String.valueOf(of)));
                    ((Map<?, ?>) each).values().forEach(sum -> row.add(String.valueOf(sum)));
                    facts.add(row);
                });
            } else {
                facts.add(List.of(name, String.valueOf(value)));
            }
        });
        return facts;
    }
}
