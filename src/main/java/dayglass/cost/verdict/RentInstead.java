package dayglass.cost.verdict;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.rental.RentalTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One thing rented for whole jobs, each at the least that the cards' rates come to. */
public final class RentInstead {
    private static final String SLOT = "lens";
    private static final List<Integer> PERMIT_DAYS = List.of(1, 7, 28);

    private final Currency currency;
    private final List<Question.Rental> rentals;

    /** By rates of which at least one has a block that may begin on any day, so that every job can be covered. */
    public RentInstead(Currency currency, List<RentalTerms> rates) {
        this.currency = currency;
        List<Question.Rental> all = new ArrayList<>();
        for (RentalTerms terms : rates) {
            all.add(new Question.Rental(
                    "rate " + (all.size() + 1), "", Map.of(SLOT, 1), 1, terms, List.of(), Map.of()));
        }
        this.rentals = List.copyOf(all);
    }

    /** The question that one job puts to the engine. */
    public Question question(Schedule schedule) {
        return new Question(
                "job",
                currency,
                Percent.ZERO,
                Optional.empty(),
                schedule,
                List.of(new Question.Need(SLOT, 1, Set.of(DayUse.PREP, DayUse.SHOOT), List.of())),
                rentals,
                List.of(),
                List.of(),
                Map.of());
    }

    /** The least rent of one job. */
    public Money oneJob(Schedule schedule) {
        return LeastCost.best(question(schedule), StopSignal.NEVER)
                .orElseThrow(() -> new IllegalArgumentException("no rate may begin on any day"))
                .total();
    }

    /** The rentals of one job at its least rent. */
    public List<Choice.Rent> periods(Schedule schedule) {
        return LeastCost.periods(question(schedule), StopSignal.NEVER)
                .orElseThrow(() -> new IllegalArgumentException("no rate may begin on any day"));
    }

    /**
     * A day, a week and four weeks at the least that a block of that length costs at these rates, as far as there are such
     * blocks that may begin on any day; without a day's block none.
     */
    public static List<NestedPermits.Permit> permits(List<RentalTerms> rates) {
        List<NestedPermits.Permit> permits = new ArrayList<>();
        for (int days : PERMIT_DAYS) {
            rates.stream()
                    .flatMap(terms -> terms.blocks().stream())
                    .filter(block -> block.days() == days && block.startsOn().isEmpty())
                    .map(RentalTerms.Block::price)
                    .min(Money::compareTo)
                    .filter(price -> days == 1 || !permits.isEmpty())
                    .ifPresent(price -> permits.add(new NestedPermits.Permit(days, price)));
        }
        return permits;
    }

    /** The rates at a percentage of their block prices, each rounded half up; trips, minimum and add-ons' percentages stay. */
    static List<RentalTerms> at(BigDecimal percent, List<RentalTerms> rates) {
        return rates.stream()
                .map(terms -> new RentalTerms(
                        terms.blocks().stream()
                                .map(block -> new RentalTerms.Block(
                                        block.days(), at(percent, block.price()), block.startsOn()))
                                .toList(),
                        terms.extraDay()
                                .map(extra -> new RentalTerms.ExtraDay(extra.afterDays(), at(percent, extra.price()))),
                        terms.dayFactors(),
                        terms.longHire(),
                        terms.minimumCharge(),
                        terms.perTrip(),
                        terms.addOns()))
                .toList();
    }

    private static Money at(BigDecimal percent, Money price) {
        return new Money(
                price.currency(),
                new BigDecimal(price.minor())
                        .multiply(percent)
                        .movePointLeft(2)
                        .setScale(0, RoundingMode.HALF_UP)
                        .unscaledValue());
    }
}
