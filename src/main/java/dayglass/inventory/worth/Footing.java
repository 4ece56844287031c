package dayglass.inventory.worth;

import dayglass.base.Percent;
import java.util.Optional;

/**
 * What every unit is weighed by alike. Common practice unless the user says otherwise.
 *
 * @param discountRate a year
 * @param lossPerYear of the price, for glass of a model that the house never sold
 * @param sellingCost of what a sale brings
 * @param insurancePerYear of the replacement value; of today's value where that is not recorded
 * @param ruleOfThumb what renting costs where no card has a rate; empty where such glass is not to be weighed
 */
public record Footing(
        Percent discountRate,
        Percent lossPerYear,
        Percent sellingCost,
        Percent insurancePerYear,
        Optional<RuleOfThumb> ruleOfThumb) {

    public static final Footing USUAL = new Footing(
            Percent.of("6"),
            Percent.of("9"),
            Percent.of("8"),
            Percent.of("1.5"),
            Optional.of(new RuleOfThumb(Percent.of("2.5"), Percent.of("10"))));

    /** What a day and a week of renting cost, in per cent of the replacement value. */
    public record RuleOfThumb(Percent day, Percent week) {}
}
