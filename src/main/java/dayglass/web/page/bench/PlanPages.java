package dayglass.web.page.bench;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.service.ServicePlan;
import dayglass.inventory.service.ServicePlans;
import dayglass.shelf.ServicePlanJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.shelf.RecordPages;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One service plan. */
final class PlanPages extends RecordPages<ServicePlan.Id, ServicePlan> {
    private final ServicePlans plans;
    private final Units units;

    PlanPages(ServicePlans plans, Units units, Html html) {
        super(
                html,
                new Kind<>("/bench/plans", "/bench", "bench", plans, ServicePlan.Id::new, ServicePlanJson.reader()));
        this.plans = plans;
        this.units = units;
    }

    @Override
    protected String template() {
        return "plan.jte";
    }

    @Override
    protected String name(ServicePlan facts) {
        return "the service plan of " + tag(facts.unit());
    }

    private String tag(Unit.Id unit) {
        return units.find(unit).map(found -> found.facts().tag()).orElse("a unit that is gone");
    }

    @Override
    protected Form blank(Context ctx) {
        return Form.EMPTY.with(
                "/unitId", Optional.ofNullable(ctx.queryParam("unit")).orElse(""));
    }

    @Override
    protected Form form(ServicePlan facts) {
        return FormJson.form(ServicePlanJson::write, facts);
    }

    @Override
    protected Map<String, Object> model(Optional<Stored<ServicePlan.Id, ServicePlan>> stored, Form form) {
        return Map.of(
                "id",
                stored.map(plan -> plan.id().number()).orElse(0L),
                "title",
                stored.map(plan -> "Service plan of " + tag(plan.facts().unit()))
                        .orElse("A new service plan"),
                "units",
                stored.map(plan -> List.of(
                                choice(plan.facts().unit(), tag(plan.facts().unit()))))
                        .orElseGet(this::withoutPlan),
                "form",
                form);
    }

    private List<Choice> withoutPlan() {
        Set<Unit.Id> planned = new HashSet<>();
        Requests.all(plans).forEach(plan -> planned.add(plan.facts().unit()));
        return Requests.all(units).stream()
                .filter(unit -> unit.facts().departure().isEmpty() && !planned.contains(unit.id()))
                .map(unit -> choice(unit.id(), unit.facts().tag()))
                .sorted(Comparator.comparing(Choice::label))
                .toList();
    }

    private static Choice choice(Unit.Id unit, String tag) {
        return new Choice(String.valueOf(unit.number()), tag);
    }
}
