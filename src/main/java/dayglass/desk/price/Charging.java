package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Choice;
import dayglass.cost.rental.PeriodPricing;
import dayglass.cost.rental.RentalCharge;
import dayglass.cost.rental.RentalTerms;
import dayglass.desk.DeskRules;
import dayglass.inventory.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns periods that the engine chose into lines that the customer reads, with the desk's discount and mark-up. */
final class Charging {
    private final PackageAsked asked;
    private final DeskRules rules;

    Charging(PackageAsked asked, DeskRules rules) {
        this.asked = asked;
        this.rules = rules;
    }

    PricedLine own(Offer offer, Choice.Rent period, List<Unit.Id> units) {
        RentalTerms terms = offer.option().terms();
        PeriodPricing pricing = new PeriodPricing(terms, asked.schedule());
        Money hire = hire(period.charge());
        Percent off = asked.off(offer.demand().line());
        Money discount = off.of(hire);
        RentalCharge charge = pricing.reduced(period.charge(), discount);
        return new PricedLine(
                offer.demand().line(),
                offer.what(),
                units,
                period.dates(),
                how(period.charge().blocks()),
                hire,
                off,
                discount,
                charge.trip(),
                charge.addOns().stream()
                        .map(addOn ->
                                new PricedLine.AddOn(addOn.name(), offer.rate().mark(addOn.name()), addOn.amount()))
                        .toList(),
                charge.total(),
                lateDay(offer.rate(), period.dates()),
                offer.rate(),
                Optional.empty());
    }

    /** What is rented in is let at its cost with the mark-up; the taxes of the rules stand on that. */
    PricedLine rentedIn(Offer offer, Choice.Rent period) {
        Money cost = period.total();
        Money hire = cost.plus(rules.markUp().of(cost));
        Percent off = asked.off(offer.demand().line());
        Money discount = off.of(hire);
        Money net = hire.minus(discount);
        List<PricedLine.AddOn> taxes = rules.taxes().stream()
                .map(tax ->
                        new PricedLine.AddOn(tax.code(), Mark.TAX, tax.percent().of(net)))
                .toList();
        Money total = taxes.stream().map(PricedLine.AddOn::amount).reduce(net, Money::plus);
        return new PricedLine(
                offer.demand().line(),
                offer.what(),
                List.of(),
                period.dates(),
                how(period.charge().blocks()),
                hire,
                off,
                discount,
                Money.zero(hire.currency()),
                taxes,
                total,
                lateDay(offer.rate(), period.dates()),
                offer.rate(),
                Optional.of(new PricedLine.RentedIn(
                        period.supplier(),
                        cost,
                        taxes(period.charge(), offer.rate()),
                        offer.foreign().map(foreign -> before(foreign, period.dates())))));
    }

    /** The same days by the prices as the card has them. */
    private PricedLine.Foreign before(Offer.Foreign foreign, DateRange dates) {
        Schedule schedule = asked.schedule();
        RentalCharge charge = new PeriodPricing(foreign.rate().terms(), schedule)
                .charge(schedule.dayOf(dates.from()), schedule.dayOf(dates.until()) - 1)
                .orElseThrow();
        return new PricedLine.Foreign(
                charge.total(), taxes(charge, foreign.rate()), foreign.at().rate());
    }

    /** The taxes in a charge, by code. */
    static Map<String, Money> taxes(RentalCharge charge, Rate rate) {
        Map<String, Money> taxes = new LinkedHashMap<>();
        charge.addOns().stream()
                .filter(addOn -> rate.mark(addOn.name()) == Mark.TAX)
                .forEach(addOn -> taxes.merge(addOn.name(), addOn.amount(), Money::plus));
        return taxes;
    }

    private static Money hire(RentalCharge charge) {
        return charge.hire().minus(charge.discount()).plus(charge.raisedToMinimum());
    }

    /** The price of one day of shooting, without trip, minimum and taxes, in the share that the rules say. */
    private Money lateDay(Rate rate, DateRange dates) {
        RentalTerms terms = Offer.terms(rate, asked.insured(), Set.of(Mark.TAX));
        Currency currency = terms.perTrip().currency();
        RentalTerms plain = new RentalTerms(
                terms.blocks(),
                terms.extraDay(),
                terms.dayFactors(),
                List.of(),
                Money.zero(currency),
                Money.zero(currency),
                terms.addOns());
        Money day = Money.zero(currency);
        Schedule oneDay = new Schedule(
                List.of(new Schedule.Span(DateRange.inclusive(dates.until(), dates.until()), DayUse.SHOOT)));
        Optional<RentalCharge> charge = new PeriodPricing(plain, oneDay).charge(0, 0);
        if (charge.isPresent()) {
            day = charge.get().total();
        } else {
            // No block may begin on that weekday: the cheapest share of a block stands for a day.
            day = terms.blocks().stream()
                    .map(block -> new Money(
                            currency, block.price().minor().divide(java.math.BigInteger.valueOf(block.days()))))
                    .min(Money::compareTo)
                    .orElse(day);
        }
        return rules.lateDay().of(day);
    }

    /** {@code 7 days 300.00, 2 × 1 day 60.00}. */
    private static String how(List<RentalCharge.BlockUsed> blocks) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (RentalCharge.BlockUsed block : blocks) {
            String words = block.days()
                    + (block.days() == 1 ? " day " : " days ")
                    + block.price().amount()
                    + (block.extraDay() ? " (extra day)" : "");
            counts.merge(words, 1, Integer::sum);
        }
        List<String> parts = new ArrayList<>();
        counts.forEach((words, count) -> parts.add(count == 1 ? words : count + " \u00d7 " + words));
        return String.join(", ", parts);
    }
}
