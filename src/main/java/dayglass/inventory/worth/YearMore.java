package dayglass.inventory.worth;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.ownership.Flow;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.Ownership;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.verdict.JobKind;
import dayglass.cost.verdict.RentOrBuy;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether to keep something a year more or to sell it today: the same choice as buying or renting, where the price is
 * what the sale would bring today. Each use of the year is rented instead.
 *
 * @param lines of the gain, at present value; they add up to it exactly
 * @param rented what the rent not paid is made of
 * @param from the rates that it goes by; empty for the rule of thumb
 */
public record YearMore(List<Line> lines, List<RentOrBuy.Rented> rented, List<String> from, Money gain) {
    private static final int YEAR = 12;
    private static final int MIDDLE = 6;
    private static final Percent ALL = Percent.of("100");
    private static final Map<Flow, String> WORDS = Map.of(
            Flow.PRICE, "not had: what a sale brings today",
            Flow.EXTRAS, "not paid: selling it today",
            Flow.INSURANCE, "insurance",
            Flow.SERVICE, "service, as so far in a year",
            Flow.LETTING, "letting, as in the last 365 days",
            Flow.RESALE, "a sale in a year",
            Flow.SELLING_COST, "selling it then");

    public YearMore {
        lines = List.copyOf(lines);
        rented = List.copyOf(rented);
        from = List.copyOf(from);
    }

    /** Something that a year more takes (below zero) or brings. */
    public record Line(String words, Money amount) {}

    /**
     * What a unit goes into the year with.
     *
     * @param insured value; the replacement value where it is recorded
     * @param service a year; zero where there was none
     * @param letting income of a year; zero where there was none
     */
    record Facts(ValueToday value, Money insured, Money service, Money letting, List<JobKind> jobs) {}

    static YearMore of(Facts facts, Footing footing, SimilarRates.Found rates, Growths growths) {
        RentOrBuy choice = choice(facts, footing, rates.terms());
        List<Line> lines = new ArrayList<>();
        CashFlow owning = CashFlow.of(choice.ownership(), growths);
        for (CashFlow.Line line : owning.presentByFlow()) {
            lines.add(new Line(WORDS.getOrDefault(line.flow(), line.flow().words()), line.amount()));
        }
        List<RentOrBuy.Rented> rented = choice.rented();
        Money rent = choice.presentCostOfRenting(rented, growths);
        if (rent.signum() != 0) {
            lines.add(new Line("not paid: rent for the same use", rent));
        }
        Money gain = rent.minus(owning.presentCost());
        Money told = lines.stream().map(Line::amount).reduce(Money.zero(gain.currency()), Money::plus);
        if (!told.equals(gain)) {
            lines.add(new Line("rounding of the lines", gain.minus(told)));
        }
        return new YearMore(lines, rented, rates.from(), gain);
    }

    private static RentOrBuy choice(Facts facts, Footing footing, List<RentalTerms> rates) {
        ValueToday value = facts.value();
        Money none = Money.zero(value.today().currency());
        PurchaseTerms terms = new PurchaseTerms(
                value.today(),
                Percent.ZERO,
                List.of(new PurchaseTerms.Extra(
                        "selling", none.minus(footing.sellingCost().of(value.today())))),
                YEAR,
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(YEAR, value.inAYear()))),
                        footing.sellingCost()),
                new PurchaseTerms.Holding(footing.insurancePerYear(), none, Optional.of(facts.insured())),
                Optional.of(new PurchaseTerms.Service(MIDDLE, facts.service())),
                Optional.of(new PurchaseTerms.Letting(BigDecimal.ONE, facts.letting(), ALL)));
        return new RentOrBuy(
                footing.discountRate(),
                terms,
                new Ownership.Running(none, none, Optional.empty()),
                Optional.empty(),
                facts.jobs(),
                rates,
                Percent.ZERO);
    }

    /** {@code keep}, {@code sell} or {@code either}. */
    public String word() {
        return gain.signum() > 0 ? "keep" : gain.signum() < 0 ? "sell" : "either";
    }
}
