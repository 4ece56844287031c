package dayglass.inventory.life;

import dayglass.base.DateRange;
import dayglass.house.House;
import dayglass.inventory.booking.DaysOut;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * How much a unit was out, by days of the house's calendar up to today. Time utilisation is days out over days
 * available, those held without those on the bench (common practice). Only what really went out counts; a day that the
 * unit was out and on the bench both counts as out. What is a day out is the same for service plans: {@link DaysOut}. The
 * day on which it left for good is none on which it was held.
 *
 * @param held the days on which the house had it
 * @param out days out at work
 * @param bench days on the bench
 */
public record Utilisation(Optional<DateRange> held, NavigableSet<LocalDate> out, NavigableSet<LocalDate> bench) {
    private static final int PERCENT_DECIMALS = 1;
    private static final int HUNDRED = 100;

    /**
     * Counts from a day to today; a unit that came later is counted from then, one of which nobody says when it came from
     * the first record of it.
     */
    static Utilisation since(LocalDate from, UnitRecords records, House house, Instant now) {
        LocalDate today = day(now, house.zone());
        LocalDate first = came(records, house).filter(from::isBefore).orElse(from);
        LocalDate last = records.unit()
                .departure()
                .map(gone -> gone.on().minusDays(1))
                .filter(today::isAfter)
                .orElse(today);
        Optional<DateRange> held =
                last.isBefore(first) ? Optional.empty() : Optional.of(DateRange.inclusive(first, last));
        NavigableSet<LocalDate> out = new TreeSet<>();
        NavigableSet<LocalDate> bench = new TreeSet<>();
        records.occupations().forEach(each -> {
            Occupation of = each.facts();
            if (of.handling().wentOut().isPresent()) {
                DaysOut.of(of, house, now).ifPresent(days -> days.stream().forEach(out::add));
            } else if (of.kind() == Kind.BENCH && !of.cancelled()) {
                LocalDate begun = day(of.stay().out(), house.zone());
                DateRange.inclusive(begun, day(of.stay().back().minusNanos(1), house.zone())).stream()
                        .forEach(bench::add);
            }
        });
        out.removeIf(when -> held.filter(range -> range.contains(when)).isEmpty());
        bench.removeIf(when -> held.filter(range -> range.contains(when)).isEmpty());
        bench.removeAll(out);
        return new Utilisation(held, out, bench);
    }

    /** When the house came to have it: as the unit says, else the first that is known of it. */
    static Optional<LocalDate> came(UnitRecords records, House house) {
        List<Instant> known = new java.util.ArrayList<>();
        records.entered().ifPresent(change -> known.add(change.madeAt()));
        records.notes().forEach(note -> known.add(note.facts().notedAt()));
        records.occupations().forEach(each -> known.add(each.facts().record().at()));
        records.occupations().forEach(each -> known.add(each.facts().stay().out()));
        return records.unit()
                .heldFrom()
                .or(() -> known.stream().min(Instant::compareTo).map(at -> day(at, house.zone())));
    }

    private static LocalDate day(Instant at, ZoneId zone) {
        return at.atZone(zone).toLocalDate();
    }

    public int daysHeld() {
        return held.map(DateRange::days).orElse(0);
    }

    public int daysAvailable() {
        return daysHeld() - bench.size();
    }

    /** To one decimal, half up; empty where it was never available. */
    public Optional<BigDecimal> percent() {
        return daysAvailable() == 0
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf((long) out.size() * HUNDRED)
                        .divide(BigDecimal.valueOf(daysAvailable()), PERCENT_DECIMALS, RoundingMode.HALF_UP));
    }
}
