package dayglass.cost.plan;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A plan with its proof and its explanation.
 *
 * @param total the plan's cost: rentals as charged, purchases at their net cost; may be negative
 * @param lowerBound no plan costs less
 * @param optimal {@code lowerBound} equals {@code total}
 * @param coverage what serves each needed slot on each day, by date, then slot as first asked for
 * @param cash what is payable, by date; its sum can be posted, {@code total} cannot
 */
public record Answer(
        Money total,
        Money lowerBound,
        boolean optimal,
        Comparison comparison,
        List<Choice> choices,
        List<Coverage> coverage,
        List<Cash> cash,
        Explanation explanation) {

    public Answer {
        choices = List.copyOf(choices);
        coverage = List.copyOf(coverage);
        cash = List.copyOf(cash);
    }

    /** What must be paid in all. */
    public Money payable() {
        return cash.stream().map(Cash::amount).reduce(Money.zero(total.currency()), Money::plus);
    }

    /** The least totals when only some ways are allowed. */
    public record Comparison(Row ownedOnly, Row dayRateOnly, Row weekRateOnly, Row rentOnly, Row buyOnly, Row best) {}

    /**
     * One row of the comparison.
     *
     * @param total the best found, or empty where it cannot be done or nothing was found in time
     * @param bound what no plan of this kind can beat; empty where there is no plan at all
     */
    public record Row(Optional<Money> total, Optional<Money> bound) {
        /** True where time ran out on this row before it was proved. */
        public boolean cutShort() {
            return bound.isPresent() && !bound.equals(total);
        }
    }

    /** The options that serve one slot on one day; an option stands once for each copy that serves. */
    public record Coverage(LocalDate date, String slot, List<String> by) {
        public Coverage {
            by = List.copyOf(by);
        }
    }

    /** A payment: a rental on its first day, a purchase's outlay on the day it is available from. */
    public record Cash(LocalDate date, Money amount, String option) {}
}
