package dayglass.books.export;

import dayglass.base.Money;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Posted;
import dayglass.sheet.SheetTable.Amount;
import dayglass.sheet.SheetTable.Cell;
import dayglass.sheet.SheetTable.Column;
import dayglass.sheet.SheetTable.Day;
import dayglass.sheet.SheetTable.Nothing;
import dayglass.sheet.SheetTable.PlainNumber;
import dayglass.sheet.SheetTable.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * The columns of an export of entries, in their documented order. Nothing in them changes after posting: people and jobs
 * stand by their numbers, as their names may change.
 */
public final class EntryColumns {
    /** Of an export without a layout, in their order. */
    public static final List<String> NAMES =
            of(ControlTotals.of(one -> {})).stream().map(Column::heading).toList();

    private EntryColumns() {}

    /** Those that a layout names, as it names them. */
    static List<Column<Posted>> of(ControlTotals totals, Layout layout) {
        Map<String, Column<Posted>> known = new LinkedHashMap<>();
        of(totals).forEach(column -> known.put(column.heading(), column));
        known.put(
                "cost code",
                text("cost code", each -> layout.written(each.entry().coding().costCode())));
        return layout.columns().stream()
                .map(each -> {
                    Column<Posted> column = Objects.requireNonNull(known.get(each.column()));
                    return new Column<>(each.heading(), column.cell(), column.total());
                })
                .toList();
    }

    static List<Column<Posted>> of(ControlTotals totals) {
        List<Column<Posted>> columns = new ArrayList<>();
        columns.add(number("entry", each -> each.id().number()));
        columns.add(number("posting", each -> each.posting().number()));
        columns.add(number("job", each -> each.entry().job().number()));
        columns.add(text("kind", each -> each.entry().kind().word()));
        columns.add(Column.plain("date", each -> new Day(each.entry().date())));
        columns.add(Column.plain(
                "service from", each -> new Day(each.entry().service().from())));
        columns.add(Column.plain(
                "service to", each -> new Day(each.entry().service().lastDay())));
        columns.add(text("cost code", each -> each.entry().coding().costCode()));
        columns.add(text("episode", each -> each.entry().coding().episode()));
        columns.add(text("supplier", each -> each.entry().coding().supplier()));
        columns.add(text("description", each -> each.entry().item().description()));
        columns.add(text("tag", each -> each.entry().item().tag()));
        columns.add(text("serial", each -> each.entry().item().serial()));
        columns.add(Column.plain(
                "quantity", each -> new PlainNumber(each.entry().item().quantity())));
        columns.add(amount("rate", each -> each.entry().item().rate()));
        amounts(columns, totals);
        columns.add(text("purchase order", each -> each.entry().papers().purchaseOrder()));
        columns.add(text("invoice", each -> each.entry().papers().invoice()));
        columns.add(text("note", each -> each.entry().papers().note()));
        columns.add(link("reverses", each -> each.links().reverses().map(Entry.Id::number)));
        columns.add(link("commitment", each -> each.links().commitment().map(Entry.Id::number)));
        columns.add(link("costing", each -> each.links().costing()));
        columns.add(number("person", each -> each.by().number()));
        columns.add(text("recorded at", each -> each.at().toString()));
        columns.add(text("hash", Posted::hash));
        return List.copyOf(columns);
    }

    private static void amounts(List<Column<Posted>> columns, ControlTotals totals) {
        columns.add(amount("net", each -> each.entry().amounts().net()));
        columns.add(text("tax code", each -> each.entry().sum().taxCode()));
        columns.add(amount("tax", each -> each.entry().amounts().tax()));
        columns.add(amount("gross", each -> each.entry().amounts().gross()));
        columns.add(
                text("currency", each -> each.entry().amounts().net().currency().code()));
        columns.add(Column.plain(
                "exchange rate",
                each -> new PlainNumber(each.entry().sum().exchange().rate())));
        columns.add(
                text("exchange source", each -> each.entry().sum().exchange().source()));
        columns.add(Column.plain(
                "exchange date", each -> new Day(each.entry().sum().exchange().on())));
        columns.add(new Column<>(
                "base net", each -> new Amount(each.entry().amounts().baseNet()), totals.baseNet()));
        columns.add(new Column<>(
                "base tax", each -> new Amount(each.entry().amounts().baseTax()), totals.baseTax()));
        columns.add(new Column<>(
                "base gross", each -> new Amount(each.entry().amounts().baseGross()), totals.baseGross()));
        columns.add(text(
                "base currency",
                each -> each.entry().amounts().baseNet().currency().code()));
    }

    private static Column<Posted> text(String heading, Function<Posted, String> text) {
        return Column.plain(heading, each -> new Text(text.apply(each)));
    }

    private static Column<Posted> amount(String heading, Function<Posted, Money> amount) {
        return Column.plain(heading, each -> new Amount(amount.apply(each)));
    }

    private static Column<Posted> number(String heading, Function<Posted, Long> number) {
        return Column.plain(heading, each -> new PlainNumber(BigDecimal.valueOf(number.apply(each))));
    }

    private static Column<Posted> link(String heading, Function<Entry, Optional<Long>> number) {
        return Column.plain(
                heading,
                each -> number.apply(each.entry())
                        .<Cell>map(id -> new PlainNumber(BigDecimal.valueOf(id)))
                        .orElse(new Nothing()));
    }
}
