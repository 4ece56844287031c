package dayglass.books.gear;

import dayglass.base.Money;
import dayglass.books.entry.Posted;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is posted for gear and was not taken back.
 *
 * @param lines in order
 */
public record GearEntries(Money price, List<Line> lines) {
    public GearEntries {
        lines = List.copyOf(lines);
    }

    /** What an entry is for. */
    public enum Deed {
        DEPRECIATION,
        LETTING,
        SERVICE,
        DISPOSAL;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Deed of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    /** Where what it earns or costs is known. */
    public enum Origin {
        RENTAL(Deed.LETTING),
        BENCH(Deed.SERVICE);

        private final Deed deed;

        Origin(Deed deed) {
            this.deed = deed;
        }

        /** What an entry that comes from there is for. */
        public Deed deed() {
            return deed;
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Origin of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    /**
     * What an entry was brought in from.
     *
     * @param number of the rental or the bench visit
     */
    public record Source(Origin origin, long number) {}

    /**
     * An entry of gear.
     *
     * @param source empty where it was entered by hand or worked out
     */
    public record Line(Deed deed, Optional<Source> source, Posted posted) {}

    /** The lines that were brought in, by where from. */
    Map<Source, List<Line>> broughtIn() {
        Map<Source, List<Line>> by = new LinkedHashMap<>();
        lines.forEach(line -> line.source()
                .ifPresent(source ->
                        by.computeIfAbsent(source, each -> new ArrayList<>()).add(line)));
        return by;
    }

    /** The sum of the entries of a deed; income is below zero, as in the books. */
    public Money sum(Deed deed) {
        return lines.stream()
                .filter(line -> line.deed() == deed)
                .map(line -> line.posted().entry().amounts().baseNet())
                .reduce(Money.zero(price.currency()), Money::plus);
    }

    /** The price less what is written off; nothing once it is gone. */
    public Money bookValue() {
        return gone() ? Money.zero(price.currency()) : price.minus(sum(Deed.DEPRECIATION));
    }

    public boolean gone() {
        return lines.stream().anyMatch(line -> line.deed() == Deed.DISPOSAL);
    }

    /** The last day of service that is written off. */
    Optional<LocalDate> through() {
        return lines.stream()
                .filter(line -> line.deed() == Deed.DEPRECIATION)
                .map(line -> line.posted().entry().service().lastDay())
                .max(LocalDate::compareTo);
    }
}
