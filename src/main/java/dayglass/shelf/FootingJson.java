package dayglass.shelf;

import dayglass.base.Percent;
import dayglass.inventory.worth.Footing;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import java.util.List;
import java.util.Optional;

/** What the house's own glass is weighed by; what is left out is common practice. */
public final class FootingJson {
    /** The names of its members. */
    public static final List<String> NAMES = List.of(
            "discountRatePercent",
            "lossPercentPerYear",
            "sellingCostPercent",
            "insurancePercentPerYear",
            "dayRatePercent",
            "weekRatePercent");

    private static final int MOST_PERCENT = 1000;
    private static final int MOST_LOSS = 100;

    private FootingJson() {}

    public static Reader<Footing> reader() {
        return Fields.object(FootingJson::read);
    }

    private static Read<Footing> read(Fields fields) {
        Footing usual = Footing.USUAL;
        Footing.RuleOfThumb thumb = usual.ruleOfThumb().orElseThrow();
        Read<Percent> discount = fields.optional(NAMES.get(0), Decimals.percent(0, MOST_PERCENT), usual.discountRate());
        Read<Percent> loss =
                fields.optional(NAMES.get(1), Decimals.percent(-MOST_LOSS, MOST_LOSS), usual.lossPerYear());
        Read<Percent> selling = fields.optional(NAMES.get(2), Decimals.percent(0, MOST_LOSS), usual.sellingCost());
        Read<Percent> insurance =
                fields.optional(NAMES.get(3), Decimals.percent(0, MOST_PERCENT), usual.insurancePerYear());
        Read<Percent> day = fields.optional(NAMES.get(4), Decimals.percent(0, MOST_PERCENT), thumb.day());
        Read<Percent> week = fields.optional(NAMES.get(5), Decimals.percent(0, MOST_PERCENT), thumb.week());
        return fields.build(() -> new Footing(
                discount.get(),
                loss.get(),
                selling.get(),
                insurance.get(),
                Optional.of(new Footing.RuleOfThumb(day.get(), week.get()))
                        .filter(rule -> rule.day().value().signum() > 0)));
    }

    public static void write(Json.Members members, Footing footing) {
        Optional<Footing.RuleOfThumb> thumb = footing.ruleOfThumb();
        members.put(NAMES.get(0), text(footing.discountRate()))
                .put(NAMES.get(1), text(footing.lossPerYear()))
                .put(NAMES.get(2), text(footing.sellingCost()))
                .put(NAMES.get(3), text(footing.insurancePerYear()))
                .put(NAMES.get(4), text(thumb.map(Footing.RuleOfThumb::day).orElse(Percent.ZERO)))
                .put(NAMES.get(5), text(thumb.map(Footing.RuleOfThumb::week).orElse(Percent.ZERO)));
    }

    private static String text(Percent percent) {
        return percent.value().toPlainString();
    }
}
