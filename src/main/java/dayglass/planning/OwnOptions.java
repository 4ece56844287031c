package dayglass.planning;

import dayglass.base.DateRange;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What the house's own shelf can give a job: units by themselves and whole sets. On the days on which a set that the
 * job considers can go out whole, its members serve in it and not by themselves, so that no unit serves twice; on
 * other days each serves alone.
 */
final class OwnOptions {
    private final OptionSources sources;
    private final DateRange horizon;
    private final String job;

    /** A unit may be asked for by itself and in its set. */
    private final Map<Unit.Id, NavigableSet<LocalDate>> freeDays = new HashMap<>();

    /** @param job by whose name bookings are made for it already */
    OwnOptions(OptionSources sources, DateRange horizon, String job) {
        this.sources = sources;
        this.horizon = horizon;
        this.job = job;
    }

    /** An option and where it comes from, in words. */
    record Named(Question.Owned option, String origin) {}

    /** The days on which a unit can serve: let serve and held by the house, healthy, and not somewhere else. */
    private NavigableSet<LocalDate> daysOf(Stored<Unit.Id, Unit> unit) {
        NavigableSet<LocalDate> days = daysOf(unit.facts(), horizon);
        days.retainAll(
                freeDays.computeIfAbsent(unit.id(), id -> sources.freeDays().of(id, horizon, job)));
        return days;
    }

    /** The windows in which a unit can serve. */
    List<DateRange> windows(Stored<Unit.Id, Unit> unit) {
        return windows(daysOf(unit), unit.facts().use(), horizon);
    }

    /** The days of the horizon on which the house lets a unit serve, while it holds the unit. */
    private static NavigableSet<LocalDate> daysOf(Unit unit, DateRange horizon) {
        NavigableSet<LocalDate> days = new TreeSet<>();
        List<DateRange> windows = unit.use().available();
        horizon.stream()
                .filter(day -> windows.isEmpty() || windows.stream().anyMatch(window -> window.contains(day)))
                .filter(day -> unit.heldFrom().filter(day::isBefore).isEmpty())
                .filter(day -> unit.heldTo().filter(day::isAfter).isEmpty())
                .forEach(days::add);
        return days;
    }

    /** The windows that say the days; where nothing but the house's own windows matters, those as they were typed. */
    private static List<DateRange> windows(NavigableSet<LocalDate> days, Unit.Use use, DateRange horizon) {
        NavigableSet<LocalDate> typed = daysOf(Unit.serving("any", use), horizon);
        return typed.equals(days) ? use.available() : runs(days);
    }

    /** How many of each slot a whole set serves. */
    static Map<String, Integer> covers(OptionSources sources, LensSet set) {
        return set.covers(members(sources, set).stream().map(Stored::facts).toList());
    }

    private static List<Stored<Unit.Id, Unit>> members(OptionSources sources, LensSet set) {
        return set.members().stream()
                .map(id -> ResolveJob.stored(sources.units(), id))
                .toList();
    }

    /**
     * The options, sets before units.
     *
     * @param wants whether the job considers an option of this id
     */
    Outcome<List<Named>> of(Job.Sources considered, Predicate<String> wants) {
        List<Named> options = new ArrayList<>();
        Map<Unit.Id, NavigableSet<LocalDate>> inSets = new HashMap<>();
        for (LensSet.Id id : considered.lensSets()) {
            LensSet set = ResolveJob.get(sources.lensSets(), id);
            if (!wants.test(set.name())) {
                continue;
            }
            Map<String, Integer> covers = covers(sources, set);
            if (covers.isEmpty()) {
                return servesNothing("set " + set.name());
            }
            NavigableSet<LocalDate> days = wholeOn(set);
            set.members().forEach(member -> inSets.put(member, days));
            if (!days.isEmpty()) {
                boolean always = days.size() == horizon.days();
                List<DateRange> windows = always ? List.of() : runs(days);
                options.add(new Named(new Question.Owned(set.name(), covers, windows), "the sets on the shelf"));
            }
        }
        for (Unit.Id id : considered.units()) {
            Stored<Unit.Id, Unit> unit = ResolveJob.stored(sources.units(), id);
            if (!wants.test(unit.facts().tag())) {
                continue;
            }
            if (unit.facts().use().covers().isEmpty()) {
                return servesNothing("unit " + unit.facts().tag());
            }
            alone(unit, Optional.ofNullable(inSets.get(id))).ifPresent(options::add);
        }
        return Outcome.done(options);
    }

    private static Outcome<List<Named>> servesNothing(String what) {
        return Outcome.refused(
                Problem.Code.CANNOT_BE_DONE,
                "The " + what + " serves no slot: say on the shelf which slots it covers, or take it out of the job.");
    }

    /** The days on which every member can serve; a set without members goes nowhere. */
    private NavigableSet<LocalDate> wholeOn(LensSet set) {
        NavigableSet<LocalDate> days = new TreeSet<>();
        if (!set.members().isEmpty()) {
            horizon.stream().forEach(days::add);
        }
        members(sources, set).forEach(unit -> days.retainAll(daysOf(unit)));
        return days;
    }

    private Optional<Named> alone(Stored<Unit.Id, Unit> stored, Optional<NavigableSet<LocalDate>> inSet) {
        Unit unit = stored.facts();
        NavigableSet<LocalDate> days = daysOf(stored);
        inSet.ifPresent(days::removeAll);
        List<DateRange> windows = windows(days, unit.use(), horizon);
        // No window would mean always.
        return days.isEmpty() && windows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Named(
                        new Question.Owned(unit.tag(), unit.use().covers(), windows), "the units on the shelf"));
    }

    private static List<DateRange> runs(NavigableSet<LocalDate> days) {
        List<DateRange> runs = new ArrayList<>();
        for (LocalDate day : days) {
            DateRange last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.until().equals(day)) {
                runs.set(runs.size() - 1, new DateRange(last.from(), day.plusDays(1)));
            } else {
                runs.add(DateRange.inclusive(day, day));
            }
        }
        return runs;
    }
}
