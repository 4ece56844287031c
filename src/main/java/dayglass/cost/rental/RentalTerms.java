package dayglass.cost.rental;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The terms at which something is let, as a rate card states them.
 *
 * @param blocks at least one
 * @param extraDay a cheaper day once the period is long enough
 * @param dayFactors what a one-day block costs on a day of that use, as a factor of its price; 1 where absent
 * @param longHire discounts by length, no two from the same number of days
 * @param minimumCharge the least that the hire comes to, after the discount
 * @param perTrip once a rental period
 * @param addOns in the order in which they are worked out
 */
public record RentalTerms(
        List<Block> blocks,
        Optional<ExtraDay> extraDay,
        Map<DayUse, BigDecimal> dayFactors,
        List<LongHire> longHire,
        Money minimumCharge,
        Money perTrip,
        List<AddOn> addOns) {

    public RentalTerms {
        blocks = List.copyOf(blocks);
        dayFactors = Map.copyOf(dayFactors);
        longHire = List.copyOf(longHire);
        addOns = List.copyOf(addOns);
    }

    /** The same terms with these blocks alone, and no extra day. */
    public RentalTerms withBlocksOnly(List<Block> some) {
        return new RentalTerms(some, Optional.empty(), dayFactors, longHire, minimumCharge, perTrip, addOns);
    }

    /** The same terms at other prices. */
    public RentalTerms withPrices(UnaryOperator<Money> price) {
        return new RentalTerms(
                blocks.stream()
                        .map(block -> new Block(block.days(), price.apply(block.price()), block.startsOn()))
                        .toList(),
                extraDay.map(extra -> new ExtraDay(extra.afterDays(), price.apply(extra.price()))),
                dayFactors,
                longHire,
                price.apply(minimumCharge),
                price.apply(perTrip),
                addOns);
    }

    /**
     * So many calendar days for one price; a one-day block takes the day factor.
     *
     * @param startsOn the only weekday on which it may begin, or empty for any
     */
    public record Block(int days, Money price, Optional<DayOfWeek> startsOn) {}

    /** A one-day block allowed on day d of a period that began on day a only where d - a is at least {@code afterDays}. */
    public record ExtraDay(int afterDays, Money price) {}

    /** A discount on the hire of a period of at least {@code fromDays} days; the entry of most days counts alone. */
    public record LongHire(int fromDays, Percent percent) {}

    /**
     * A percentage of the sum of what {@code on} names: {@link #HIRE}, {@link #TRIP} or earlier add-ons by name.
     */
    public record AddOn(String name, Percent percent, Set<String> on) {
        public static final String HIRE = "hire";
        public static final String TRIP = "trip";

        public AddOn {
            on = Set.copyOf(on);
        }
    }
}
