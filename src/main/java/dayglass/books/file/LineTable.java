package dayglass.books.file;

import dayglass.books.AmountColumn;
import dayglass.books.CostingLines;
import dayglass.books.PayableLine;
import dayglass.books.WeighedLine;
import dayglass.sheet.SheetTable;
import dayglass.sheet.SheetTable.Amount;
import dayglass.sheet.SheetTable.Cell;
import dayglass.sheet.SheetTable.Column;
import dayglass.sheet.SheetTable.Day;
import dayglass.sheet.SheetTable.Nothing;
import dayglass.sheet.SheetTable.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The columns of a costing's lines, in their documented order. */
final class LineTable {
    private LineTable() {}

    static SheetTable<PayableLine> payable(CostingLines lines) {
        List<Column<PayableLine>> columns = new ArrayList<>();
        columns.add(Column.plain("date", line -> new Day(line.date())));
        columns.add(Column.plain("service from", line -> new Day(line.service().from())));
        columns.add(Column.plain("service to", line -> new Day(line.service().lastDay())));
        columns.add(Column.plain("kind", line -> new Text(line.kind().word())));
        columns.add(Column.plain("supplier", line -> new Text(line.supplier())));
        columns.add(Column.plain("option", line -> new Text(line.option())));
        columns.add(Column.plain("slots", line -> new Text(String.join("; ", line.slots()))));
        columns.add(Column.plain("cost code", line -> new Text(line.costCode())));
        columns.add(Column.plain("blocks", line -> new Text(line.blocks())));
        List<AmountColumn> amounts = lines.amountColumns();
        amounts.stream()
                .filter(column -> column.purpose().isNet())
                .forEach(column -> columns.add(amount(lines, column)));
        columns.add(new Column<>("net", line -> new Amount(line.net()), Optional.of(lines.netTotal())));
        amounts.stream()
                .filter(column -> !column.purpose().isNet())
                .forEach(column -> columns.add(amount(lines, column)));
        columns.add(new Column<>("total", line -> new Amount(line.total()), Optional.of(lines.payableTotal())));
        columns.add(Column.plain("currency", line -> new Text(lines.currency().code())));
        return new SheetTable<>(List.copyOf(columns), lines.payable());
    }

    static SheetTable<WeighedLine> weighed(CostingLines lines) {
        List<Column<WeighedLine>> columns = List.of(
                Column.plain("kind", line -> new Text(line.kind().word())),
                Column.plain("option", line -> new Text(line.option())),
                Column.plain("supplier", line -> new Text(line.supplier())),
                Column.plain("from", line -> orNothing(line.from().map(Day::new))),
                Column.plain("to", line -> orNothing(line.lastDay().map(Day::new))),
                Column.plain("spare", line -> new Text(line.spare() ? "yes" : "no")),
                new Column<>(
                        "weighed cost (not payable)",
                        line -> new Amount(line.cost()),
                        Optional.of(lines.weighedTotal())),
                Column.plain("currency", line -> new Text(lines.currency().code())));
        return new SheetTable<>(columns, lines.weighed());
    }

    private static Column<PayableLine> amount(CostingLines lines, AmountColumn column) {
        return new Column<>(
                column.heading(),
                line -> orNothing(line.amount(column).map(Amount::new)),
                Optional.of(lines.columnTotal(column)));
    }

    private static Cell orNothing(Optional<? extends Cell> cell) {
        return cell.isPresent() ? cell.get() : new Nothing();
    }
}
