package dayglass.shelf;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.gear.Gear;
import dayglass.cost.scenario.VerdictQuestion.WrittenOff;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.job.Job;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.JsonText;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.verdict.DepreciationReader;
import java.time.LocalDate;
import java.util.Optional;

/** Gear's facts. */
public final class GearJson {
    private GearJson() {}

    /**
     * Reads gear of a job. Price and first day may be left out where the unit says what it was bought for, and when.
     *
     * @param currency the job's
     */
    public static Reader<Gear> reader(Job.Id job, Currency currency, Units units) {
        return Fields.object(fields -> {
            Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
            Optional<Holding.Owned> owned = unit.found()
                    .flatMap(units::find)
                    .flatMap(found -> found.facts()
                            .holding()
                            .fold(Optional::of, rented -> Optional.empty(), lent -> Optional.empty()));
            Reader<Money> money = Decimals.money(Read.good(currency));
            Read<Money> price = owned.flatMap(Holding.Owned::price)
                    .filter(paid -> paid.currency().equals(currency))
                    .map(paid -> fields.optional("price", money, paid))
                    .orElseGet(() -> fields.required("price", money));
            Read<LocalDate> inService = owned.flatMap(Holding.Owned::boughtOn)
                    .map(bought -> fields.optional("inService", Readers.date(), bought))
                    .orElseGet(() -> fields.required("inService", Readers.date()));
            Read<String> code = fields.optional("costCode", Readers.name(), "");
            Read<Json> typed = fields.required("depreciation", (json, place) -> Read.good(json));
            Read<WrittenOff> writtenOff = fields.required("depreciation", DepreciationReader.of(price.found(), money));
            return fields.build(() -> new Gear(
                    job,
                    unit.get(),
                    price.get(),
                    inService.get(),
                    code.get(),
                    JsonPrint.pretty(typed.get()),
                    writtenOff.get()));
        });
    }

    public static void write(Json.Members members, Gear gear) {
        members.put("unitId", gear.unit().number())
                .put("price", gear.price().amount())
                .put("inService", gear.inService().toString());
        if (!gear.costCode().isEmpty()) {
            members.put("costCode", gear.costCode());
        }
        members.put("depreciation", asAsked(gear));
    }

    private static Json asAsked(Gear gear) {
        return JsonText.parse(gear.depreciation()).fold(json -> json, faults -> {
            throw new IllegalArgumentException("gear says in JSON how it is written off: " + faults);
        });
    }
}
