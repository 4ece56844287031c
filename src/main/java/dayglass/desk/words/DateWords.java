package dayglass.desk.words;

import dayglass.base.DateRange;
import dayglass.base.Outcome;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads the days of a rental in the words that people use on the phone: {@code tue to next fri}, {@code 3 days from 12
 * apr}, {@code prep mon, shoot tue to fri, dark weekends}. Parts are parted by commas; a part may begin with the use of
 * its days and is for shooting otherwise. A part that is dark takes its days out of the others.
 *
 * <p>A weekday is the first one from the day on that is talked of: from today where a part begins, from its first day
 * where it ends. {@code next fri} is the Friday of the week after that day's, weeks beginning on Monday (ISO 8601). A
 * date without a year is the next one of that name.
 */
public final class DateWords {
    private static final String FIELD = "/dates";
    private static final int LONGEST = 300;

    private DateWords() {}

    private record Part(DayUse use, Optional<DateRange> dates, boolean weekends) {}

    /**
     * The days that the words say.
     *
     * @param today what the words are counted from
     * @return a fault at {@code /dates} where they cannot be read
     */
    public static Outcome<Schedule> read(String text, LocalDate today) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.isEmpty()) {
            return faulty("say the days, such as \"tue to next fri\" or \"3 days from 12 apr\"");
        }
        if (plain.length() > LONGEST) {
            return faulty("is too long: say the days in at most " + LONGEST + " characters");
        }
        List<Part> parts = new ArrayList<>();
        LocalDate from = today;
        for (String words : plain.split(",", -1)) {
            DateTokens tokens = DateTokens.of(words);
            Optional<Part> part = part(tokens, from);
            if (part.isEmpty() || tokens.more()) {
                return faulty("\"" + words.strip() + "\" cannot be read"
                        + tokens.next().map(word -> " from \"" + word + "\" on").orElse("")
                        + ": say it like \"tue to next fri\", \"3 days from 12 apr\", \"12 to 16 apr\" or"
                        + " \"2027-04-12 to 2027-04-16\"");
            }
            parts.add(part.get());
            from = part.get().dates().map(DateRange::from).orElse(from);
        }
        return schedule(parts);
    }

    /** Words that are read as the same days whatever today is: dates of ISO 8601, with the use where it is not shooting. */
    public static String say(Schedule schedule) {
        return schedule.spans().stream()
                .filter(span -> span.use() != DayUse.DARK)
                .map(DateWords::said)
                .collect(Collectors.joining(", "));
    }

    private static String said(Schedule.Span span) {
        DateRange dates = span.dates();
        String use = span.use() == DayUse.SHOOT ? "" : span.use().word() + " ";
        return use + dates.from() + (dates.days() == 1 ? "" : " to " + dates.lastDay());
    }

    private static <T> Outcome<T> faulty(String message) {
        return Outcome.faulty(FIELD, message);
    }

    private static Outcome<Schedule> schedule(List<Part> parts) {
        List<Schedule.Span> used = new ArrayList<>();
        for (Part part : parts) {
            if (part.use() != DayUse.DARK && part.dates().isPresent()) {
                DateRange dates = part.dates().get();
                if (used.stream().anyMatch(span -> span.dates().overlaps(dates))) {
                    return faulty("two parts share a day: say each day once");
                }
                used.add(new Schedule.Span(dates, part.use()));
            }
        }
        if (used.isEmpty()) {
            return faulty("no day of use is said: add one, such as \"shoot tue to fri\"");
        }
        LocalDate first = used.stream()
                .map(span -> span.dates().from())
                .min(LocalDate::compareTo)
                .orElseThrow();
        LocalDate until = used.stream()
                .map(span -> span.dates().until())
                .max(LocalDate::compareTo)
                .orElseThrow();
        if (ChronoUnit.DAYS.between(first, until) > Schedule.MOST_DAYS) {
            return faulty("is longer than " + Schedule.MOST_DAYS + " days");
        }
        List<Schedule.Span> lit = new ArrayList<>();
        for (Schedule.Span span : used) {
            lit.addAll(runs(span, parts));
        }
        return lit.isEmpty() ? faulty("every day of it is dark") : Outcome.done(new Schedule(lit));
    }

    /** The days of a span that no dark part takes out, as runs. */
    private static List<Schedule.Span> runs(Schedule.Span span, List<Part> parts) {
        List<Schedule.Span> runs = new ArrayList<>();
        Optional<LocalDate> start = Optional.empty();
        for (LocalDate day = span.dates().from(); !day.isAfter(span.dates().until()); day = day.plusDays(1)) {
            boolean serves = day.isBefore(span.dates().until()) && !dark(day, parts);
            if (serves && start.isEmpty()) {
                start = Optional.of(day);
            } else if (!serves && start.isPresent()) {
                runs.add(new Schedule.Span(new DateRange(start.get(), day), span.use()));
                start = Optional.empty();
            }
        }
        return runs;
    }

    private static boolean dark(LocalDate day, List<Part> parts) {
        boolean weekend = day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) > 0;
        return parts.stream()
                .filter(part -> part.use() == DayUse.DARK)
                .anyMatch(part -> part.dates().map(dates -> dates.contains(day)).orElse(part.weekends() && weekend));
    }

    private static Optional<Part> part(DateTokens tokens, LocalDate today) {
        DayUse use = tokens.use().orElse(DayUse.SHOOT);
        if (use == DayUse.DARK && tokens.take("weekends")) {
            return Optional.of(new Part(use, Optional.empty(), true));
        }
        return range(tokens, today).map(dates -> new Part(use, Optional.of(dates), false));
    }

    private static Optional<DateRange> range(DateTokens tokens, LocalDate today) {
        Optional<Integer> length = tokens.length();
        if (length.isPresent()) {
            boolean said = tokens.take("from") || tokens.take("starting");
            Optional<LocalDate> first = said || tokens.more() ? tokens.point(today) : Optional.of(today);
            return first.map(day -> new DateRange(day, day.plusDays(length.get())));
        }
        if (tokens.take("until") || tokens.take("till")) {
            return tokens.point(today).flatMap(last -> inclusive(today, last));
        }
        Optional<DateRange> week = tokens.week(today);
        if (week.isPresent()) {
            return week;
        }
        tokens.take("from");
        Optional<DateRange> inOneMonth = tokens.daysOfOneMonth(today);
        if (inOneMonth.isPresent()) {
            return inOneMonth;
        }
        return tokens.point(today).flatMap(first -> ended(tokens, first));
    }

    private static Optional<DateRange> ended(DateTokens tokens, LocalDate first) {
        if (tokens.take("for")) {
            return tokens.length().map(days -> new DateRange(first, first.plusDays(days)));
        }
        if (tokens.take("to") || tokens.take("till") || tokens.take("until") || tokens.take("through")) {
            return tokens.point(first).flatMap(last -> inclusive(first, last));
        }
        return Optional.of(DateRange.inclusive(first, first));
    }

    private static Optional<DateRange> inclusive(LocalDate first, LocalDate last) {
        return last.isBefore(first) ? Optional.empty() : Optional.of(DateRange.inclusive(first, last));
    }
}
