package dayglass.cost.plan;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Why the plan is what it is.
 *
 * @param reasons one a choice, in the order of {@link Answer#choices}
 * @param slotDays what each slot costs on each day; with {@code unshared} they add up to the total
 * @param unshared the choices that serve no slot-day, together
 */
public record Explanation(List<Reason> reasons, List<SlotDay> slotDays, Money unshared) {
    public Explanation {
        reasons = List.copyOf(reasons);
        slotDays = List.copyOf(slotDays);
    }

    /**
     * Why one choice was taken.
     *
     * @param rivals other ways to charge the same period, dearest last; empty for what is bought or owned
     * @param without the least total when this choice is forbidden; empty where not worked out in the time given
     */
    public record Reason(List<Rival> rivals, Optional<Without> without) {
        public Reason {
            rivals = List.copyOf(rivals);
        }
    }

    /** The same period charged by one kind of block alone, e.g. {@code 7-day blocks only}. */
    public record Rival(String blocks, Money hire) {}

    /**
     * The plan without a choice.
     *
     * @param total the least total then, or empty where no plan is left
     * @param proved the total is the least; otherwise it is the best found
     */
    public record Without(Optional<Money> total, boolean proved) {}

    /** A slot's cost on a day: its even share of each choice that serves it. */
    public record SlotDay(LocalDate date, String slot, Money amount) {}
}
