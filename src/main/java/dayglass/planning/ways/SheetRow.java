package dayglass.planning.ways;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.cost.plan.Answer;
import dayglass.job.Way;
import dayglass.optics.Verdict;
import dayglass.planning.KeptCosting;
import dayglass.planning.glass.JudgedGlass;
import dayglass.planning.glass.SlotReport;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One way on the options sheet.
 *
 * @param problem why it could not be costed; empty text where it was
 */
public record SheetRow(Way.Id way, Described described, Picture picture, Costs costs, String problem) {

    /** How the way is called. */
    public record Described(String name, String note) {
        static Described of(Stored<Way.Id, Way> way) {
            return new Described(way.facts().name(), way.facts().note());
        }
    }

    /**
     * The picture that its own glass gives.
     *
     * @param slots one each slot of the job
     * @param glass all that it brings, each kind once
     * @param serving what of that serves a slot
     * @param remarks on its glass, and of its pieces that serve nothing
     */
    public record Picture(
            List<SlotReport> slots, List<JudgedGlass> glass, Set<JudgedGlass> serving, List<String> remarks) {
        public static final Picture NONE = new Picture(List.of(), List.of(), Set.of(), List.of());

        public Picture {
            slots = List.copyOf(slots);
            glass = List.copyOf(glass);
            serving = Set.copyOf(serving);
            remarks = List.copyOf(remarks);
        }

        /** The worst verdict of the slots that it serves, or of all where it serves none; empty where none was judged. */
        public Optional<Verdict> worst() {
            boolean serves = slots.stream().anyMatch(SlotReport::served);
            return slots.stream()
                    .filter(slot -> slot.served() || !serves)
                    .flatMap(slot -> slot.verdict().stream())
                    .reduce(Verdict::orWorse);
        }

        /** Slots for which it has glass that does not give the picture, and nothing else. */
        public long refused() {
            return slots.stream()
                    .filter(slot ->
                            slot.verdict().filter(Verdict.DOES_NOT_FIT::equals).isPresent())
                    .count();
        }

        /** The glass that decides the look: what serves, or all where nothing does. */
        private Stream<JudgedGlass> looked() {
            return glass.stream()
                    .filter(each -> serving.isEmpty() || serving.contains(each))
                    .filter(each -> each.look().score().isPresent());
        }

        /** The mean of the looks of the glass that serves, each piece of glass alike; empty where none is graded. */
        public Optional<BigDecimal> look() {
            BigDecimal sum = BigDecimal.ZERO;
            int count = 0;
            for (JudgedGlass each : looked().toList()) {
                sum = sum.add(each.look().score().orElseThrow().multiply(BigDecimal.valueOf(each.count())));
                count += each.count();
            }
            return count == 0
                    ? Optional.empty()
                    : Optional.of(sum.divide(BigDecimal.valueOf(count), MathContext.DECIMAL64));
        }

        /** The glass that comes least near to the looks wanted. */
        public Optional<JudgedGlass> lowest() {
            return looked().min(Comparator.comparing(each -> each.look().score().orElseThrow()));
        }
    }

    /**
     * What is known of its costs.
     *
     * @param cost empty where it could not be costed
     * @param bought where its costing does not say what it comes to by buying alone
     * @param payback empty where that is not worked out yet
     */
    public record Costs(Optional<Cost> cost, Optional<Bought> bought, Optional<Payback> payback) {
        static final Costs NONE = new Costs(Optional.empty(), Optional.empty(), Optional.empty());
    }

    public Optional<Cost> cost() {
        return costs.cost();
    }

    public Optional<Payback> payback() {
        return costs.payback();
    }

    /** What it comes to bought, within the cash limit or beyond it. */
    public Optional<Money> bought() {
        return cost().flatMap(cost -> cost.comparison().buyOnly().total())
                .or(() -> costs.bought().map(Bought::total));
    }

    /**
     * What it costs, all from one kept costing.
     *
     * @param payable the cash needed
     * @param withinBudget whether the cash needed is; empty where the brief has no budget
     * @param taken what the best mix takes
     * @param completions what other options complete
     */
    public record Cost(
            KeptCosting.Id costing,
            Answer.Comparison comparison,
            boolean optimal,
            Money payable,
            Optional<Boolean> withinBudget,
            List<Taken> taken,
            List<Completion> completions) {
        public Cost {
            taken = List.copyOf(taken);
            completions = List.copyOf(completions);
        }

        /** The best mix. */
        public Money total() {
            return comparison.best().total().orElseThrow();
        }
    }

    SheetRow with(Payback found) {
        return new SheetRow(
                way, described, picture, new Costs(costs.cost(), costs.bought(), Optional.of(found)), problem);
    }
}
