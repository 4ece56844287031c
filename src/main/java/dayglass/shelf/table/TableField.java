package dayglass.shelf.table;

import dayglass.sheet.SheetTable;
import dayglass.wire.Json;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One column of a table, which holds one value of a record's JSON.
 *
 * @param name as an export heads it
 * @param pointer of the value in the JSON
 * @param form how the value is written in a cell
 * @param alsoCalled other headings that are taken for it
 */
public record TableField(String name, String pointer, Form form, List<String> alsoCalled) {
    public TableField {
        alsoCalled = List.copyOf(alsoCalled);
    }

    /** How a value is written in a cell. */
    enum Form {
        /** As it stands, spaces and all: RFC 4180, section 2, rule 4. */
        TEXT,
        /** One of some words, or a code. */
        WORD,
        /** A decimal, with a point. */
        DECIMAL,
        WHOLE,
        /** Yes or no; true or false are understood too. */
        FLAG,
        /** A day of the calendar, {@code 2027-04-05}. */
        DAY,
        /** Several texts, one a line; semicolons part them too where there is one line only. */
        LINES,
        /** Slots with how many of each: {@code 40 mm: 1}, one a line as {@link #LINES}. */
        COVERS,
        /** Spans of days, {@code 2027-04-12 to 2027-04-30}, one a line as {@link #LINES}. */
        SPANS
    }

    private static final Pattern WHOLE_NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,30}(\\.[0-9]{1,30})?");
    private static final Pattern COUNTED = Pattern.compile("(.*\\S)\\s*:\\s*([0-9]{1,9})", Pattern.DOTALL);
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    /** The value that a cell with something in it stands for; what is wrong with it is told by the record's reader. */
    Json json(String cell) {
        return switch (form) {
            case WHOLE -> whole(cell.strip());
            case FLAG -> flag(cell.strip());
            case LINES -> Json.texts(lines(cell));
            case COVERS -> covers(cell);
            case SPANS -> Json.list(lines(cell).stream().map(TableField::span).toList());
            case TEXT -> Json.text(cell);
            case WORD, DECIMAL, DAY -> Json.text(cell.strip());
        };
    }

    /** Whether a heading stands for it, whatever its capitals and signs. */
    boolean isHeaded(String heading) {
        String sound = ShelfImport.sound(heading);
        return Stream.concat(Stream.of(name), alsoCalled.stream())
                .anyMatch(each -> ShelfImport.sound(each).equals(sound));
    }

    private static Json flag(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> new Json.Bool(true);
            case "no", "false" -> new Json.Bool(false);
            default -> Json.text(text);
        };
    }

    private static Json whole(String text) {
        return WHOLE_NUMBER.matcher(text).matches() ? new Json.Num(text) : Json.text(text);
    }

    /** The lines of a cell that have something in them; of a cell of one line the parts between its semicolons. */
    static List<String> lines(String cell) {
        boolean many = cell.indexOf('\n') >= 0 || cell.indexOf('\r') >= 0;
        return Stream.of(cell.split(many ? "\\R" : ";", -1))
                .map(line -> many ? line : line.strip())
                .filter(line -> !line.isBlank())
                .toList();
    }

    private static Json covers(String cell) {
        Json.Members covers = Json.object();
        for (String line : lines(cell)) {
            Matcher counted = COUNTED.matcher(line.strip());
            if (counted.matches()) {
                covers.put(counted.group(1), whole(counted.group(2)));
            } else {
                covers.put(line.strip(), 1);
            }
        }
        return covers.build();
    }

    private static Json span(String line) {
        String[] days = line.strip().split("\\s+to\\s+", 2);
        Json.Members span = Json.object().put("from", days[0]);
        return (days.length == 2 ? span.put("to", days[1]) : span).build();
    }

    /** The cell that a value is written as. */
    String cell(Json value) {
        if (value instanceof Json.Text text) {
            return text.value();
        }
        if (value instanceof Json.Bool flag) {
            return flag.value() ? "yes" : "no";
        }
        if (value instanceof Json.Num number) {
            return number.literal();
        }
        if (value instanceof Json.Obj covers) {
            return oneALine(covers.members().entrySet().stream()
                    .map(each -> each.getKey() + ": " + ((Json.Num) each.getValue()).literal())
                    .toList());
        }
        List<String> lines = new ArrayList<>();
        ((Json.Arr) value).entries().forEach(each -> lines.add(line(each)));
        return oneALine(lines);
    }

    private static String line(Json entry) {
        if (entry instanceof Json.Obj span) {
            return span.members().values().stream()
                    .map(day -> ((Json.Text) day).value())
                    .collect(Collectors.joining(" to "));
        }
        return ((Json.Text) entry).value();
    }

    /** A single line that would be parted at a semicolon or lose its spaces is ended, so that it is read as it is. */
    private static String oneALine(List<String> lines) {
        String joined = String.join("\n", lines);
        return lines.size() == 1 && (joined.contains(";") || !joined.equals(joined.strip())) ? joined + "\n" : joined;
    }

    /** The cell as files type it. */
    SheetTable.Cell typed(Map<String, String> cells) {
        String cell = cells.getOrDefault(name, "");
        if (cell.isEmpty()) {
            return new SheetTable.Nothing();
        }
        if (form == Form.DAY && DATE.matcher(cell).matches()) {
            return new SheetTable.Day(LocalDate.parse(cell));
        }
        boolean number = form == Form.DECIMAL || form == Form.WHOLE;
        return number && NUMBER.matcher(cell).matches()
                ? new SheetTable.PlainNumber(new BigDecimal(cell))
                : new SheetTable.Text(cell);
    }
}
