package dayglass.web.page.picture;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.plan.Question;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** How dates, amounts and counts are written on a page. English whatever the machine's locale. */
public final class Words {
    private static final DateTimeFormatter LONG_DATE = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final int GROUP = 3;
    private static final char NARROW_SPACE = '\u202f';
    private static final char MINUS = '\u2212';

    private Words() {}

    /** A moment on the house's clock, without its weekday. */
    public static String moment(Instant moment, ZoneId zone) {
        return MOMENT.format(moment.atZone(zone));
    }

    /** {@code 5 Apr 2027}. */
    public static String day(LocalDate date) {
        return shortDate(date) + " " + date.getYear();
    }

    /** {@code Mon 5 Apr 2027}. */
    public static String date(LocalDate date) {
        return LONG_DATE.format(date);
    }

    /** {@code 5 Apr}. */
    public static String shortDate(LocalDate date) {
        return SHORT_DATE.format(date);
    }

    public static String month(LocalDate date) {
        return MONTH.format(date);
    }

    public static String weekday(LocalDate date) {
        return WEEKDAY.format(date);
    }

    /** {@code 5 Apr to 14 Apr 2027}; one date alone where the range is one day. */
    public static String dates(DateRange range) {
        String last = shortDate(range.lastDay()) + " " + range.lastDay().getYear();
        if (range.days() == 1) {
            return last;
        }
        boolean sameYear = range.from().getYear() == range.lastDay().getYear();
        String first =
                shortDate(range.from()) + (sameYear ? "" : " " + range.from().getYear());
        return first + " to " + last;
    }

    public static String dates(List<DateRange> ranges) {
        return ranges.stream().map(Words::dates).collect(Collectors.joining(", "));
    }

    /** The amount with narrow spaces between its thousands and a true minus, without its currency. */
    public static String amount(Money money) {
        String plain = money.major().abs().toPlainString();
        int point = plain.indexOf('.');
        int whole = point < 0 ? plain.length() : point;
        StringBuilder grouped = new StringBuilder(plain);
        for (int at = whole - GROUP; at > 0; at -= GROUP) {
            grouped.insert(at, NARROW_SPACE);
        }
        if (money.signum() < 0) {
            grouped.insert(0, MINUS);
        }
        return grouped.toString();
    }

    /** {@link #amount} with the currency's code behind it. */
    public static String money(Money money) {
        return amount(money) + "\u00a0" + money.currency();
    }

    /** How much dearer {@code after} is than {@code before}, in words. */
    public static String difference(Money before, Money after) {
        Money difference = after.minus(before);
        if (difference.signum() == 0) {
            return "the same";
        }
        return difference.signum() > 0 ? money(difference) + " more" : money(difference.times(-1)) + " less";
    }

    public static String days(int count) {
        return count == 1 ? "1 day" : count + " days";
    }

    /** {@code 40 mm, 2 × 100 mm}, by name. */
    public static String covers(Map<String, Integer> covers) {
        return covers.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(each -> each.getValue() == 1 ? each.getKey() : each.getValue() + " × " + each.getKey())
                .collect(Collectors.joining(", "));
    }

    /** When a need asks: its dates, or the uses in the order of a production. */
    public static String when(Question.Need need) {
        if (!need.dates().isEmpty()) {
            return dates(need.dates());
        }
        return need.on().stream().sorted().map(use -> use.word()).collect(Collectors.joining(", ")) + " days";
    }
}
