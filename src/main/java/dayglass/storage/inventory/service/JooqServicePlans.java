package dayglass.storage.inventory.service;

import static dayglass.storage.schema.Tables.SERVICE_PLAN;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.service.ServicePlan;
import dayglass.inventory.service.ServicePlans;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.ServicePlanRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Service plans as rows. */
public final class JooqServicePlans extends VersionedTable<ServicePlan.Id, ServicePlan, ServicePlanRecord>
        implements ServicePlans {
    public JooqServicePlans(Database database) {
        super(database, new Shape<>("service plan", SERVICE_PLAN.ID, SERVICE_PLAN.VERSION, ServicePlan.Id::new));
    }

    @Override
    public Optional<Stored<ServicePlan.Id, ServicePlan>> of(Unit.Id unit) {
        return database.reading(sql -> sql.selectFrom(SERVICE_PLAN)
                .where(SERVICE_PLAN.UNIT_ID.eq(unit.number()))
                .fetchOptional(row -> stored(sql, row)));
    }

    @Override
    protected void fill(ServicePlanRecord row, ServicePlan facts) {
        row.setUnitId(facts.unit().number());
        row.setEveryMonths(facts.everyMonths().orElse(null));
        row.setEveryDaysOut(facts.everyDaysOut().orElse(null));
        row.setLastDoneOn(facts.lastDoneOn().toString());
    }

    @Override
    protected ServicePlan facts(DSLContext sql, ServicePlanRecord row) {
        return new ServicePlan(
                new Unit.Id(row.getUnitId()),
                Optional.ofNullable(row.getEveryMonths()),
                Optional.ofNullable(row.getEveryDaysOut()),
                LocalDate.parse(row.getLastDoneOn()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<ServicePlan.Id> self, ServicePlan facts) {
        return missing(sql, "/unitId", "unit", UNIT.ID, facts.unit())
                .or(() -> of(facts.unit())
                        .filter(other -> !self.equals(Optional.of(other.id())))
                        .map(other -> new Problem(
                                Problem.Code.ALREADY_THERE,
                                "This unit already has a service plan, number "
                                        + other.id().number() + ": change that one.")));
    }

    @Override
    protected List<String> uses(DSLContext sql, ServicePlan.Id id) {
        return List.of();
    }
}
