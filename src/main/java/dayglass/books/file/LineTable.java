package dayglass.books.file;

import dayglass.base.Money;
import dayglass.books.AmountColumn;
import dayglass.books.CostingLines;
import dayglass.books.PayableLine;
import dayglass.books.WeighedLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Rows and columns of one kind of line, the same for every format.
 *
 * @param columns in their documented order
 * @param rows one a line
 */
record LineTable<L>(List<Column<L>> columns, List<L> rows) {
    /**
     * One column.
     *
     * @param total the sum of the column where it is one of amounts
     */
    record Column<L>(String heading, Function<L, Cell> cell, Optional<Money> total) {}

    /** What stands in a cell. */
    sealed interface Cell permits Text, Day, Amount, Nothing {}

    record Text(String text) implements Cell {}

    record Day(LocalDate date) implements Cell {}

    record Amount(Money money) implements Cell {}

    record Nothing() implements Cell {}

    static LineTable<PayableLine> payable(CostingLines lines) {
        List<Column<PayableLine>> columns = new ArrayList<>();
        columns.add(plain("date", line -> new Day(line.date())));
        columns.add(plain("service from", line -> new Day(line.service().from())));
        columns.add(plain("service to", line -> new Day(line.service().lastDay())));
        columns.add(plain("kind", line -> new Text(line.kind().word())));
        columns.add(plain("supplier", line -> new Text(line.supplier())));
        columns.add(plain("option", line -> new Text(line.option())));
        columns.add(plain("slots", line -> new Text(String.join("; ", line.slots()))));
        columns.add(plain("cost code", line -> new Text(line.costCode())));
        columns.add(plain("blocks", line -> new Text(line.blocks())));
        List<AmountColumn> amounts = lines.amountColumns();
        amounts.stream()
                .filter(column -> column.purpose().isNet())
                .forEach(column -> columns.add(amount(lines, column)));
        columns.add(new Column<>("net", line -> new Amount(line.net()), Optional.of(lines.netTotal())));
        amounts.stream()
                .filter(column -> !column.purpose().isNet())
                .forEach(column -> columns.add(amount(lines, column)));
        columns.add(new Column<>("total", line -> new Amount(line.total()), Optional.of(lines.payableTotal())));
        columns.add(plain("currency", line -> new Text(lines.currency().code())));
        return new LineTable<>(List.copyOf(columns), lines.payable());
    }

    static LineTable<WeighedLine> weighed(CostingLines lines) {
        List<Column<WeighedLine>> columns = List.of(
                plain("kind", line -> new Text(line.kind().word())),
                plain("option", line -> new Text(line.option())),
                plain("supplier", line -> new Text(line.supplier())),
                plain("from", line -> orNothing(line.from().map(Day::new))),
                plain("to", line -> orNothing(line.lastDay().map(Day::new))),
                plain("spare", line -> new Text(line.spare() ? "yes" : "no")),
                new Column<>(
                        "weighed cost (not payable)",
                        line -> new Amount(line.cost()),
                        Optional.of(lines.weighedTotal())),
                plain("currency", line -> new Text(lines.currency().code())));
        return new LineTable<>(columns, lines.weighed());
    }

    private static <L> Column<L> plain(String heading, Function<L, Cell> cell) {
        return new Column<>(heading, cell, Optional.empty());
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
