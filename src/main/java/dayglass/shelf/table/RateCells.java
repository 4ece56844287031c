package dayglass.shelf.table;

import dayglass.catalogue.Rate;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.rental.RentalTerms.Block;
import dayglass.sheet.SheetTable;
import dayglass.shelf.RateJson;
import dayglass.wire.Json;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rates of a card as a table that is read back as it was. A rate whose blocks do not follow the order of the
 * columns says the rest of them under "other blocks", since blocks have an order of their own.
 */
final class RateCells {
    private final List<Rate> rates;
    private final LetsCells things;
    private final List<TableField> blocks;
    private final int addOns;

    RateCells(List<Rate> rates, LetsCells things) {
        this.rates = rates;
        this.things = things;
        this.blocks = blocks(rates);
        this.addOns =
                rates.stream().mapToInt(rate -> rate.terms().addOns().size()).reduce(1, Math::max);
    }

    SheetTable<Map<String, String>> table() {
        Stream<TableField> numbered = Stream.iterate(1, number -> number <= addOns, number -> number + 1)
                .flatMap(number -> RateColumns.addOns(number).stream());
        List<TableField> fields = Stream.of(
                        RateColumns.FIRST.stream(),
                        blocks.stream(),
                        RateColumns.TERMS.stream(),
                        numbered,
                        RateColumns.LAST.stream())
                .flatMap(each -> each)
                .toList();
        return new SheetTable<>(
                fields.stream()
                        .map(field -> SheetTable.Column.<Map<String, String>>plain(field.name(), field::typed))
                        .toList(),
                rates.stream().map(rate -> cells(rate, fields)).toList());
    }

    /** Each block's column after that of the block before it; those of the trade always, in the trade's order. */
    private static List<TableField> blocks(List<Rate> rates) {
        List<TableField> columns = new ArrayList<>();
        for (Rate rate : rates) {
            int next = 0;
            for (Block block : rate.terms().blocks()) {
                TableField field = RateColumns.of(block);
                if (!columns.contains(field)) {
                    columns.add(next, field);
                }
                next = columns.indexOf(field) + 1;
            }
        }
        int next = 0;
        for (TableField usual : RateColumns.USUAL_BLOCKS) {
            if (!columns.contains(usual)) {
                columns.add(next, usual);
            }
            next = columns.indexOf(usual) + 1;
        }
        return columns;
    }

    private Map<String, String> cells(Rate rate, List<TableField> fields) {
        Json json = RateJson.write(rate);
        Map<String, String> byPointer = rate.lets().map(things::cells).orElse(Map.of());
        Map<String, String> cells = new LinkedHashMap<>();
        for (TableField field : fields) {
            Optional.ofNullable(byPointer.get(field.pointer()))
                    .or(() -> JsonTree.at(json, jsonPointer(field))
                            .filter(value -> !(value instanceof Json.Arr list
                                    && list.entries().isEmpty()))
                            .filter(value -> isPlain(field))
                            .map(field::cell))
                    .ifPresent(cell -> cells.put(field.name(), cell));
        }
        putBlocks(rate, cells);
        putLongHire(rate, cells);
        putMarks(rate, cells);
        return cells;
    }

    /** What is written as it stands in the JSON. */
    private static boolean isPlain(TableField field) {
        return Stream.of(RateColumns.BLOCKS, RateColumns.LONG_HIRE, "/lets").noneMatch(field.pointer()::startsWith);
    }

    /** Add-ons are numbered from 1 in headings, from 0 in the JSON. */
    private static String jsonPointer(TableField field) {
        String[] steps = field.pointer().split("/", -1);
        return field.pointer().startsWith(RateColumns.ADD_ONS + "/")
                ? RateColumns.ADD_ONS + "/" + (Integer.parseInt(steps[2]) - 1) + "/" + steps[3]
                : field.pointer();
    }

    private void putBlocks(Rate rate, Map<String, String> cells) {
        List<String> others = new ArrayList<>();
        int next = 0;
        for (Block block : rate.terms().blocks()) {
            int at = blocks.indexOf(RateColumns.of(block));
            if (at >= next && others.isEmpty()) {
                cells.put(blocks.get(at).name(), block.price().amount());
                next = at + 1;
            } else {
                String weekday = block.startsOn().map(DayOfWeek::name).orElse(RateColumns.ANY_DAY);
                others.add(RateColumns.words(block.days(), weekday) + ": "
                        + block.price().amount());
            }
        }
        putUnlessEmpty(cells, RateColumns.OTHER_BLOCKS, others);
    }

    private static void putLongHire(Rate rate, Map<String, String> cells) {
        putUnlessEmpty(
                cells,
                RateColumns.LONG_HIRE,
                rate.terms().longHire().stream()
                        .map(each -> (each.fromDays() == 1 ? "1 day: " : each.fromDays() + " days: ")
                                + each.percent().value().toPlainString() + " %")
                        .toList());
    }

    private static void putUnlessEmpty(Map<String, String> cells, String pointer, List<String> lines) {
        if (!lines.isEmpty()) {
            RateColumns.TERMS.stream()
                    .filter(field -> field.pointer().equals(pointer))
                    .forEach(field -> cells.put(field.name(), lines.stream().collect(Collectors.joining("\n"))));
        }
    }

    private static void putMarks(Rate rate, Map<String, String> cells) {
        List<RentalTerms.AddOn> all = rate.terms().addOns();
        for (int at = 0; at < all.size(); at++) {
            String name = all.get(at).name();
            if (rate.marks().containsKey(name)) {
                cells.put("add-on " + (at + 1) + " is", rate.mark(name).word());
            }
        }
    }
}
