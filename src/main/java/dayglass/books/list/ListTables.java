package dayglass.books.list;

import dayglass.base.Money;
import dayglass.sheet.SheetBook;
import dayglass.sheet.SheetTable;
import dayglass.sheet.SheetTable.Amount;
import dayglass.sheet.SheetTable.Cell;
import dayglass.sheet.SheetTable.Column;
import dayglass.sheet.SheetTable.Day;
import dayglass.sheet.SheetTable.Nothing;
import dayglass.sheet.SheetTable.PlainNumber;
import dayglass.sheet.SheetTable.Text;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** The lists as workbooks. */
public final class ListTables {
    private ListTables() {}

    public static byte[] hire(String title, Instant at, List<HireLine> lines) {
        return SheetBook.bytes(title, at, book -> book.table("Cost of hire", hire(lines)));
    }

    public static byte[] insured(String title, Instant at, List<InsuredLine> lines) {
        return SheetBook.bytes(title, at, book -> book.table("To be insured", insured(lines)));
    }

    private static SheetTable<HireLine> hire(List<HireLine> lines) {
        return new SheetTable<>(
                List.of(
                        text("supplier", line -> line.order().coding().supplier()),
                        text("purchase order", line -> line.order().papers().purchaseOrder()),
                        text("what", line -> line.order().item().description()),
                        text("tag", line -> line.order().item().tag()),
                        text("cost code", line -> line.order().coding().costCode()),
                        Column.plain(
                                "from", line -> new Day(line.order().service().from())),
                        Column.plain(
                                "to", line -> new Day(line.order().service().lastDay())),
                        Column.plain("days", line -> new PlainNumber(BigDecimal.valueOf(line.days()))),
                        amount("net", lines, line -> line.order().amounts().baseNet()),
                        amount("tax", lines, line -> line.order().amounts().baseTax()),
                        amount("gross", lines, line -> line.order().amounts().baseGross()),
                        amount("invoiced or accrued, net", lines, HireLine::used),
                        amount("open, net", lines, HireLine::open)),
                lines);
    }

    private static SheetTable<InsuredLine> insured(List<InsuredLine> lines) {
        List<Money> values = values(lines);
        return new SheetTable<>(
                List.of(
                        text("what", InsuredLine::what),
                        text("tag", InsuredLine::tag),
                        text("serial", InsuredLine::serial),
                        text("owner", InsuredLine::owner),
                        Column.plain("from", line -> new Day(line.held().from())),
                        Column.plain("to", line -> new Day(line.held().lastDay())),
                        new Column<>(
                                "replacement value",
                                line -> line.value().<Cell>map(Amount::new).orElse(new Nothing()),
                                Optional.of(values)
                                        .filter(sums -> sums.size() == 1)
                                        .map(sums -> sums.get(0))),
                        text(
                                "currency",
                                line -> line.value()
                                        .map(value -> value.currency().code())
                                        .orElse("not known: ask the owner")),
                        Column.plain(
                                "value set on",
                                line -> line.valueSetOn().<Cell>map(Day::new).orElse(new Nothing()))),
                lines);
    }

    /** The sum of what is known of each currency. */
    public static List<Money> values(List<InsuredLine> lines) {
        Map<String, Money> sums = new TreeMap<>();
        lines.stream()
                .flatMap(line -> line.value().stream())
                .forEach(value -> sums.merge(value.currency().code(), value, Money::plus));
        return List.copyOf(sums.values());
    }

    private static <L> Column<L> text(String heading, Function<L, String> text) {
        return Column.plain(heading, line -> new Text(text.apply(line)));
    }

    private static Column<HireLine> amount(String heading, List<HireLine> lines, Function<HireLine, Money> amount) {
        Stream<Money> amounts = lines.stream().map(amount);
        return new Column<>(heading, line -> new Amount(amount.apply(line)), amounts.reduce(Money::plus));
    }
}
