package dayglass.wire;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Readers of plain values and of lists of them. */
public final class Readers {
    /** The longest name or id, in code points. */
    public static final int MOST_NAME_CHARACTERS = 200;

    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final int MOST_DIGITS = 9;

    private static final String HALF = "holds half of a surrogate pair: write the whole character or remove it";

    private Readers() {}

    /** Text of any kind. */
    public static Reader<String> anyText() {
        return (json, place) -> json instanceof Json.Text text
                ? Read.good(text.value())
                : place.fault("must be text in double quotes, not " + json.kind());
    }

    /** Text of any kind and length without lone surrogates, which would be lost as it is turned into bytes. */
    public static Reader<String> wholeText() {
        return (json, place) -> {
            Read<String> text = anyText().read(json, place);
            return text.isGood() && hasLoneSurrogate(text.get()) ? place.fault(HALF) : text;
        };
    }

    private static boolean hasLoneSurrogate(String text) {
        return text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE);
    }

    /** A name or an id: not blank, at most 200 characters, none of them a control character or half a pair. */
    public static Reader<String> name() {
        return text(MOST_NAME_CHARACTERS);
    }

    /** Text that is not blank, of at most so many code points, without control characters or lone surrogates. */
    public static Reader<String> text(int mostCharacters) {
        return (json, place) -> {
            Read<String> text = anyText().read(json, place);
            return text.isGood() ? checkText(text.get(), mostCharacters, place) : text;
        };
    }

    /** Text of several lines, of at most so many code points; it may be empty. */
    public static Reader<String> prose(int mostCharacters) {
        return (json, place) -> {
            Read<String> text = anyText().read(json, place);
            if (!text.isGood() || text.get().isEmpty()) {
                return text;
            }
            Read<String> oneLine = checkText(text.get().replaceAll("[\\r\\n\\t]", " "), mostCharacters, place);
            return oneLine.isGood() ? text : oneLine;
        };
    }

    /** What {@link #text} checks, for text that is not a value but a member's name. */
    public static Read<String> checkText(String text, int mostCharacters, Place place) {
        if (text.codePoints().allMatch(c -> Character.isWhitespace(c) || Character.isSpaceChar(c))) {
            return place.fault("is blank: write something");
        }
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.CONTROL)) {
            return place.fault("holds a control character, such as a line end or a tab: remove it");
        }
        if (hasLoneSurrogate(text)) {
            return place.fault(HALF);
        }
        int characters = text.codePointCount(0, text.length());
        if (characters > mostCharacters) {
            return place.fault("has " + characters + " characters: shorten it to at most " + mostCharacters);
        }
        return Read.good(text);
    }

    /** A JSON whole number, without point or exponent, between two bounds that belong to it. */
    public static Reader<Integer> whole(int least, int most) {
        String range = "must be a whole number from " + least + " to " + most + ", such as " + Math.max(least, 1);
        return (json, place) -> {
            if (!(json instanceof Json.Num number)) {
                return place.fault(range + " without quotes, not " + json.kind(), range);
            }
            String literal = number.literal();
            if (literal.indexOf('.') >= 0 || literal.indexOf('e') >= 0 || literal.indexOf('E') >= 0) {
                return place.fault(range + ", without point or exponent", range);
            }
            if (literal.length() > MOST_DIGITS) {
                return place.fault(range);
            }
            int value = Integer.parseInt(literal);
            return value < least || value > most ? place.fault(range + ", not " + value) : Read.good(value);
        };
    }

    /** A day of the calendar, {@code 2027-04-05}; years 1 to 9999. */
    public static Reader<LocalDate> date() {
        return (json, place) -> {
            Read<String> text = anyText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            Matcher parts = DATE.matcher(text.get());
            if (!parts.matches() || parts.group(1).equals("0000")) {
                return place.fault("must be a date as year-month-day, such as 2027-04-05");
            }
            try {
                return Read.good(LocalDate.of(
                        Integer.parseInt(parts.group(1)),
                        Integer.parseInt(parts.group(2)),
                        Integer.parseInt(parts.group(3))));
            } catch (DateTimeException e) {
                return place.fault(text.get() + " is no day of the calendar: check month and day");
            }
        };
    }

    /** {@code true} or {@code false}. */
    public static Reader<Boolean> yesOrNo() {
        return (json, place) -> json instanceof Json.Bool bool
                ? Read.good(bool.value())
                : place.fault("must be true or false without quotes, not " + json.kind());
    }

    /** A weekday by its English name in capitals. */
    public static Reader<DayOfWeek> weekday() {
        Map<String, DayOfWeek> days = new LinkedHashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            days.put(day.name(), day);
        }
        return word(days);
    }

    /** One of some words. */
    public static <T> Reader<T> word(Map<String, T> words) {
        Map<String, T> known = new LinkedHashMap<>(words);
        return (json, place) -> {
            Read<String> text = anyText().read(json, place);
            if (!text.isGood()) {
                return Read.bad();
            }
            T value = known.get(text.get());
            return value == null
                    ? place.fault("must be one of " + String.join(", ", known.keySet()))
                    : Read.good(value);
        };
    }

    /** An object whose members are whatever the writer names, each with a value of one kind. */
    public static <T> Reader<Map<String, T>> words(Reader<T> value) {
        return (json, place) -> {
            if (!(json instanceof Json.Obj object)) {
                return place.fault("must be an object in braces, not " + json.kind());
            }
            Map<String, T> words = new LinkedHashMap<>();
            object.members().forEach((name, each) -> {
                Place at = place.member(name);
                Read<T> read = object.repeated().contains(name)
                        ? at.fault("is given twice: keep one")
                        : checkText(name, MOST_NAME_CHARACTERS, at).isGood() ? value.read(each, at) : Read.bad();
                read.found().ifPresent(good -> words.put(name, good));
            });
            return words.size() == object.members().size() ? Read.good(words) : Read.bad();
        };
    }

    /** One of some words, as it stands. */
    public static Reader<String> oneOf(List<String> words) {
        Map<String, String> known = new LinkedHashMap<>();
        words.forEach(each -> known.put(each, each));
        return word(known);
    }

    /** A list that may be empty. Every entry is read, so that all faults are found. */
    public static <T> Reader<List<T>> list(Reader<T> entry) {
        return Part.list(Part.whole(entry)).map(Part::goodValues);
    }

    /** Words of which none stands twice. */
    public static <T> Reader<List<T>> distinct(Reader<T> entry) {
        return (json, place) -> {
            Read<List<Part<T, T>>> parts = Part.list(Part.whole(entry)).read(json, place);
            parts.found().ifPresent(list -> Part.requireDistinct(list, Part::place, "stands in this list already"));
            return parts.map(Part::goodValues);
        };
    }

    /** Refuses an empty list; goes before a reader of lists. */
    public static <T> Reader<T> notEmpty(Reader<T> reader) {
        return (json, place) -> {
            boolean emptyList = json instanceof Json.Arr list && list.entries().isEmpty();
            boolean emptyObject =
                    json instanceof Json.Obj object && object.members().isEmpty();
            boolean empty = emptyList || emptyObject;
            return empty
                    ? place.fault("is empty: it needs at least one entry", "fill in at least one")
                    : reader.read(json, place);
        };
    }
}
