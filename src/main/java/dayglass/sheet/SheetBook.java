package dayglass.sheet;

import dayglass.base.Currency;
import dayglass.sheet.SheetTable.Cell;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** A workbook of tables, each on a sheet of its own: headings in bold, typed dates and numbers, totals where there are. */
public final class SheetBook {
    private static final int HEADING_ROW = 0;
    private static final int HEADING_ROW_UNDER_NOTE = 2;
    private static final int ISO_DATE = "2027-04-05".length();
    private static final int WIDEST = 60;
    private static final int WIDTH_OF_FACTS = 70;
    private static final int MOST_DIGITS = 15;

    private final Workbook workbook;

    private SheetBook(Workbook workbook) {
        this.workbook = workbook;
    }

    /**
     * The bytes of a workbook; the same content and moment give the same bytes for ever.
     *
     * @param createdAt the moment that it says it was made at
     * @param sheets adds its sheets in their order
     */
    public static byte[] bytes(String title, Instant createdAt, Consumer<SheetBook> sheets) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            try (Workbook workbook = new Workbook(out, "Dayglass", null)) {
                workbook.properties().setTitle(SheetText.shown(title));
                sheets.accept(new SheetBook(workbook));
            }
            return StablePackage.of(out.toByteArray(), createdAt);
        } catch (IOException e) {
            throw new UncheckedIOException("memory took no more", e);
        }
    }

    /** A sheet that is a table: its headings stay in sight and filter. */
    public void table(String name, SheetTable<?> table) {
        Worksheet sheet = workbook.newWorksheet(name);
        sheet.repeatRows(HEADING_ROW);
        sheet.freezePane(0, HEADING_ROW + 1);
        table(sheet, table, HEADING_ROW);
        if (!table.rows().isEmpty()) {
            int lastRow = HEADING_ROW + table.rows().size();
            sheet.setAutoFilter(HEADING_ROW, 0, lastRow, table.columns().size() - 1);
        }
        printWide(sheet);
    }

    /** A sheet that says something and shows a table below it. */
    public void tableUnder(String note, String name, SheetTable<?> table) {
        Worksheet sheet = workbook.newWorksheet(name);
        sheet.value(0, 0, SheetText.shown(note));
        sheet.style(0, 0).italic().set();
        table(sheet, table, HEADING_ROW_UNDER_NOTE);
        printWide(sheet);
    }

    /**
     * A sheet of facts.
     *
     * @param facts a name in bold, then whole numbers and texts, one row each
     */
    public void facts(String name, List<List<Object>> facts) {
        Worksheet sheet = workbook.newWorksheet(name);
        for (int row = 0; row < facts.size(); row++) {
            for (int column = 0; column < facts.get(row).size(); column++) {
                Object fact = facts.get(row).get(column);
                if (fact instanceof Integer count) {
                    sheet.value(row, column, count);
                } else {
                    sheet.value(row, column, SheetText.shown(String.valueOf(fact)));
                }
            }
            sheet.style(row, 0).bold().set();
        }
        sheet.width(1, WIDTH_OF_FACTS);
        printWide(sheet);
    }

    private static <L> void table(Worksheet sheet, SheetTable<L> table, int headingRow) {
        int totalRow = headingRow + 1 + table.rows().size();
        for (int column = 0; column < table.columns().size(); column++) {
            SheetTable.Column<L> one = table.columns().get(column);
            sheet.value(headingRow, column, SheetText.shown(one.heading()));
            sheet.style(headingRow, column).bold().wrapText(true).set();
            for (int row = 0; row < table.rows().size(); row++) {
                cell(
                        sheet,
                        headingRow + 1 + row,
                        column,
                        one.cell().apply(table.rows().get(row)));
            }
            sheet.width(column, width(one, table.rows()));
            int at = column;
            one.total().ifPresent(sum -> {
                number(sheet, totalRow, at, sum.major());
                sheet.style(totalRow, at)
                        .format(amountFormat(sum.currency()))
                        .bold()
                        .set();
            });
        }
        if (table.columns().stream().anyMatch(column -> column.total().isPresent())) {
            sheet.value(totalRow, 0, "Total");
            sheet.style(totalRow, 0).bold().set();
        }
    }

    /** A spreadsheet keeps fifteen digits of a number: an amount of more stands as text, so that none is lost. */
    private static void number(Worksheet sheet, int row, int column, BigDecimal number) {
        if (number.precision() > MOST_DIGITS) {
            sheet.value(row, column, number.toPlainString());
        } else {
            sheet.value(row, column, number);
        }
    }

    private static void cell(Worksheet sheet, int row, int column, Cell cell) {
        if (cell instanceof SheetTable.Text text && !text.text().isEmpty()) {
            sheet.value(row, column, SheetText.shown(text.text()));
        } else if (cell instanceof SheetTable.Amount amount) {
            number(sheet, row, column, amount.money().major());
            sheet.style(row, column)
                    .format(amountFormat(amount.money().currency()))
                    .set();
        } else if (cell instanceof SheetTable.PlainNumber plain) {
            number(sheet, row, column, plain.value());
            sheet.style(row, column)
                    .format(decimals("0", plain.value().scale()))
                    .set();
        } else if (cell instanceof SheetTable.Day day && day.date().getYear() < 1900) {
            // The format's calendar begins in 1900.
            sheet.value(row, column, day.date().toString());
        } else if (cell instanceof SheetTable.Day day) {
            sheet.value(row, column, day.date());
            sheet.style(row, column).format("yyyy-mm-dd").set();
        }
    }

    /** Wide enough for every amount and date, which would be shown as ##### otherwise; text wider than that runs on. */
    private static <L> double width(SheetTable.Column<L> column, List<L> rows) {
        int longest = Stream.concat(
                        rows.stream().map(column.cell()),
                        column.total().stream().map(SheetTable.Amount::new))
                .mapToInt(SheetBook::characters)
                .max()
                .orElse(0);
        int longestWord = Stream.of(column.heading().split(" ", -1))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        return Math.min(WIDEST, 2 + Math.max(longest, longestWord));
    }

    private static int characters(Cell cell) {
        if (cell instanceof SheetTable.Text text) {
            return text.text().length();
        }
        if (cell instanceof SheetTable.Amount amount) {
            // A separator stands before each three digits.
            return amount.money().amount().length() * 4 / 3 + 1;
        }
        if (cell instanceof SheetTable.PlainNumber number) {
            return number.value().toPlainString().length();
        }
        return cell instanceof SheetTable.Day ? ISO_DATE : 0;
    }

    private static String amountFormat(Currency currency) {
        return decimals("#,##0", currency.decimals());
    }

    private static String decimals(String whole, int decimals) {
        return decimals <= 0 ? whole : whole + "." + "0".repeat(decimals);
    }

    private static void printWide(Worksheet sheet) {
        sheet.pageOrientation("landscape");
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }
}
