package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.rental.PeriodPricing;
import dayglass.cost.rental.RentalTerms;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Asks the engine for the least periods that serve demands. What no offer can serve is taken by a stand-in at a price
 * that nothing real reaches, so that as little as possible is left to it, and it says what is missing.
 */
final class Packing {
    private static final String STAND_IN = "missing ";

    private final Schedule schedule;
    private final Currency currency;

    Packing(Schedule schedule, Currency currency) {
        this.schedule = schedule;
        this.currency = currency;
    }

    /** The demand that a stand-in stands for. */
    static String slotOf(String option) {
        return option.substring(STAND_IN.length());
    }

    /** The days of a schedule inside a range, which has one of them at least. */
    static Schedule during(Schedule schedule, DateRange dates) {
        List<Schedule.Span> spans = new ArrayList<>();
        for (Schedule.Span span : schedule.spans()) {
            span.dates().within(dates).ifPresent(days -> spans.add(new Schedule.Span(days, span.use())));
        }
        return new Schedule(spans);
    }

    /**
     * The periods: of offers by the id of their options, and of stand-ins.
     *
     * @param stock how many there are of what offers draw on
     */
    List<Choice.Rent> least(
            List<Question.Need> needs,
            List<Demand> demands,
            Map<String, Offer> offers,
            Map<String, Integer> stock,
            StopSignal stop) {
        List<Question.Rental> rentals = new ArrayList<>();
        offers.values().forEach(offer -> rentals.add(offer.option()));
        Money price = dearerThanAll(rentals);
        demands.forEach(demand -> rentals.add(standIn(demand, price)));
        Question question = new Question(
                "package",
                currency,
                dayglass.base.Percent.ZERO,
                Optional.empty(),
                schedule,
                needs,
                rentals,
                List.of(),
                List.of(),
                stock);
        return LeastCost.periods(question, stop)
                .orElseThrow(() -> new IllegalStateException("stand-ins serve whatever no offer serves"));
    }

    /**
     * What a day of a stand-in costs: more than a plan of offers that leaves as little as can be to stand-ins, and not so
     * much that the engine has to reckon with amounts beyond a {@code long}. Such a plan can do with one period a copy where
     * offers are there on all days and from any; otherwise it has one a day at most.
     */
    private Money dearerThanAll(List<Question.Rental> offers) {
        boolean fromAnyDay = offers.stream()
                .allMatch(offer -> offer.available().isEmpty()
                        && offer.terms().blocks().stream()
                                .allMatch(block -> block.startsOn().isEmpty()));
        BigInteger periods = BigInteger.valueOf(fromAnyDay ? 1 : schedule.days());
        BigInteger all = BigInteger.ONE;
        for (Question.Rental offer : offers) {
            BigInteger one = new PeriodPricing(offer.terms(), schedule).largestTotal();
            all = all.add(one.multiply(BigInteger.valueOf(offer.copies())).multiply(periods));
        }
        return new Money(currency, all);
    }

    private Question.Rental standIn(Demand demand, Money price) {
        Money none = Money.zero(currency);
        RentalTerms terms = new RentalTerms(
                List.of(new RentalTerms.Block(1, price, Optional.empty())),
                Optional.empty(),
                Map.of(),
                List.of(),
                none,
                none,
                List.of());
        return new Question.Rental(
                STAND_IN + demand.slot(),
                "nobody",
                Map.of(demand.slot(), 1),
                demand.count(),
                terms,
                List.of(),
                Map.of());
    }
}
