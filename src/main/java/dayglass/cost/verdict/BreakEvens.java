package dayglass.cost.verdict;

import dayglass.base.Money;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.ownership.Flow;
import dayglass.cost.ownership.Growth;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** The break-evens of one choice. */
public final class BreakEvens {
    private static final int DAYS_A_YEAR = 366;
    private static final int MOST_MONTHS = 600;
    private static final int MONTHS_AT_LEAST = 120;
    /** Rates are tried up to ten times what they are, in hundredths of a per cent. */
    private static final int MOST_RATE = 100_000;

    private final RentOrBuy choice;
    private final BigDecimal owning;
    private final BigDecimal renting;

    public BreakEvens(RentOrBuy choice) {
        this.choice = choice;
        this.owning = choice.owning().presentCostExactly();
        this.renting = choice.presentRent(choice.yearOfRent());
    }

    /**
     * By days of use a year, 0 to 366: jobs in the order of their kinds, each whole, over and over, and the last cut short
     * by its last days.
     */
    public BreakEven inDaysPerYear() {
        List<BigDecimal> aYear = rentByDays();
        BigDecimal[] present =
                Growth.by(choice.discountRate()).presentByMonth(choice.terms().termMonths());
        BigDecimal ofOneAYear =
                RentOrBuy.present(choice.byMonth(BigDecimal.ONE, choice.terms().termMonths()), present);
        List<BreakEven.Point> curve = new ArrayList<>();
        for (int days = 0; days <= DAYS_A_YEAR; days++) {
            BigDecimal used = BigDecimal.valueOf(days);
            curve.add(new BreakEven.Point(
                    used,
                    CashFlow.of(choice.ownership().usedOn(used)).presentCost(),
                    choice.rounded(aYear.get(days).multiply(ofOneAYear))));
        }
        return BreakEven.along(curve);
    }

    private List<BigDecimal> rentByDays() {
        RentInstead rent = new RentInstead(choice.currency(), choice.rates());
        List<BigDecimal> all = new ArrayList<>(List.of(BigDecimal.ZERO));
        List<List<BigDecimal>> byKind = new ArrayList<>();
        for (JobKind kind : choice.jobs()) {
            List<BigDecimal> byLength = new ArrayList<>();
            for (int days = 1; days <= Math.min(kind.days(), DAYS_A_YEAR); days++) {
                byLength.add(rent.oneJob(kind.schedule(days)).major());
            }
            byKind.add(byLength);
        }
        BigDecimal whole = BigDecimal.ZERO;
        for (int kind = 0; all.size() <= DAYS_A_YEAR; kind = (kind + 1) % byKind.size()) {
            for (BigDecimal cost : byKind.get(kind)) {
                all.add(whole.add(cost));
            }
            whole = all.get(all.size() - 1);
        }
        return all;
    }

    /** By months owned before the sale, from 1 to twice the term or ten years. */
    public BreakEven inMonthsOwned() {
        int most = Math.min(
                MOST_MONTHS, Math.max(MONTHS_AT_LEAST, 2 * choice.terms().termMonths()));
        BigDecimal[] present = Growth.by(choice.discountRate()).presentByMonth(most);
        List<BigDecimal> rent = choice.byMonth(choice.yearOfRent(), most);
        List<BreakEven.Point> curve = new ArrayList<>();
        BigDecimal rented = BigDecimal.ZERO;
        for (int months = 1; months <= most; months++) {
            rented = rented.add(rent.get(months - 1).multiply(present[months]));
            curve.add(new BreakEven.Point(
                    BigDecimal.valueOf(months),
                    choice.soldAfter(months).presentCostOfOwning(),
                    choice.rounded(rented)));
        }
        return BreakEven.along(curve);
    }

    /** By what the sale brings at the end of the term, before the selling cost, in the currency. */
    public BreakEven inResaleValue() {
        int months = choice.terms().termMonths();
        BigDecimal kept = BigDecimal.ONE
                .subtract(choice.terms().resale().sellingCost().fraction())
                .multiply(Growth.by(choice.discountRate()).presentByMonth(months)[months]);
        CashFlow flow = choice.owning();
        BigDecimal withoutSale =
                owning.add(flow.presentExactly(Flow.RESALE)).add(flow.presentExactly(Flow.SELLING_COST));
        if (kept.signum() == 0) {
            return none("a sale brings nothing: the selling cost takes all of it");
        }
        BigDecimal missing = withoutSale.subtract(renting);
        if (missing.signum() < 0) {
            return none("owning is cheaper even if nothing comes back at the sale");
        }
        int decimals = choice.currency().decimals();
        BigDecimal below = missing.divide(kept, decimals, RoundingMode.FLOOR);
        BigDecimal above = missing.divide(kept, decimals, RoundingMode.CEILING);
        return new BreakEven(
                List.of(BreakEven.Crossing.between(
                        atResale(below, withoutSale, kept), atResale(above, withoutSale, kept))),
                List.of(),
                "");
    }

    private BreakEven.Point atResale(BigDecimal value, BigDecimal withoutSale, BigDecimal kept) {
        return new BreakEven.Point(
                value, choice.rounded(withoutSale.subtract(value.multiply(kept))), choice.rounded(renting));
    }

    private static BreakEven none(String why) {
        return new BreakEven(List.of(), List.of(), why);
    }

    /**
     * By the rates' block prices in per cent of what they are, in hundredths. A dearer rate never makes a cheaper job, so
     * there is one crossing at most.
     */
    public BreakEven inRate() {
        Money cost = choice.rounded(owning);
        if (atRate(0, cost).saving().signum() > 0) {
            return none("owning is cheaper even where the days themselves cost nothing");
        }
        if (atRate(MOST_RATE, cost).saving().signum() < 0) {
            return none("renting is cheaper even at ten times the rates");
        }
        int low = 0;
        int high = MOST_RATE;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (atRate(middle, cost).saving().signum() > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        BreakEven.Point below = atRate(low, cost);
        BreakEven.Point above = below.saving().signum() == 0 ? below : atRate(high, cost);
        return new BreakEven(List.of(BreakEven.Crossing.between(below, above)), List.of(), "");
    }

    private BreakEven.Point atRate(int hundredths, Money cost) {
        BigDecimal percent = BigDecimal.valueOf(hundredths, 2);
        RentOrBuy moved = new RentOrBuy(
                choice.discountRate(),
                choice.terms(),
                choice.running(),
                choice.loan(),
                choice.jobs(),
                RentInstead.at(percent, choice.rates()),
                choice.rateChangePerYear());
        return new BreakEven.Point(percent, cost, moved.presentCostOfRenting());
    }
}
