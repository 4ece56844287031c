package dayglass.desk.price;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.PeriodPricing;
import dayglass.cost.rental.RentalCharge;
import dayglass.cost.rental.RentalTerms;
import dayglass.desk.DeskRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What more days cost of a line that is out already: the whole time priced as one rental, or the added days by
 * themselves, whichever is less for the customer.
 */
public final class Extension {
    private Extension() {}

    /**
     * The cost of keeping a line.
     *
     * @param charge what is to be paid on top; below nothing where the longer rental costs less than what was promised
     * @param taxes of that, by code
     * @param hire what of it is hire less discount, without add-ons and trips
     * @param asOne whether it is the whole time priced as one rental
     */
    public record Cost(Money charge, Map<String, Money> taxes, Money hire, boolean asOne) {
        public Cost {
            taxes = Collections.unmodifiableMap(new LinkedHashMap<>(taxes));
        }

        /** Its taxes less those charged before. */
        public Map<String, Money> taxesBeyond(Map<String, Money> before) {
            return beyond(taxes, before);
        }
    }

    private record Price(Money total, Map<String, Money> taxes, Money hire) {}

    /**
     * Prices more days, each for shooting, by the very rate of the line.
     *
     * @param last the last day of use now, after that of the line
     * @return empty where the rate's blocks cannot be laid over the days
     */
    public static Optional<Cost> of(PricedLine line, PackageAsked asked, LocalDate last, DeskRules rules) {
        DateRange added = DateRange.inclusive(line.dates().until(), last);
        List<Schedule.Span> spans = new ArrayList<>();
        for (Schedule.Span span : asked.schedule().spans()) {
            if (span.dates().from().isBefore(added.from())) {
                LocalDate until = span.dates().until().isAfter(added.from())
                        ? added.from()
                        : span.dates().until();
                spans.add(new Schedule.Span(new DateRange(span.dates().from(), until), span.use()));
            }
        }
        spans.add(new Schedule.Span(added, DayUse.SHOOT));
        Schedule schedule = new Schedule(spans);
        Optional<Cost> whole = price(
                        line, asked, schedule, DateRange.inclusive(line.dates().from(), last), rules)
                .map(price -> new Cost(
                        price.total().minus(line.total()),
                        beyond(price.taxes(), line.taxes()),
                        price.hire().minus(line.hire().minus(line.discount())),
                        true));
        Optional<Cost> alone = price(line, asked, schedule, added, rules)
                .map(price -> new Cost(price.total(), price.taxes(), price.hire(), false));
        boolean one = whole.isPresent()
                && (alone.isEmpty()
                        || whole.get().charge().compareTo(alone.get().charge()) <= 0);
        return one ? whole : alone;
    }

    private static Optional<Price> price(
            PricedLine line, PackageAsked asked, Schedule schedule, DateRange dates, DeskRules rules) {
        boolean own = line.rentedIn().isEmpty();
        RentalTerms terms =
                own ? Offer.terms(line.rate(), asked.insured()) : line.rate().terms();
        PeriodPricing pricing = new PeriodPricing(terms, schedule);
        Optional<RentalCharge> charge = pricing.charge(schedule.dayOf(dates.from()), schedule.dayOf(dates.until()) - 1);
        return charge.map(found -> {
            if (own) {
                Money hire = found.hire().minus(found.discount()).plus(found.raisedToMinimum());
                Money off = line.off().of(hire);
                RentalCharge reduced = pricing.reduced(found, off);
                return new Price(reduced.total(), Charging.taxes(reduced, line.rate()), hire.minus(off));
            }
            Money hire = found.total().plus(rules.markUp().of(found.total()));
            Money net = hire.minus(line.off().of(hire));
            Map<String, Money> taxes = new LinkedHashMap<>();
            rules.taxes().forEach(tax -> taxes.merge(tax.code(), tax.percent().of(net), Money::plus));
            return new Price(taxes.values().stream().reduce(net, Money::plus), taxes, net);
        });
    }

    private static Map<String, Money> beyond(Map<String, Money> taxes, Map<String, Money> before) {
        Map<String, Money> more = new LinkedHashMap<>(taxes);
        before.forEach((code, amount) -> more.merge(code, amount.times(-1), Money::plus));
        return more;
    }
}
