package dayglass.inventory.life;

import dayglass.base.DateRange;
import dayglass.house.Change;
import dayglass.house.House;
import dayglass.inventory.booking.DaysOut;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

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
    private static final Utilisation NOT_HELD =
            new Utilisation(Optional.empty(), Collections.emptyNavigableSet(), Collections.emptyNavigableSet());

    /** Counts from the day on which it came to today. */
    static Utilisation since(LocalDate came, UnitRecords records, House house, Instant now) {
        LocalDate today = day(now, house.zone());
        LocalDate last = records.unit()
                .departure()
                .map(gone -> gone.on().minusDays(1))
                .filter(today::isAfter)
                .orElse(today);
        if (last.isBefore(came)) {
            return NOT_HELD;
        }
        DateRange held = DateRange.inclusive(came, last);
        NavigableSet<LocalDate> out = new TreeSet<>();
        NavigableSet<LocalDate> bench = new TreeSet<>();
        records.occupations().forEach(each -> {
            Occupation of = each.facts();
            if (of.handling().wentOut().isPresent()) {
                DaysOut.of(of, house, now).flatMap(held::within).ifPresent(days -> addTo(out, days));
            } else if (of.kind() == Kind.BENCH && !of.cancelled()) {
                LocalDate begun = day(of.stay().out(), house.zone());
                DateRange.inclusive(begun, day(of.stay().back().minusNanos(1), house.zone()))
                        .within(held)
                        .ifPresent(days -> addTo(bench, days));
            }
        });
        bench.removeAll(out);
        return new Utilisation(Optional.of(held), out, bench);
    }

    private static void addTo(NavigableSet<LocalDate> all, DateRange days) {
        for (LocalDate day = days.from(); day.isBefore(days.until()); day = day.plusDays(1)) {
            all.add(day);
        }
    }

    /** The same counted from a later day on. */
    Utilisation from(LocalDate day) {
        return held.filter(range -> range.from().isBefore(day)).isEmpty()
                ? this
                : new Utilisation(
                        held.filter(range -> day.isBefore(range.until()))
                                .map(range -> new DateRange(day, range.until())),
                        new TreeSet<>(out.tailSet(day, true)),
                        new TreeSet<>(bench.tailSet(day, true)));
    }

    /** When the house came to have it: as the unit says, else the first that is known of it. */
    static Optional<LocalDate> came(UnitRecords records, House house) {
        return records.unit()
                .heldFrom()
                .or(() -> known(records).min(Instant::compareTo).map(at -> day(at, house.zone())));
    }

    private static Stream<Instant> known(UnitRecords records) {
        return Stream.of(
                        records.entered().stream().map(Change::madeAt),
                        records.notes().stream().map(note -> note.facts().notedAt()),
                        records.occupations().stream()
                                .map(each -> each.facts().record().at()),
                        records.occupations().stream()
                                .map(each -> each.facts().stay().out()))
                .flatMap(moments -> moments);
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
