package dayglass.cost.plan;

import dayglass.base.Money;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.rental.RentalTerms.Block;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The least-cost plan of a question. */
public final class LeastCost {
    private LeastCost() {}

    /** The least total found and what no plan can beat, without comparison or explanation. */
    public record Best(Money total, Money lowerBound) {}

    /**
     * The plan's total alone.
     *
     * @return empty where no plan exists or none was found in time
     */
    public static Optional<Best> best(Question question, StopSignal stop) {
        Resolved resolved = Resolved.of(question);
        if (!shortages(resolved).isEmpty()) {
            return Optional.empty();
        }
        PlanSearch search = new PlanSearch(resolved);
        search.begin(stop);
        search.run(stop, Long.MAX_VALUE);
        return search.plan()
                .map(plan -> new Best(
                        new Money(question.currency(), plan.total()),
                        new Money(question.currency(), search.bound().min(plan.total()))));
    }

    /**
     * Finds the cheapest plan, the comparison and the explanation.
     *
     * @param stop when it says so, the best plan found and its true bound are returned
     */
    public static Costing solve(Question question, StopSignal stop) {
        Resolved resolved = Resolved.of(question);
        List<Costing.Shortage> shortages = shortages(resolved);
        if (!shortages.isEmpty()) {
            return new Costing.Impossible(shortages, false);
        }
        Rows rows = new Rows(resolved, stop);
        if (rows.best.impossible()) {
            return new Costing.Impossible(List.of(), rows.best.cashAlone());
        }
        Optional<Plan> plan = rows.bestPlan();
        return plan.isEmpty()
                ? new Costing.OutOfTime()
                : new Costing.Planned(AnswerBuilder.answer(resolved, plan.get(), rows, stop));
    }

    private static List<Costing.Shortage> shortages(Resolved resolved) {
        int[][] missing = resolved.shortages(true);
        List<Costing.Shortage> shortages = new ArrayList<>();
        for (int day = 0; day < resolved.days; day++) {
            for (int slot = 0; slot < missing.length; slot++) {
                if (missing[slot][day] > 0) {
                    shortages.add(new Costing.Shortage(
                            resolved.slots.get(slot), resolved.schedule.dateOf(day), missing[slot][day]));
                }
            }
        }
        return shortages;
    }

    /** The searches behind the comparison. */
    static final class Rows {
        private final Resolved resolved;
        private final Optional<PlanSearch> dayRate;
        private final Optional<PlanSearch> weekRate;
        private final Optional<PlanSearch> rent;
        private final Optional<PlanSearch> buy;
        final PlanSearch best;

        Rows(Resolved resolved, StopSignal stop) {
            this.resolved = resolved;
            Resolved renting = resolved.withPurchases(all -> List.of());
            best = new PlanSearch(resolved);
            best.begin(stop);
            rent = resolved.purchases.isEmpty() ? Optional.of(best) : begun(renting, stop);
            dayRate = begun(renting.withTerms(terms -> only(terms, block -> block.days() == 1)), stop);
            weekRate = begun(renting.withTerms(terms -> only(terms, block -> block.days() == 7)), stop);
            buy = begun(resolved.withoutRentals(), stop);
            best.run(stop, Long.MAX_VALUE);
            for (Optional<PlanSearch> row : List.of(rent, buy, dayRate, weekRate)) {
                row.ifPresent(search -> search.run(stop, Long.MAX_VALUE));
            }
        }

        private static Optional<PlanSearch> begun(Resolved resolved, StopSignal stop) {
            if (!shortages(resolved).isEmpty()) {
                return Optional.empty();
            }
            PlanSearch search = new PlanSearch(resolved);
            search.begin(stop);
            return Optional.of(search);
        }

        private static Optional<RentalTerms> only(RentalTerms terms, Predicate<Block> which) {
            List<Block> blocks = terms.blocks().stream()
                    .filter(which)
                    .filter(block -> block.startsOn().isEmpty())
                    .toList();
            return blocks.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new RentalTerms(
                            blocks,
                            Optional.empty(),
                            terms.dayFactors(),
                            terms.longHire(),
                            terms.minimumCharge(),
                            terms.perTrip(),
                            terms.addOns()));
        }

        /** The best plan of the rows that are plans of the whole question too. */
        Optional<Plan> bestPlan() {
            return least(List.of(Optional.of(best), rent, buy));
        }

        private Optional<Plan> least(List<Optional<PlanSearch>> searches) {
            return searches.stream()
                    .flatMap(Optional::stream)
                    .flatMap(search -> search.plan().stream())
                    .min(java.util.Comparator.comparing(Plan::total));
        }

        Answer.Comparison comparison(Plan plan) {
            boolean owned = java.util.Arrays.stream(resolved.open)
                    .allMatch(row -> java.util.Arrays.stream(row).allMatch(count -> count == 0));
            Answer.Row ownedOnly = owned ? row(BigInteger.ZERO, BigInteger.ZERO) : nothing();
            return new Answer.Comparison(
                    ownedOnly, row(dayRate), row(weekRate), row(rent), row(buy), row(plan.total(), bound(plan)));
        }

        /** What no plan can beat. */
        BigInteger bound(Plan plan) {
            return best.bound().min(plan.total());
        }

        private Answer.Row row(Optional<PlanSearch> search) {
            if (search.isEmpty() || search.get().impossible()) {
                return nothing();
            }
            BigInteger bound = search.get().bound();
            return search.get()
                    .plan()
                    .map(found -> row(found.total(), bound.min(found.total())))
                    .orElse(new Answer.Row(Optional.empty(), Optional.of(money(bound))));
        }

        private Answer.Row row(BigInteger total, BigInteger bound) {
            return new Answer.Row(Optional.of(money(total)), Optional.of(money(bound)));
        }

        private static Answer.Row nothing() {
            return new Answer.Row(Optional.empty(), Optional.empty());
        }

        private Money money(BigInteger minor) {
            return new Money(resolved.question.currency(), minor);
        }
    }
}
