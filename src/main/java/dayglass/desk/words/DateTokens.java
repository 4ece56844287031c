package dayglass.desk.words;

import dayglass.base.DateRange;
import dayglass.cost.DayUse;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The words of one part, taken from the front; what cannot be taken is left where it is. */
final class DateTokens {
    private static final int SHORTEST_NAME = 3;
    private static final int MOST_DAYS = 1_100;
    private static final int DAYS_A_WEEK = 7;
    private static final Map<String, DayUse> USES = Map.of(
            "prep", DayUse.PREP,
            "test", DayUse.PREP,
            "tests", DayUse.PREP,
            "shoot", DayUse.SHOOT,
            "dark", DayUse.DARK,
            "off", DayUse.DARK,
            "travel", DayUse.TRAVEL,
            "wrap", DayUse.WRAP);

    private final List<String> words;
    private int at;

    private DateTokens(List<String> words) {
        this.words = words;
    }

    /** Dashes between days are read as {@code to}; {@code 12th} is 12, and {@code a week} is one. */
    static DateTokens of(String part) {
        String spaced = part.replace('\u2013', '-')
                .replaceAll("(?<![\\d-])(\\d{1,2})(?:st|nd|rd|th)?\\s*-\\s*(?=\\d{1,2}(?![\\d-]))", "$1 to ")
                .replaceAll("\\s-\\s", " to ")
                .replaceAll("\\b(\\d{1,2})(?:st|nd|rd|th)\\b", "$1")
                .replaceAll("\\b(?:a|one)\\s+(?=day\\b|week\\b)", "1 ")
                .strip();
        return new DateTokens(spaced.isEmpty() ? List.of() : Arrays.asList(spaced.split("\\s+")));
    }

    boolean more() {
        return at < words.size();
    }

    Optional<String> next() {
        return more() ? Optional.of(words.get(at)) : Optional.empty();
    }

    boolean take(String word) {
        boolean there = next().filter(word::equals).isPresent();
        at += there ? 1 : 0;
        return there;
    }

    Optional<DayUse> use() {
        Optional<DayUse> use = next().map(USES::get);
        at += use.isPresent() ? 1 : 0;
        return use;
    }

    /** {@code 3 days}, {@code 2 weeks}: in days. */
    Optional<Integer> length() {
        OptionalInt number = number(0);
        if (number.isEmpty() || at + 1 >= words.size()) {
            return Optional.empty();
        }
        String unit = words.get(at + 1);
        int each = unit.equals("day") || unit.equals("days") ? 1 : 0;
        each = unit.equals("week") || unit.equals("weeks") ? DAYS_A_WEEK : each;
        int days = number.getAsInt() * each;
        if (days < 1 || days > MOST_DAYS) {
            return Optional.empty();
        }
        at += 2;
        return Optional.of(days);
    }

    /** {@code this week}, from today on, and {@code next week}, from its Monday. */
    Optional<DateRange> week(LocalDate today) {
        boolean isWeek = at + 1 < words.size() && words.get(at + 1).equals("week");
        LocalDate nextMonday = today.with(TemporalAdjusters.next(DayOfWeek.MONDAY));
        if (isWeek && take("this")) {
            at++;
            return Optional.of(new DateRange(today, nextMonday));
        }
        if (isWeek && take("next")) {
            at++;
            return Optional.of(new DateRange(nextMonday, nextMonday.plusDays(DAYS_A_WEEK)));
        }
        return Optional.empty();
    }

    /** {@code 12 to 16 apr}: both in the month that is said once. */
    Optional<DateRange> daysOfOneMonth(LocalDate today) {
        OptionalInt first = number(0);
        if (first.isEmpty()
                || at + 1 >= words.size()
                || !words.get(at + 1).equals("to")
                || number(2).isEmpty()) {
            return Optional.empty();
        }
        int before = at;
        at += 2;
        Optional<LocalDate> last = point(today);
        Optional<DateRange> dates = last.filter(day -> day.getDayOfMonth() >= first.getAsInt() && first.getAsInt() > 0)
                .map(day -> DateRange.inclusive(day.withDayOfMonth(first.getAsInt()), day));
        at = dates.isPresent() ? at : before;
        return dates;
    }

    /** One day, counted from another. */
    Optional<LocalDate> point(LocalDate from) {
        if (take("today")) {
            return Optional.of(from);
        }
        if (take("tomorrow")) {
            return Optional.of(from.plusDays(1));
        }
        boolean next = take("next");
        Optional<DayOfWeek> weekday = next().flatMap(word -> named(word, DayOfWeek.values()));
        if (weekday.isPresent()) {
            at++;
            LocalDate start = next ? from.with(TemporalAdjusters.next(DayOfWeek.MONDAY)) : from;
            return Optional.of(start.with(TemporalAdjusters.nextOrSame(weekday.get())));
        }
        return next ? Optional.empty() : iso().or(() -> dayAndMonth(from));
    }

    private Optional<LocalDate> iso() {
        try {
            Optional<LocalDate> date =
                    next().filter(word -> word.length() == 10).map(LocalDate::parse);
            at += date.isPresent() ? 1 : 0;
            return date;
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    /** {@code 12 apr}, {@code apr 12}, each perhaps with a year. */
    private Optional<LocalDate> dayAndMonth(LocalDate from) {
        if (at + 1 >= words.size()) {
            return Optional.empty();
        }
        boolean dayFirst = number(0).isPresent();
        OptionalInt day = number(dayFirst ? 0 : 1);
        Optional<Month> month = named(words.get(at + (dayFirst ? 1 : 0)), Month.values());
        if (day.isEmpty() || month.isEmpty()) {
            return Optional.empty();
        }
        boolean hasYear = at + 2 < words.size() && words.get(at + 2).matches("20\\d\\d");
        Optional<LocalDate> date = hasYear
                ? date(Integer.parseInt(words.get(at + 2)), month.get(), day.getAsInt())
                : nextOfThatName(from, month.get(), day.getAsInt());
        at += date.isPresent() ? (hasYear ? 3 : 2) : 0;
        return date;
    }

    /** The 29th of February may be years away. */
    private static Optional<LocalDate> nextOfThatName(LocalDate from, Month month, int day) {
        for (int year = from.getYear(); year <= from.getYear() + 8; year++) {
            Optional<LocalDate> date = date(year, month, day).filter(found -> !found.isBefore(from));
            if (date.isPresent()) {
                return date;
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> date(int year, Month month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private OptionalInt number(int ahead) {
        return at + ahead < words.size() && words.get(at + ahead).matches("\\d{1,4}")
                ? OptionalInt.of(Integer.parseInt(words.get(at + ahead)))
                : OptionalInt.empty();
    }

    /** A name by its first three letters or more. */
    private static <E extends Enum<E>> Optional<E> named(String word, E[] names) {
        String plain = word.endsWith(".") ? word.substring(0, word.length() - 1) : word;
        return plain.length() < SHORTEST_NAME
                ? Optional.empty()
                : Arrays.stream(names)
                        .filter(each -> each.name().toLowerCase(Locale.ROOT).startsWith(plain))
                        .findFirst();
    }
}
