package dayglass.books.file;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.CostingLines;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** The workbook: a sheet of payable lines, one of the weighed plan, one of control totals. */
final class LineWorkbook {
    static final String PAYABLE = "Payable lines";
    static final String WEIGHED = "Weighed plan";
    static final String CONTROL = "Control totals";

    private static final int HEADING_ROW = 0;
    private static final int WEIGHED_HEADING_ROW = 2;
    private static final int ISO_DATE = "2027-04-05".length();
    private static final int WIDEST = 60;
    private static final int MOST_DIGITS = 15;

    private LineWorkbook() {}

    static byte[] bytes(CostingLines lines, ControlTotals control) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Dayglass", null)) {
            workbook.properties().setTitle(SheetText.shown(lines.job()));
            payable(workbook.newWorksheet(PAYABLE), lines);
            weighed(workbook.newWorksheet(WEIGHED), lines);
            control(workbook.newWorksheet(CONTROL), control);
        }
        return StablePackage.of(out.toByteArray(), lines.reference().createdAt());
    }

    private static void payable(Worksheet sheet, CostingLines lines) {
        LineTable<?> table = LineTable.payable(lines);
        sheet.repeatRows(HEADING_ROW);
        sheet.freezePane(0, HEADING_ROW + 1);
        table(sheet, table, HEADING_ROW, lines.currency());
        if (!table.rows().isEmpty()) {
            int lastRow = HEADING_ROW + table.rows().size();
            sheet.setAutoFilter(HEADING_ROW, 0, lastRow, table.columns().size() - 1);
        }
        printWide(sheet);
    }

    private static void weighed(Worksheet sheet, CostingLines lines) {
        sheet.value(0, 0, ControlTotals.WEIGHED_NOTE);
        sheet.style(0, 0).italic().set();
        table(sheet, LineTable.weighed(lines), WEIGHED_HEADING_ROW, lines.currency());
        printWide(sheet);
    }

    private static void control(Worksheet sheet, ControlTotals control) {
        int row = 0;
        for (Map.Entry<String, Object> fact : control.facts().entrySet()) {
            sheet.value(row, 0, fact.getKey());
            sheet.style(row, 0).bold().set();
            if (fact.getValue() instanceof Integer count) {
                sheet.value(row, 1, count);
            } else if (fact.getValue() instanceof Map<?, ?> sums) {
                for (Map.Entry<?, ?> sum : sums.entrySet()) {
                    // As text: a control total keeps every digit, a spreadsheet's number fifteen.
                    sheet.value(row, 1, String.valueOf(sum.getValue()));
                    sheet.value(row, 2, String.valueOf(sum.getKey()));
                }
            } else {
                sheet.value(row, 1, SheetText.shown(String.valueOf(fact.getValue())));
            }
            row++;
        }
        sheet.width(1, 70);
        printWide(sheet);
    }

    private static <L> void table(Worksheet sheet, LineTable<L> table, int headingRow, Currency currency) {
        String format = amountFormat(currency);
        int totalRow = headingRow + 1 + table.rows().size();
        for (int column = 0; column < table.columns().size(); column++) {
            LineTable.Column<L> one = table.columns().get(column);
            sheet.value(headingRow, column, SheetText.shown(one.heading()));
            sheet.style(headingRow, column).bold().wrapText(true).set();
            for (int row = 0; row < table.rows().size(); row++) {
                cell(
                        sheet,
                        headingRow + 1 + row,
                        column,
                        one.cell().apply(table.rows().get(row)),
                        format);
            }
            sheet.width(column, width(one, table.rows()));
            int at = column;
            one.total().ifPresent(sum -> {
                amount(sheet, totalRow, at, sum);
                sheet.style(totalRow, at).format(format).bold().set();
            });
        }
        sheet.value(totalRow, 0, "Total");
        sheet.style(totalRow, 0).bold().set();
    }

    /** A spreadsheet keeps fifteen digits of a number: an amount of more stands as text, so that none is lost. */
    private static void amount(Worksheet sheet, int row, int column, Money money) {
        if (money.major().precision() > MOST_DIGITS) {
            sheet.value(row, column, money.amount());
        } else {
            sheet.value(row, column, money.major());
        }
    }

    private static void cell(Worksheet sheet, int row, int column, LineTable.Cell cell, String amountFormat) {
        if (cell instanceof LineTable.Text text && !text.text().isEmpty()) {
            sheet.value(row, column, SheetText.shown(text.text()));
        } else if (cell instanceof LineTable.Amount amount) {
            amount(sheet, row, column, amount.money());
            sheet.style(row, column).format(amountFormat).set();
        } else if (cell instanceof LineTable.Day day && day.date().getYear() < 1900) {
            // The format's calendar begins in 1900.
            sheet.value(row, column, day.date().toString());
        } else if (cell instanceof LineTable.Day day) {
            sheet.value(row, column, day.date());
            sheet.style(row, column).format("yyyy-mm-dd").set();
        }
    }

    /** Wide enough for every amount and date, which would be shown as ##### otherwise; text wider than that runs on. */
    private static <L> double width(LineTable.Column<L> column, List<L> rows) {
        int longest = Stream.concat(
                        rows.stream().map(column.cell()),
                        column.total().stream().map(LineTable.Amount::new))
                .mapToInt(LineWorkbook::characters)
                .max()
                .orElse(0);
        int longestWord = Stream.of(column.heading().split(" ", -1))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        return Math.min(WIDEST, 2 + Math.max(longest, longestWord));
    }

    private static int characters(LineTable.Cell cell) {
        if (cell instanceof LineTable.Text text) {
            return text.text().length();
        }
        if (cell instanceof LineTable.Amount amount) {
            // A separator stands before each three digits.
            return amount.money().amount().length() * 4 / 3 + 1;
        }
        return cell instanceof LineTable.Day ? ISO_DATE : 0;
    }

    private static String amountFormat(Currency currency) {
        return currency.decimals() == 0 ? "#,##0" : "#,##0." + "0".repeat(currency.decimals());
    }

    private static void printWide(Worksheet sheet) {
        sheet.pageOrientation("landscape");
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }
}
