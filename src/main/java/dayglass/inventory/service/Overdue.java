package dayglass.inventory.service;

import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Obstacle;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.UnitState;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A unit whose service is overdue stays in, unless somebody says why it goes out all the same. */
public final class Overdue implements HandOver.Rule {
    private final ServicePlans plans;
    private final Occupations occupations;
    private final HouseSettings settings;
    private final Clock clock;

    public Overdue(ServicePlans plans, Occupations occupations, HouseSettings settings, Clock clock) {
        this.plans = plans;
        this.occupations = occupations;
        this.settings = settings;
        this.clock = clock;
    }

    /** What the unit's plan asks and what it went through; empty where it has no plan. */
    public Optional<ServiceHistory> history(Unit.Id unit) {
        return plans.of(unit)
                .map(Stored::facts)
                .map(plan -> new ServiceHistory(
                        plan,
                        occupations
                                .ahead(List.of(unit), since(plan, settings.now().facts()))
                                .stream()
                                .map(Stored::facts)
                                .toList()));
    }

    static Instant since(ServicePlan plan, House house) {
        return plan.lastDoneOn().atStartOfDay(house.zone()).toInstant();
    }

    /** A later handing over is judged as if the visits that are planned until then were kept. */
    @Override
    public Optional<Obstacle> against(UnitState unit, Instant at) {
        return history(unit.unit())
                .flatMap(history -> against(history, unit, at, settings.now().facts()));
    }

    @Override
    public HandOver.Rule ofAll(Set<Unit.Id> units) {
        House house = settings.now().facts();
        List<ServicePlan> kept = plans.list(Optional.empty(), Integer.MAX_VALUE).stream()
                .map(Stored::facts)
                .filter(plan -> units.contains(plan.unit()))
                .toList();
        Map<Unit.Id, List<Occupation>> lives = new HashMap<>();
        kept.stream()
                .map(plan -> since(plan, house))
                .min(Instant::compareTo)
                .map(from ->
                        occupations.ahead(kept.stream().map(ServicePlan::unit).toList(), from))
                .orElse(List.of())
                .forEach(each -> lives.computeIfAbsent(each.facts().unit(), unit -> new ArrayList<>())
                        .add(each.facts()));
        Map<Unit.Id, ServiceHistory> histories = new HashMap<>();
        kept.forEach(plan ->
                histories.put(plan.unit(), new ServiceHistory(plan, lives.getOrDefault(plan.unit(), List.of()))));
        return (unit, at) ->
                Optional.ofNullable(histories.get(unit.unit())).flatMap(history -> against(history, unit, at, house));
    }

    private Optional<Obstacle> against(ServiceHistory history, UnitState unit, Instant at, House house) {
        LocalDate day = at.atZone(house.zone()).toLocalDate();
        return Optional.of(history.dueAt(at, house, clock.instant()))
                .filter(due -> due.overdueOn(day))
                .flatMap(ServiceDue::dueOn)
                .map(due -> new Obstacle(
                        unit.tag() + " was due for service on " + due + ": it goes to the bench first.", true));
    }
}
