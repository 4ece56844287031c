package dayglass.inventory.service;

import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Occupations;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which units fall due for service, the first due first. */
public final class DueList {
    private static final int ALL = Integer.MAX_VALUE;

    private final ServicePlans plans;
    private final Units units;
    private final Occupations occupations;
    private final HouseSettings settings;

    public DueList(ServicePlans plans, Units units, Occupations occupations, HouseSettings settings) {
        this.plans = plans;
        this.units = units;
        this.occupations = occupations;
        this.settings = settings;
    }

    /**
     * A unit with a plan.
     *
     * @param visit the next visit to the bench that is entered and not finished
     */
    public record Row(
            Stored<ServicePlan.Id, ServicePlan> plan,
            Unit unit,
            ServiceDue due,
            Optional<Stored<Occupation.Id, Occupation>> visit) {}

    /** Every unit of the house that has a plan; those of which no day is known come last, then by tag. */
    public List<Row> rows(Instant now) {
        House house = settings.now().facts();
        Map<Unit.Id, Unit> here = new HashMap<>();
        for (Stored<Unit.Id, Unit> unit : units.list(Optional.empty(), ALL)) {
            if (unit.facts().departure().isEmpty()) {
                here.put(unit.id(), unit.facts());
            }
        }
        List<Stored<ServicePlan.Id, ServicePlan>> kept = plans.list(Optional.empty(), ALL).stream()
                .filter(plan -> here.containsKey(plan.facts().unit()))
                .toList();
        Map<Unit.Id, List<Stored<Occupation.Id, Occupation>>> lives = lives(kept, house);
        List<Row> rows = new ArrayList<>();
        for (Stored<ServicePlan.Id, ServicePlan> plan : kept) {
            Unit.Id unit = plan.facts().unit();
            List<Stored<Occupation.Id, Occupation>> life = lives.getOrDefault(unit, List.of());
            ServiceHistory history = new ServiceHistory(
                    plan.facts(), life.stream().map(Stored::facts).toList());
            rows.add(new Row(
                    plan,
                    java.util.Objects.requireNonNull(here.get(unit)),
                    history.due(house, now),
                    life.stream().filter(each -> open(each.facts())).findFirst()));
        }
        rows.sort(Comparator.comparing((Row row) -> row.due().dueOn().orElse(LocalDate.MAX))
                .thenComparing(row -> row.unit().tag()));
        return List.copyOf(rows);
    }

    private static boolean open(Occupation visit) {
        return visit.kind() == Kind.BENCH
                && visit.bench().filter(BenchWork::done).isEmpty();
    }

    /** What each unit went through since the earliest day that a plan says, and what is ahead. */
    private Map<Unit.Id, List<Stored<Occupation.Id, Occupation>>> lives(
            List<Stored<ServicePlan.Id, ServicePlan>> kept, House house) {
        Map<Unit.Id, List<Stored<Occupation.Id, Occupation>>> lives = new HashMap<>();
        Optional<Instant> since =
                kept.stream().map(plan -> Overdue.since(plan.facts(), house)).min(Instant::compareTo);
        List<Unit.Id> of = kept.stream().map(plan -> plan.facts().unit()).toList();
        since.map(from -> occupations.ahead(of, from))
                .orElse(List.of())
                .forEach(each -> lives.computeIfAbsent(each.facts().unit(), unit -> new ArrayList<>())
                        .add(each));
        return lives;
    }
}
