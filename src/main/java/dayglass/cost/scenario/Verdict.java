package dayglass.cost.scenario;

import dayglass.base.Money;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.ownership.NetCost;
import dayglass.cost.ownership.RateOfReturn;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.verdict.BreakEven;
import dayglass.cost.verdict.BreakEvenRule;
import dayglass.cost.verdict.BreakEvens;
import dayglass.cost.verdict.NestedPermits;
import dayglass.cost.verdict.RentInstead;
import dayglass.cost.verdict.RentOrBuy;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * The whole answer, so that page, REST and command line show the same.
 *
 * @param owning the months of owning
 * @param against the same with the rent that owning saves
 * @param findings of the draws done; empty where nothing is drawn, or it was stopped before the first
 * @param rule the break-even rule along the history; empty without one
 * @param nested the rule of nested permits along it; empty without one, or where no rate has a day
 * @param returns the rates of return a month of {@code against}
 */
public record Verdict(
        VerdictQuestion question,
        CashFlow owning,
        CashFlow against,
        RateOfReturn returns,
        Money costOfOwning,
        Money costOfRenting,
        List<RentOrBuy.Rented> rented,
        BreakEven inDaysPerYear,
        BreakEven inMonthsOwned,
        BreakEven inResaleValue,
        BreakEven inRate,
        Optional<BreakEvenRule.Ruling> rule,
        Optional<NestedPermits.Ruling> nested,
        Optional<Findings> findings) {

    public static final List<String> CAUTIONS = List.of(
            "Figures are an aid to planning and say what the numbers you gave come to; they are no tax, legal or"
                    + " insurance advice.",
            "Depreciation is for the books: whether a method or a table may be used where you pay tax is for your"
                    + " accountant to say.",
            "Rent includes what a house does for you: a replacement on failure, upkeep, free choice. Owning does not.",
            "Heavy glass needs its own support and a second pair of hands; test the actual lens on the actual camera.");

    /** Everything, with the draws that were done before it was stopped. Progress is told from any thread as draws done. */
    public static Verdict of(VerdictQuestion question, StopSignal stop, IntConsumer progress) {
        if (question.uncertainty().isEmpty()) {
            return of(question, Optional.empty());
        }
        VerdictQuestion.Unsure unsure = question.uncertainty().get();
        return of(
                question,
                Uncertainty.of(new Scenario(question.choice(), unsure.spreads()), unsure.sample(), stop, progress));
    }

    private static Verdict of(VerdictQuestion question, Optional<Findings> findings) {
        RentOrBuy choice = question.choice();
        CashFlow owning = choice.owning();
        CashFlow against = owning.saving(choice.rentByMonth());
        BreakEvens breakEvens = new BreakEvens(choice);
        return new Verdict(
                question,
                owning,
                against,
                RateOfReturn.of(against.sums()),
                owning.presentCost(),
                choice.presentCostOfRenting(),
                choice.rented(),
                breakEvens.inDaysPerYear(),
                breakEvens.inMonthsOwned(),
                breakEvens.inResaleValue(),
                breakEvens.inRate(),
                question.history().isEmpty()
                        ? Optional.empty()
                        : Optional.of(BreakEvenRule.along(NetCost.outlay(choice.terms()), question.history())),
                nested(question),
                findings);
    }

    private static Optional<NestedPermits.Ruling> nested(VerdictQuestion question) {
        List<NestedPermits.Permit> permits =
                RentInstead.permits(question.choice().rates());
        return question.history().isEmpty() || permits.isEmpty()
                ? Optional.empty()
                : Optional.of(new NestedPermits(
                                permits, NetCost.outlay(question.choice().terms()))
                        .along(BreakEvenRule.days(question.history())));
    }

    /** What renting costs above owning; below zero where renting is cheaper. */
    public Money saving() {
        return costOfRenting.minus(costOfOwning);
    }

    /** In a word: {@code buy}, {@code rent} or {@code the same}. */
    public String word() {
        return saving().signum() > 0 ? "buy" : saving().signum() < 0 ? "rent" : "the same";
    }

    /** Whether the guarantee of the rules holds for this purchase: a fixed cost, without running costs and resale. */
    public boolean ruleIsGuaranteed() {
        return question.choice().ownership().isFixedCost();
    }
}
