package dayglass.cost.plan;

import dayglass.base.Money;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.rental.RentalTerms.Block;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

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
        return searched(Resolved.of(question), stop, stop)
                .flatMap(search -> search.plan()
                        .map(plan -> new Best(
                                new Money(question.currency(), plan.total()),
                                new Money(question.currency(), search.bound().min(plan.total())))));
    }

    /**
     * The rental periods of the cheapest plan, without comparison or explanation.
     *
     * @param stop ends the search for a cheaper plan, not that for a first one
     * @return empty where no plan exists
     */
    public static Optional<List<Choice.Rent>> periods(Question question, StopSignal stop) {
        Resolved resolved = Resolved.of(question);
        return searched(resolved, () -> false, stop)
                .flatMap(PlanSearch::plan)
                .map(plan -> AnswerBuilder.periods(resolved, plan));
    }

    /**
     * The search at its end; empty where nothing can cover the question.
     *
     * @param first ends the search for any plan at all
     * @param cheaper ends that for a cheaper one
     */
    private static Optional<PlanSearch> searched(Resolved resolved, StopSignal first, StopSignal cheaper) {
        if (!resolved.coverable()) {
            return Optional.empty();
        }
        PlanSearch search = new PlanSearch(resolved);
        search.begin(first);
        search.run(() -> cheaper.stopped() && (first.stopped() || search.plan().isPresent()), Long.MAX_VALUE);
        return Optional.of(search);
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
        int[][] missing = resolved.shortages();
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

    /** The rows of the comparison, each solved. */
    static final class Rows {
        /** So many periods in memory at once, and no more: beyond, the rows are searched one after the other. */
        private static final long MOST_PERIODS = 25_000_000;

        private final Resolved resolved;
        private final Optional<PlanSearch.Result> dayRate;
        private final Optional<PlanSearch.Result> weekRate;
        private final Optional<PlanSearch.Result> rent;
        private final Optional<PlanSearch.Result> buy;
        final PlanSearch.Result best;

        Rows(Resolved resolved, StopSignal stop) {
            this.resolved = resolved;
            Resolved renting = resolved.withPurchases(all -> List.of());
            List<Optional<Resolved>> questions = List.of(
                    Optional.of(resolved),
                    coverable(resolved.purchases.isEmpty() ? Optional.empty() : Optional.of(renting)),
                    coverable(Optional.of(resolved.withoutRentals())),
                    coverable(Optional.of(renting.withTerms(terms -> only(terms, block -> block.days() == 1)))),
                    coverable(Optional.of(renting.withTerms(terms -> only(terms, block -> block.days() == 7)))));
            List<Optional<PlanSearch.Result>> results = solve(questions, stop);
            best = results.get(0).orElseThrow();
            rent = resolved.purchases.isEmpty() ? Optional.of(best) : results.get(1);
            buy = results.get(2);
            dayRate = results.get(3);
            weekRate = results.get(4);
        }

        private static Optional<Resolved> coverable(Optional<Resolved> question) {
            return question.filter(Resolved::coverable);
        }

        /** All have a first plan before any is searched through, unless that takes too much memory. */
        private List<Optional<PlanSearch.Result>> solve(List<Optional<Resolved>> questions, StopSignal stop) {
            long periods = (long) resolved.rentals.size() * resolved.days * resolved.days / 2;
            if (periods * questions.size() > MOST_PERIODS) {
                return IntStream.range(0, questions.size())
                        .mapToObj(row -> questions.get(row).map(each -> alone(each, row == 0, stop)))
                        .toList();
            }
            List<Optional<PlanSearch>> searches = questions.stream()
                    .map(question -> question.map(each -> begun(each, stop)))
                    .toList();
            return searches.stream()
                    .map(search -> search.map(each -> finished(each, stop)))
                    .toList();
        }

        /** Where time is up, a large row that is not the plan itself is left with the bound that nothing is negative. */
        private static PlanSearch.Result alone(Resolved resolved, boolean plan, StopSignal stop) {
            return !plan && stop.stopped() && !resolved.rentals.isEmpty()
                    ? new PlanSearch.Result(false, false, Optional.empty(), BigInteger.ZERO)
                    : finished(begun(resolved, stop), stop);
        }

        private static PlanSearch begun(Resolved resolved, StopSignal stop) {
            PlanSearch search = new PlanSearch(resolved);
            search.begin(stop);
            return search;
        }

        private static PlanSearch.Result finished(PlanSearch search, StopSignal stop) {
            search.run(stop, Long.MAX_VALUE);
            return search.result();
        }

        private static Optional<RentalTerms> only(RentalTerms terms, Predicate<Block> which) {
            List<Block> blocks = terms.blocks().stream()
                    .filter(which)
                    .filter(block -> block.startsOn().isEmpty())
                    .toList();
            return blocks.isEmpty() ? Optional.empty() : Optional.of(terms.withBlocksOnly(blocks));
        }

        /** The best plan of the rows that are plans of the whole question too. */
        Optional<Plan> bestPlan() {
            return least(List.of(Optional.of(best), rent, buy));
        }

        private static Optional<Plan> least(List<Optional<PlanSearch.Result>> results) {
            return results.stream()
                    .flatMap(Optional::stream)
                    .flatMap(result -> result.plan().stream())
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

        private Answer.Row row(Optional<PlanSearch.Result> search) {
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
