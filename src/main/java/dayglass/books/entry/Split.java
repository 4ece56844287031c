package dayglass.books.entry;

import dayglass.base.DateRange;
import dayglass.books.period.Period;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** One entry as several that add up to it to the minor unit, by largest remainder. */
public final class Split {
    private Split() {}

    /**
     * A share of an entry.
     *
     * @param weight above 0; shares are in proportion to their weights
     */
    public record Part(String costCode, String episode, BigInteger weight) {}

    /** Over codes and episodes. */
    public static List<Entry> over(Entry entry, List<Part> parts) {
        List<Amounts> amounts =
                entry.amounts().split(parts.stream().map(Part::weight).toList());
        List<Entry> split = new ArrayList<>();
        for (int at = 0; at < parts.size(); at++) {
            Part part = parts.get(at);
            split.add(entry.with(entry.kind(), amounts.get(at), entry.links())
                    .coded(new Entry.Coding(
                            part.costCode(), part.episode(), entry.coding().supplier())));
        }
        return List.copyOf(split);
    }

    /**
     * Over the periods in which it serves, by days of service: each part bears the last of its days as its date.
     *
     * @param periodOf the period that a day lies in
     */
    public static List<Entry> overPeriods(Entry entry, Function<LocalDate, Period> periodOf) {
        List<DateRange> runs = new ArrayList<>();
        LocalDate day = entry.service().from();
        while (day.isBefore(entry.service().until())) {
            LocalDate end = periodOf.apply(day).lastDay().plusDays(1);
            LocalDate until = end.isBefore(entry.service().until())
                    ? end
                    : entry.service().until();
            runs.add(new DateRange(day, until));
            day = until;
        }
        List<Amounts> amounts = entry.amounts()
                .split(runs.stream().map(run -> BigInteger.valueOf(run.days())).toList());
        List<Entry> split = new ArrayList<>();
        for (int at = 0; at < runs.size(); at++) {
            split.add(entry.with(entry.kind(), amounts.get(at), entry.links())
                    .serving(runs.get(at))
                    .on(runs.get(at).lastDay()));
        }
        return List.copyOf(split);
    }
}
