package dayglass.cost.ownership;

import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A purchase as its owner lives with it: the terms, what using it costs, and how it is paid for.
 *
 * @param discountRate a year
 * @param daysUsedPerYear by the owner; days let to others stand in the terms
 */
public record Ownership(
        PurchaseTerms terms, Percent discountRate, BigDecimal daysUsedPerYear, Running running, Optional<Loan> loan) {

    /**
     * What depends on use.
     *
     * @param perDayUsed for each day of the owner's own use
     * @param wearPerDayLet for each day let to others, off the letting income
     * @param service by days out, the owner's own and those let together
     */
    public record Running(Money perDayUsed, Money wearPerDayLet, Optional<ServiceByDays> service) {}

    /** Falls due each time so many days out are full; one that falls due in the month of the sale is left out. */
    public record ServiceByDays(int everyDaysOut, Money cost) {}

    /** Borrowed on the day of the purchase and paid back in level months; what is left at the sale is paid back then. */
    public record Loan(Money amount, Percent ratePerYear, int months) {}

    /** Days out a year: used and let. */
    BigDecimal daysOutPerYear() {
        return daysUsedPerYear.add(
                terms.letting().map(PurchaseTerms.Letting::daysPerYear).orElse(BigDecimal.ZERO));
    }

    /** Whether nothing but the outlay is paid and nothing comes back, so that it costs the same however it is used. */
    public boolean isFixedCost() {
        CashFlow flow = CashFlow.of(this);
        return loan.isEmpty()
                && running.perDayUsed().signum() == 0
                && running.service().isEmpty()
                && flow.sums().stream().skip(1).allMatch(sum -> sum.signum() == 0);
    }

    public Ownership usedOn(BigDecimal daysPerYear) {
        return new Ownership(terms, discountRate, daysPerYear, running, loan);
    }
}
