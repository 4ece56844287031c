package dayglass.sheet;

import dayglass.base.Money;
import dayglass.sheet.SheetTable.Column;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One sheet of a streamed workbook as XML. */
final class SheetXml {
    private static final int MOST_DIGITS = 15;
    private static final int WIDTH = 16;

    /** Day 0 of a workbook's calendar, right from March 1900 on. Source: ECMA-376 part 1, 18.17.4.1. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private static final LocalDate FIRST_RIGHT = LocalDate.of(1900, 3, 1);

    private final Writer out;
    private int row;

    private SheetXml(Writer out) {
        this.out = out;
    }

    static void write(StreamBook.Sheet sheet, Writer out) throws IOException {
        new SheetXml(out).write(sheet);
    }

    private void write(StreamBook.Sheet sheet) throws IOException {
        out.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
                + "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
        if (sheet instanceof StreamBook.TableSheet<?> table) {
            table(table);
        } else {
            facts(((StreamBook.FactSheet) sheet).facts());
        }
        out.write("</worksheet>");
    }

    private <L> void table(StreamBook.TableSheet<L> table) throws IOException {
        List<Column<L>> columns = table.columns();
        out.write("<sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\""
                + " activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews><cols><col min=\"1\" max=\""
                + columns.size() + "\" width=\"" + WIDTH + "\" customWidth=\"1\"/></cols><sheetData>");
        open();
        for (Column<L> column : columns) {
            text(column.heading(), BookParts.BOLD);
        }
        close();
        table.rows().each(each -> {
            try {
                open();
                for (Column<L> column : columns) {
                    cell(column.cell().apply(each));
                }
                close();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        });
        totals(columns);
        out.write("</sheetData>");
    }

    private <L> void totals(List<Column<L>> columns) throws IOException {
        if (columns.stream().noneMatch(column -> column.total().isPresent())) {
            return;
        }
        open();
        for (int at = 0; at < columns.size(); at++) {
            Optional<Money> total = columns.get(at).total();
            if (total.isPresent()) {
                number(
                        total.get().major(),
                        BookParts.TOTAL + total.get().currency().decimals());
            } else if (at == 0) {
                text("Total", BookParts.BOLD);
            } else {
                out.write("<c/>");
            }
        }
        close();
    }

    private void facts(List<List<String>> facts) throws IOException {
        out.write("<cols><col min=\"1\" max=\"1\" width=\"28\" customWidth=\"1\"/>"
                + "<col min=\"2\" max=\"9\" width=\"22\" customWidth=\"1\"/></cols><sheetData>");
        for (List<String> fact : facts) {
            open();
            for (int at = 0; at < fact.size(); at++) {
                text(fact.get(at), at == 0 ? BookParts.BOLD : 0);
            }
            close();
        }
        out.write("</sheetData>");
    }

    private void open() throws IOException {
        out.write("<row r=\"" + ++row + "\">");
    }

    private void close() throws IOException {
        out.write("</row>");
    }

    private void cell(SheetTable.Cell cell) throws IOException {
        if (cell instanceof SheetTable.Text text && !text.text().isEmpty()) {
            text(text.text(), 0);
        } else if (cell instanceof SheetTable.Amount amount) {
            number(
                    amount.money().major(),
                    BookParts.AMOUNT + amount.money().currency().decimals());
        } else if (cell instanceof SheetTable.PlainNumber plain) {
            number(plain.value(), 0);
        } else if (cell instanceof SheetTable.Day day && day.date().isBefore(FIRST_RIGHT)) {
            text(day.date().toString(), 0);
        } else if (cell instanceof SheetTable.Day day) {
            out.write(
                    "<c s=\"" + BookParts.DATE + "\"><v>" + ChronoUnit.DAYS.between(DAY_ZERO, day.date()) + "</v></c>");
        } else {
            out.write("<c/>");
        }
    }

    /** A spreadsheet keeps fifteen digits of a number: one of more stands as text, so that none is lost. */
    private void number(BigDecimal number, int style) throws IOException {
        if (number.precision() > MOST_DIGITS) {
            text(number.toPlainString(), 0);
        } else {
            out.write("<c s=\"" + style + "\"><v>" + number.toPlainString() + "</v></c>");
        }
    }

    private void text(String text, int style) throws IOException {
        out.write(
                "<c s=\"" + style + "\" t=\"inlineStr\"><is><t xml:space=\"preserve\">" + text(text) + "</t></is></c>");
    }

    /**
     * Text as XML holds it. What XML cannot hold at all is written as ECMA-376 part 1, 22.9.2.19 (ST_Xstring) has it.
     */
    static String text(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        SheetText.shown(text).codePoints().forEach(point -> {
            boolean isCarriageReturn = point == '\r';
            boolean isControl = point < ' ' && point != '\t' && point != '\n';
            boolean isSurrogate = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
            if (isControl || isCarriageReturn || isSurrogate || point == 0xFFFE || point == 0xFFFF) {
                escaped.append(String.format(Locale.ROOT, "_x%04X_", point));
            } else if (point == '&' || point == '<' || point == '>' || point == '"') {
                escaped.append("&#").append(point).append(';');
            } else {
                escaped.appendCodePoint(point);
            }
        });
        return escaped.toString();
    }
}
