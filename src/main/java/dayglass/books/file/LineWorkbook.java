package dayglass.books.file;

import dayglass.books.CostingLines;
import dayglass.sheet.SheetBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The workbook: a sheet of payable lines, one of the weighed plan, one of control totals. */
final class LineWorkbook {
    static final String PAYABLE = "Payable lines";
    static final String WEIGHED = "Weighed plan";
    static final String CONTROL = "Control totals";

    private LineWorkbook() {}

    static byte[] bytes(CostingLines lines, ControlTotals control) {
        return SheetBook.bytes(lines.job(), lines.reference().createdAt(), book -> {
            book.table(PAYABLE, LineTable.payable(lines));
            book.tableUnder(ControlTotals.WEIGHED_NOTE, WEIGHED, LineTable.weighed(lines));
            book.facts(CONTROL, facts(control));
        });
    }

    private static List<List<Object>> facts(ControlTotals control) {
        List<List<Object>> facts = new ArrayList<>();
        for (Map.Entry<String, Object> fact : control.facts().entrySet()) {
            List<Object> row = new ArrayList<>(List.of(fact.getKey()));
            if (fact.getValue() instanceof Map<?, ?> sums) {
                // As text: a control total keeps every digit, a spreadsheet's number fifteen.
                sums.forEach((currency, sum) -> row.addAll(List.of(sum, currency)));
            } else {
                row.add(fact.getValue());
            }
            facts.add(row);
        }
        return facts;
    }
}
