package dayglass.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.BudgetRate;
import java.util.List;
import java.util.Optional;

/**
 * By what rules the desk prices, promises and charges. They are the house's own; none of them is advice on tax or
 * insurance.
 *
 * @param markUp what is added to the cost of what is rented in for a customer
 * @param floor the least share of the card's hire that anybody but an owner may go down to
 * @param validDays how long a quote stands, where nothing else is said
 * @param deposit asked for as a share of the replacement value
 * @param lateDay what a day late costs, as a share of the price of a day
 * @param cleaning what cleaning costs, where there is a usual price
 * @param taxes on what is charged beside the rate card
 * @param notices what a cancellation costs as a share of the price, by days of notice; the longest first
 * @param budgetRates at which suppliers' cards in other currencies are converted, one a currency
 * @param terms what the papers say at their end
 */
public record DeskRules(
        Percent markUp,
        Percent floor,
        int validDays,
        Percent deposit,
        Percent lateDay,
        Optional<Money> cleaning,
        List<Tax> taxes,
        List<Notice> notices,
        List<BudgetRate> budgetRates,
        String terms) {
    /** Round figures to begin with; a house sets its own. */
    public static final DeskRules USUAL = new DeskRules(
            Percent.of("20"),
            Percent.of("80"),
            14,
            Percent.ZERO,
            Percent.of("100"),
            Optional.empty(),
            List.of(),
            List.of(new Notice(7, Percent.ZERO), new Notice(2, Percent.of("50")), new Notice(0, Percent.of("100"))),
            List.of(),
            "");

    public DeskRules {
        taxes = List.copyOf(taxes);
        notices = List.copyOf(notices);
        budgetRates = List.copyOf(budgetRates);
    }

    /** A tax by its code. */
    public record Tax(String code, Percent percent) {}

    /** A cancellation at least so many days before the first day of use costs this share. */
    public record Notice(int days, Percent percent) {}

    /** The rate of a currency, where the house has set one. */
    public Optional<BudgetRate> budgetRate(Currency currency) {
        return budgetRates.stream()
                .filter(rate -> rate.currency().equals(currency))
                .findFirst();
    }

    /** What a cancellation with so many days of notice costs; the whole where no rule reaches so far down. */
    public Percent atNotice(long days) {
        return notices.stream()
                .filter(notice -> days >= notice.days())
                .max(java.util.Comparator.comparingInt(Notice::days))
                .map(Notice::percent)
                .orElse(Percent.of("100"));
    }

    /** There is one set of rules. */
    public record Id(long number) implements dayglass.base.Id {
        public static final Id ONLY = new Id(1);
    }
}
