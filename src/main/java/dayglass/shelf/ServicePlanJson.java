package dayglass.shelf;

import dayglass.inventory.Unit;
import dayglass.inventory.service.ServicePlan;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.Optional;

/** A service plan's facts; months, days out, or both. */
public final class ServicePlanJson {
    private ServicePlanJson() {}

    public static Reader<ServicePlan> reader() {
        return Fields.object(ServicePlanJson::read);
    }

    private static Read<ServicePlan> read(Fields fields) {
        Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
        Read<Optional<Integer>> months = fields.optional("everyMonths", Readers.whole(1, ServicePlan.MOST_MONTHS));
        Read<Optional<Integer>> daysOut = fields.optional("everyDaysOut", Readers.whole(1, ServicePlan.MOST_DAYS_OUT));
        Read<LocalDate> lastDone = fields.required("lastDoneOn", Readers.date());
        if (!fields.has("everyMonths") && !fields.has("everyDaysOut")) {
            return fields.place()
                    .member("everyMonths")
                    .fault("is missing: give everyMonths, everyDaysOut, or both", "say months, days out, or both");
        }
        return fields.build(() -> new ServicePlan(unit.get(), months.get(), daysOut.get(), lastDone.get()));
    }

    public static void write(Json.Members members, ServicePlan plan) {
        members.put("unitId", plan.unit().number());
        plan.everyMonths().ifPresent(months -> members.put("everyMonths", months));
        plan.everyDaysOut().ifPresent(days -> members.put("everyDaysOut", days));
        members.put("lastDoneOn", plan.lastDoneOn().toString());
    }
}
