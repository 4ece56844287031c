package dayglass.shelf.table;

import dayglass.base.Fault;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One row of a table of rates as the JSON of REST, which remembers from which column each value came. */
final class RateRow {
    private static final Pattern BLOCK =
            Pattern.compile("([1-9][0-9]{0,3})\\s+days?(?:\\s+from\\s+(?:an?\\s+)?(\\p{L}+))?\\s*:\\s*(\\S+)");
    private static final Pattern DISCOUNT =
            Pattern.compile("(?:from\\s+)?([1-9][0-9]{0,4})\\s+days?\\s*:\\s*([^\\s%]+)\\s*%?");

    private final LetsCells things;
    private final JsonTree tree = new JsonTree();
    /** The number of the column that a value stands in, from 1, by the value's pointer. */
    private final Map<String, Integer> columns = new LinkedHashMap<>();

    private final List<Wrong> wrong = new ArrayList<>();
    private final Map<String, Cell> lets = new LinkedHashMap<>();
    private final SortedMap<String, Map<String, Cell>> addOns = new TreeMap<>();
    private final List<Cell> otherBlocks = new ArrayList<>();
    private int blocks;

    /**
     * Something wrong.
     *
     * @param column from 1; 0 where the table may have no such column
     * @param heading under which it stands or would stand
     */
    record Wrong(int column, String heading, String message) {}

    private record Cell(int column, String text, TableField field) {}

    RateRow(LetsCells things) {
        this.things = things;
    }

    /** Takes a cell; one with nothing in it says nothing. */
    void take(int column, TableField field, String text) {
        if (text.isBlank()) {
            return;
        }
        Cell cell = new Cell(column, text, field);
        String[] steps = field.pointer().split("/", -1);
        switch ("/" + steps[1]) {
            case RateColumns.BLOCKS -> putBlock(cell, steps[2], steps[3], Json.text(text.strip()));
            case RateColumns.OTHER_BLOCKS -> otherBlocks.add(cell);
            case RateColumns.LONG_HIRE -> putDiscounts(cell);
            case RateColumns.ADD_ONS ->
                addOns.computeIfAbsent(String.format("%2s", steps[2]), number -> new TreeMap<>())
                        .put(steps[3], cell);
            case "/lets" -> lets.put(field.pointer(), cell);
            default -> put(field.pointer(), field.json(text), column);
        }
    }

    private void put(String pointer, Json value, int column) {
        tree.put(pointer, value);
        columns.put(pointer, column);
    }

    private void putBlock(Cell cell, String days, String weekday, Json price) {
        String pointer = RateColumns.BLOCKS + "/" + blocks++;
        put(pointer + "/days", new Json.Num(days), cell.column());
        put(pointer + "/price", price, cell.column());
        if (!weekday.equals(RateColumns.ANY_DAY)) {
            put(pointer + "/startsOn", Json.text(weekday), cell.column());
        }
    }

    private void putOtherBlocks(Cell cell) {
        for (String line : TableField.lines(cell.text())) {
            Matcher block = BLOCK.matcher(line.strip());
            Optional<String> weekday =
                    block.matches() ? RateColumns.weekday(Optional.ofNullable(block.group(2))) : Optional.empty();
            if (weekday.isPresent()) {
                putBlock(cell, block.group(1), weekday.get(), Json.text(block.group(3)));
            } else {
                bad(cell, "\"" + line.strip() + "\" must be such as 3 days from Friday: 240.00, one a line");
            }
        }
    }

    private void putDiscounts(Cell cell) {
        int at = 0;
        for (String line : TableField.lines(cell.text())) {
            Matcher discount = DISCOUNT.matcher(line.strip());
            if (discount.matches()) {
                String pointer = RateColumns.LONG_HIRE + "/" + at++;
                put(pointer + "/fromDays", new Json.Num(discount.group(1)), cell.column());
                put(pointer + "/percent", Json.text(discount.group(2)), cell.column());
            } else {
                bad(cell, "\"" + line.strip() + "\" must be such as 14 days: 10 %, one a line");
            }
        }
    }

    /** Numbered without gaps, in the order of their headings' numbers. */
    private void putAddOns() {
        int at = 0;
        Json.Members marks = Json.object();
        for (Map<String, Cell> addOn : addOns.values()) {
            String pointer = RateColumns.ADD_ONS + "/" + at++;
            Cell name = addOn.get("name");
            for (Map.Entry<String, Cell> each : addOn.entrySet()) {
                Cell cell = each.getValue();
                if (!each.getKey().equals("is")) {
                    put(pointer + "/" + each.getKey(), cell.field().json(percent(cell)), cell.column());
                } else if (name == null) {
                    bad(cell, "says what an add-on is that has no name");
                } else {
                    marks.put(name.text(), cell.text().strip());
                    columns.put("/marks/" + name.text().replace("~", "~0").replace("/", "~1"), cell.column());
                }
            }
        }
        Json.Obj marked = marks.build();
        if (!marked.members().isEmpty()) {
            tree.put("/marks", marked);
        }
    }

    private static String percent(Cell cell) {
        boolean percent = cell.field().form() == TableField.Form.DECIMAL;
        return percent ? cell.text().strip().replaceFirst("\\s*%$", "") : cell.text();
    }

    private void putLets() {
        Map<String, String> named = new LinkedHashMap<>();
        lets.forEach((pointer, cell) -> named.put(pointer, cell.text()));
        LetsCells.Found found = things.read(named);
        Cell cell = lets.getOrDefault(found.pointer(), lets.values().iterator().next());
        if (!found.fault().isEmpty()) {
            bad(cell, found.fault());
        }
        // One that is not found is still for something, so that nothing is said of its having no slots.
        Lets thing = found.lets().orElse(new Lets(Lets.Kind.MODEL, 1));
        put("/lets/" + thing.kind().word(), Json.number(thing.number()), cell.column());
    }

    private void bad(Cell cell, String message) {
        wrong.add(new Wrong(cell.column(), cell.field().name(), message));
    }

    /** The rate that the cells taken say, where nothing is wrong with them. */
    Optional<Rate> rate(Reader<Rate> reader) {
        otherBlocks.forEach(this::putOtherBlocks);
        putAddOns();
        if (!lets.isEmpty()) {
            putLets();
        }
        Checked<Rate> checked = reader.readAt("", tree.json(), Listener.PERSON);
        return checked.fold(rate -> wrong.isEmpty() ? Optional.of(rate) : Optional.empty(), faults -> {
            faults.forEach(fault -> wrong.add(placed(fault)));
            return Optional.empty();
        });
    }

    /** What is wrong, once the rate was asked for. */
    List<Wrong> wrong() {
        return List.copyOf(wrong);
    }

    /** At the column of the value at the fault's pointer, else of one below it, else of the nearest above. */
    private Wrong placed(Fault fault) {
        for (String at = fault.pointer(); !at.isEmpty(); at = at.substring(0, at.lastIndexOf('/'))) {
            String pointer = at;
            Optional<Integer> column = Optional.ofNullable(columns.get(pointer))
                    .or(() -> columns.entrySet().stream()
                            .filter(each -> each.getKey().startsWith(pointer + "/"))
                            .map(Map.Entry::getValue)
                            .findFirst());
            if (column.isPresent()) {
                return new Wrong(column.get(), "", fault.message());
            }
        }
        return new Wrong(0, missing(fault.pointer()), fault.message());
    }

    /** The heading under which what is missing would stand. */
    private static String missing(String pointer) {
        return switch (pointer) {
            case "/blocks" -> "day";
            case "/covers" -> "serves";
            default -> pointer.substring(1);
        };
    }
}
