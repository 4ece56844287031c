package dayglass.inventory.service;

import dayglass.base.DateRange;
import dayglass.house.House;
import dayglass.inventory.booking.DaysOut;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What a plan asks and what the unit went through: the next service follows from both and is kept nowhere, so that a
 * booking moved or a visit entered late is told at once.
 *
 * @param ofUnit what occupied it since the day of the plan, and what is ahead; more does no harm
 */
public record ServiceHistory(ServicePlan plan, List<Occupation> ofUnit) {
    public ServiceHistory {
        ofUnit = List.copyOf(ofUnit);
    }

    /** When the next service is due, by what was done and what is booked. */
    public ServiceDue due(House house, Instant now) {
        return after(lastDone(ServiceHistory::finished, house), house, now);
    }

    /** The same at a later moment, where every visit that is planned to end by then is kept. */
    public ServiceDue dueAt(Instant later, House house, Instant now) {
        Predicate<Occupation> planned = visit -> visit.kind() == Kind.BENCH
                && !visit.cancelled()
                && visit.stay().back().isAfter(now)
                && !visit.stay().back().isAfter(later);
        return after(lastDone(planned.or(ServiceHistory::finished), house), house, now);
    }

    private static boolean finished(Occupation visit) {
        return visit.kind() == Kind.BENCH
                && !visit.cancelled()
                && visit.bench().filter(BenchWork::done).isPresent();
    }

    private LocalDate lastDone(Predicate<Occupation> counts, House house) {
        return ofUnit.stream()
                .filter(counts)
                .map(visit -> visit.stay().back().atZone(house.zone()).toLocalDate())
                .reduce(plan.lastDoneOn(), (one, other) -> one.isAfter(other) ? one : other);
    }

    private ServiceDue after(LocalDate lastDone, House house, Instant now) {
        NavigableSet<LocalDate> out = new TreeSet<>();
        for (Occupation each : ofUnit) {
            DaysOut.of(each, house, now).stream()
                    .flatMap(DateRange::stream)
                    .filter(day -> day.isAfter(lastDone))
                    .forEach(out::add);
        }
        LocalDate today = now.atZone(house.zone()).toLocalDate();
        Optional<LocalDate> reached =
                plan.everyDaysOut().flatMap(days -> out.stream().skip(days - 1L).findFirst());
        return new ServiceDue(
                lastDone, out.headSet(today, true).size(), plan.everyMonths().map(lastDone::plusMonths), reached);
    }
}
