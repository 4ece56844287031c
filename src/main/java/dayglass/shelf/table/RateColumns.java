package dayglass.shelf.table;

import static dayglass.shelf.table.TableField.Form.COVERS;
import static dayglass.shelf.table.TableField.Form.DECIMAL;
import static dayglass.shelf.table.TableField.Form.LINES;
import static dayglass.shelf.table.TableField.Form.SPANS;
import static dayglass.shelf.table.TableField.Form.TEXT;
import static dayglass.shelf.table.TableField.Form.WHOLE;
import static dayglass.shelf.table.TableField.Form.WORD;

import dayglass.cost.rental.RentalTerms.Block;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The columns of a table of rates. Three kinds of pointers are not those of the JSON: blocks are named by their days
 * and weekday, add-ons by the number in their heading, and what a rate is for by names.
 */
final class RateColumns {
    static final String BLOCKS = "/blocks";
    static final String OTHER_BLOCKS = "/otherBlocks";
    static final String LONG_HIRE = "/longHire";
    static final String ADD_ONS = "/addOns";
    static final String MAKER = "/lets/maker";
    static final String MODEL = "/lets/model";
    static final String SET = "/lets/set";
    static final String UNIT = "/lets/unit";
    /** The weekday of a block that begins on any. */
    static final String ANY_DAY = "ANY";

    private static final Pattern BLOCK = Pattern.compile("([1-9][0-9]{0,2})days?(?:from([a-z]+))?");
    private static final Pattern ADD_ON = Pattern.compile("addon([1-9][0-9]?)(|percent|of|is)");

    /** Before the blocks. */
    static final List<TableField> FIRST = List.of(
            field("id", "/id", TEXT, "rate", "code"),
            field("maker", MAKER, TEXT, "manufacturer", "make"),
            field("model", MODEL, TEXT, "model name", "lens"),
            field("set", SET, TEXT, "set name"),
            field("unit", UNIT, TEXT, "tag", "unit tag"),
            field("serves", "/covers", COVERS, "covers", "slots", "slot"),
            field("copies", "/copies", WHOLE));

    /** The blocks of the trade; the weekend is three days from a Friday. */
    static final List<TableField> USUAL_BLOCKS = List.of(
            field("day", block(1, ANY_DAY), DECIMAL, "day rate", "daily"),
            field("week", block(7, ANY_DAY), DECIMAL, "week rate", "weekly"),
            field("four weeks", block(28, ANY_DAY), DECIMAL, "4 weeks"),
            field("weekend", block(3, DayOfWeek.FRIDAY.name()), DECIMAL));

    /** Between the blocks and the add-ons. */
    static final List<TableField> TERMS = List.of(
            field("other blocks", OTHER_BLOCKS, LINES),
            field("extra day after", "/extraDay/afterDays", WHOLE),
            field("extra day", "/extraDay/price", DECIMAL),
            field("factor prep", "/dayFactors/prep", DECIMAL),
            field("factor shoot", "/dayFactors/shoot", DECIMAL),
            field("factor dark", "/dayFactors/dark", DECIMAL),
            field("factor travel", "/dayFactors/travel", DECIMAL),
            field("factor wrap", "/dayFactors/wrap", DECIMAL),
            field("long hire", LONG_HIRE, LINES, "long-hire discount"),
            field("minimum", "/minimumCharge", DECIMAL, "minimum charge"),
            field("trip", "/perTrip", DECIMAL, "per trip"));

    /** After the add-ons. */
    static final List<TableField> LAST = List.of(field("available", "/available", SPANS));

    private RateColumns() {}

    private static TableField field(String name, String pointer, TableField.Form form, String... alsoCalled) {
        return new TableField(name, pointer, form, List.of(alsoCalled));
    }

    /** What a column of this heading holds; capitals, spaces and signs do not matter. */
    static Optional<TableField> named(String heading) {
        String sound = ShelfImport.sound(heading);
        return Stream.of(FIRST, USUAL_BLOCKS, TERMS, LAST)
                .flatMap(List::stream)
                .filter(field -> field.isHeaded(heading))
                .findFirst()
                .or(() -> blockSounding(sound))
                .or(() -> addOnSounding(sound));
    }

    private static Optional<TableField> blockSounding(String sound) {
        Matcher block = BLOCK.matcher(sound);
        return block.matches()
                ? weekday(Optional.ofNullable(block.group(2)))
                        .map(day -> blockField(Integer.parseInt(block.group(1)), day))
                : Optional.empty();
    }

    private static Optional<TableField> addOnSounding(String sound) {
        Matcher addOn = ADD_ON.matcher(sound);
        return addOn.matches()
                ? addOns(Integer.parseInt(addOn.group(1))).stream()
                        .filter(field -> ShelfImport.sound(field.name()).equals(sound))
                        .findFirst()
                : Optional.empty();
    }

    /** The weekday of this name as a block's pointer has it, or none where there is no such day. */
    static Optional<String> weekday(Optional<String> name) {
        return name.isEmpty()
                ? Optional.of(ANY_DAY)
                : Stream.of(DayOfWeek.values())
                        .map(DayOfWeek::name)
                        .filter(day -> day.equals(name.get().toUpperCase(Locale.ROOT)))
                        .findFirst();
    }

    /** The column that a block stands in. */
    static TableField of(Block block) {
        return blockField(block.days(), block.startsOn().map(DayOfWeek::name).orElse(ANY_DAY));
    }

    private static TableField blockField(int days, String weekday) {
        String pointer = block(days, weekday);
        return USUAL_BLOCKS.stream()
                .filter(field -> field.pointer().equals(pointer))
                .findFirst()
                .orElseGet(() -> field(words(days, weekday), pointer, DECIMAL));
    }

    /** {@code 3 days from Friday}. */
    static String words(int days, String weekday) {
        return days
                + (days == 1 ? " day" : " days")
                + (weekday.equals(ANY_DAY)
                        ? ""
                        : " from " + DayOfWeek.valueOf(weekday).getDisplayName(TextStyle.FULL, Locale.ENGLISH));
    }

    private static String block(int days, String weekday) {
        return BLOCKS + "/" + days + "/" + weekday;
    }

    /** The columns of one add-on, numbered from 1. */
    static List<TableField> addOns(int number) {
        String name = "add-on " + number;
        String pointer = ADD_ONS + "/" + number;
        return List.of(
                field(name, pointer + "/name", TEXT),
                field(name + " percent", pointer + "/percent", DECIMAL),
                field(name + " of", pointer + "/on", LINES),
                field(name + " is", pointer + "/is", WORD));
    }
}
