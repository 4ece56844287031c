package dayglass.sheet;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook that is written as its rows come, so that a million of them need no memory. Each part is written twice: once
 * to learn its length and checksum, which a part that is stored uncompressed must say first, and once for good. The same
 * rows and moment give the same bytes for ever.
 *
 * <p>Source of the form: ECMA-376 part 1 (SpreadsheetML) and part 2 (Open Packaging Conventions).
 */
public final class StreamBook {
    /** As in the house's other workbooks: any later moment would depend on the time zone. */
    private static final LocalDateTime FIXED_DATE = LocalDateTime.of(1980, 2, 1, 0, 0);

    private StreamBook() {}

    /** A sheet of a workbook. */
    public sealed interface Sheet permits TableSheet, FactSheet {
        String name();
    }

    /** A table: headings in bold that stay in sight, typed cells, and totals below. */
    public record TableSheet<L>(String name, List<SheetTable.Column<L>> columns, SheetTable.Rows<L> rows)
            implements Sheet {}

    /** Rows of texts; the first of each in bold. */
    public record FactSheet(String name, List<List<String>> facts) implements Sheet {}

    /** Writes the part of a package. */
    @FunctionalInterface
    interface Part {
        void write(Writer out) throws IOException;
    }

    /** Writes a workbook and leaves the stream open. */
    public static void write(String title, Instant createdAt, List<Sheet> sheets, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(out));
        zip.setMethod(ZipOutputStream.STORED);
        put(zip, "[Content_Types].xml", part -> part.write(BookParts.contentTypes(sheets.size())));
        put(zip, "_rels/.rels", part -> part.write(BookParts.packageRelations()));
        put(zip, "docProps/core.xml", part -> part.write(BookParts.properties(title, createdAt)));
        put(zip, "xl/workbook.xml", part -> part.write(BookParts.workbook(sheets)));
        put(zip, "xl/_rels/workbook.xml.rels", part -> part.write(BookParts.workbookRelations(sheets.size())));
        put(zip, "xl/styles.xml", part -> part.write(BookParts.styles()));
        for (int at = 0; at < sheets.size(); at++) {
            Sheet sheet = sheets.get(at);
            put(zip, "xl/worksheets/sheet" + (at + 1) + ".xml", part -> SheetXml.write(sheet, part));
        }
        zip.finish();
        zip.flush();
    }

    private static void put(ZipOutputStream zip, String name, Part part) throws IOException {
        Count count = new Count();
        CheckedOutputStream measured = new CheckedOutputStream(count, new CRC32());
        write(part, measured);
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(FIXED_DATE);
        entry.setSize(count.bytes);
        entry.setCrc(measured.getChecksum().getValue());
        zip.putNextEntry(entry);
        write(part, zip);
        zip.closeEntry();
    }

    private static void write(Part part, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        try {
            part.write(writer);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        writer.flush();
    }

    /** Counts what is written and keeps nothing of it. */
    private static final class Count extends OutputStream {
        private long bytes;

        @Override
        public void write(int one) {
            bytes++;
        }

        @Override
        public void write(byte[] some, int from, int length) {
            bytes += length;
        }
    }
}
