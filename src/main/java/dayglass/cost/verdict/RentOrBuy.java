package dayglass.cost.verdict;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.ownership.Growth;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.Ownership;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The choice: own something over its term, or rent it for the same jobs.
 *
 * @param jobs of any number of kinds; of none, nothing is rented, and there is no break-even
 * @param rateChangePerYear by which rents rise each year after the first; negative where they fall
 */
public record RentOrBuy(
        Percent discountRate,
        PurchaseTerms terms,
        Ownership.Running running,
        Optional<Ownership.Loan> loan,
        List<JobKind> jobs,
        List<RentalTerms> rates,
        Percent rateChangePerYear) {

    private static final int YEAR = 12;
    private static final BigDecimal TWELVE = BigDecimal.valueOf(YEAR);
    /** A tie that came out a hair below itself is put back before the rounding. */
    private static final int DECIMALS_KEPT = 45;

    public RentOrBuy {
        jobs = List.copyOf(jobs);
        rates = List.copyOf(rates);
    }

    /** What one kind of job comes to: one of them at the least rent, and those of a year. */
    public record Rented(JobKind kind, Money oneJob, Money aYear) {}

    public Currency currency() {
        return terms.price().currency();
    }

    /** Days used a year, by all jobs. */
    public BigDecimal daysPerYear() {
        return jobs.stream().map(JobKind::daysPerYear).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public Ownership ownership() {
        return new Ownership(terms, discountRate, daysPerYear(), running, loan);
    }

    public RentOrBuy soldAfter(int months) {
        return new RentOrBuy(discountRate, terms.soldAfter(months), running, loan, jobs, rates, rateChangePerYear);
    }

    /** By kind, in the order given. */
    public List<Rented> rented() {
        RentInstead rent = new RentInstead(currency(), rates);
        return jobs.stream()
                .map(kind -> {
                    Money oneJob = rent.oneJob(kind.schedule());
                    return new Rented(kind, oneJob, rounded(oneJob.major().multiply(kind.perYear())));
                })
                .toList();
    }

    /** The rent of a year at today's rates, unrounded, in major units. */
    BigDecimal yearOfRent() {
        return yearOf(rented());
    }

    private static BigDecimal yearOf(List<Rented> rented) {
        return rented.stream()
                .map(each -> each.oneJob().major().multiply(each.kind().perYear()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The rent of each month from month 1, a year's spread evenly. */
    public List<BigDecimal> rentByMonth() {
        return byMonth(yearOfRent(), terms.termMonths());
    }

    List<BigDecimal> byMonth(BigDecimal aYear, int months) {
        BigDecimal growth = BigDecimal.ONE.add(rateChangePerYear.fraction());
        List<BigDecimal> all = new ArrayList<>();
        BigDecimal year = aYear;
        while (all.size() < months) {
            BigDecimal aMonth = year.divide(TWELVE, 2 * DECIMALS_KEPT, RoundingMode.HALF_EVEN);
            all.addAll(Collections.nCopies(Math.min(YEAR, months - all.size()), aMonth));
            year = year.multiply(growth).setScale(2 * DECIMALS_KEPT, RoundingMode.HALF_EVEN);
        }
        return all;
    }

    /** What rent of so much a year costs over the term at present value, unrounded. */
    BigDecimal presentRent(BigDecimal aYear) {
        int months = terms.termMonths();
        return present(byMonth(aYear, months), Growth.by(discountRate).presentByMonth(months));
    }

    static BigDecimal present(List<BigDecimal> byMonth, BigDecimal[] present) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int month = 1; month <= byMonth.size(); month++) {
            sum = sum.add(byMonth.get(month - 1).multiply(present[month]));
        }
        return sum;
    }

    /** The cash flow of owning. */
    public CashFlow owning() {
        return CashFlow.of(ownership());
    }

    /** What owning costs over the term at present value. */
    public Money presentCostOfOwning() {
        return owning().presentCost();
    }

    /** What renting costs over the term at present value, rounded once, half up. */
    public Money presentCostOfRenting() {
        return rounded(presentRent(yearOfRent()));
    }

    /** The same by year of the term; the years add up to the whole. */
    public List<Money> presentCostOfRentingByYear() {
        List<BigDecimal> rent = rentByMonth();
        BigDecimal[] present = Growth.by(discountRate).presentByMonth(rent.size());
        List<Money> years = new ArrayList<>();
        Money told = Money.zero(currency());
        BigDecimal sum = BigDecimal.ZERO;
        for (int month = 1; month <= rent.size(); month++) {
            sum = sum.add(rent.get(month - 1).multiply(present[month]));
            if (month % YEAR == 0 || month == rent.size()) {
                years.add(rounded(sum).minus(told));
                told = rounded(sum);
            }
        }
        return years;
    }

    /**
     * The same of one choice of many that go by the same rates.
     *
     * @param rented what {@link #rented} says
     */
    public Money presentCostOfRenting(List<Rented> rented, Growths growths) {
        int months = terms.termMonths();
        return rounded(present(byMonth(yearOf(rented), months), growths.presentByMonth(discountRate, months)));
    }

    /** The one rounding of what was worked out in major units: half up, a tie away from zero. */
    Money rounded(BigDecimal major) {
        return Money.of(
                currency(),
                major.setScale(DECIMALS_KEPT, RoundingMode.HALF_EVEN)
                        .setScale(currency().decimals(), RoundingMode.HALF_UP));
    }
}
