package dayglass.planning.ways;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.job.Way;
import dayglass.optics.Verdict;
import dayglass.planning.KeptCosting;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One way on the options sheet.
 *
 * @param cost empty where it could not be costed
 * @param payback empty where that is not worked out yet
 * @param problem why it could not be costed; empty text where it was
 */
public record SheetRow(
        Way.Id way,
        Described described,
        Picture picture,
        Optional<Cost> cost,
        Optional<Payback> payback,
        String problem) {

    /** How the way is called. */
    public record Described(String name, String note) {}

    /**
     * The picture that its own glass gives.
     *
     * @param slots one each slot of the job
     * @param remarks on its glass, and of its pieces that serve nothing
     */
    public record Picture(List<SlotReport> slots, List<JudgedGlass> glass, List<String> remarks) {
        public static final Picture NONE = new Picture(List.of(), List.of(), List.of());

        public Picture {
            slots = List.copyOf(slots);
            glass = List.copyOf(glass);
            remarks = List.copyOf(remarks);
        }

        /** The worst verdict of its slots; empty where none was judged. */
        public Optional<Verdict> worst() {
            return slots.stream().flatMap(slot -> slot.verdict().stream()).reduce(Verdict::orWorse);
        }

        /** The mean of the looks of its glass, each piece of glass alike; empty where none is graded. */
        public Optional<BigDecimal> look() {
            BigDecimal sum = BigDecimal.ZERO;
            int count = 0;
            for (JudgedGlass each : glass) {
                if (each.look().score().isPresent()) {
                    sum = sum.add(each.look().score().get().multiply(BigDecimal.valueOf(each.count())));
                    count += each.count();
                }
            }
            return count == 0
                    ? Optional.empty()
                    : Optional.of(sum.divide(BigDecimal.valueOf(count), MathContext.DECIMAL64));
        }

        /** The glass that comes least near to the looks wanted. */
        public Optional<JudgedGlass> lowest() {
            return glass.stream()
                    .filter(each -> each.look().score().isPresent())
                    .min(Comparator.comparing(each -> each.look().score().orElseThrow()));
        }
    }

    /**
     * What it costs, all from one kept costing.
     *
     * @param payable the cash needed
     * @param withinBudget whether the cash needed is; empty where the brief has no budget
     * @param completions what other options complete
     */
    public record Cost(
            KeptCosting.Id costing,
            Answer.Comparison comparison,
            boolean optimal,
            Money payable,
            Optional<Boolean> withinBudget,
            List<Completion> completions) {
        public Cost {
            completions = List.copyOf(completions);
        }

        /** The best mix. */
        public Money total() {
            return comparison.best().total().orElseThrow();
        }
    }

    /**
     * A slot that others complete.
     *
     * @param options that do
     */
    public record Completion(String slot, int days, List<String> options) {
        public Completion {
            options = List.copyOf(options);
        }
    }

    SheetRow with(Payback found) {
        return new SheetRow(way, described, picture, cost, Optional.of(found), problem);
    }
}
