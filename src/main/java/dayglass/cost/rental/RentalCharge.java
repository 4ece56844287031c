package dayglass.cost.rental;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.List;

/**
 * What a rental period costs, line by line: total = hire - discount + raisedToMinimum + trip + add-ons.
 *
 * @param blocks laid end to end; their prices add up to {@code hire}
 * @param discount taken off for the length of the hire, not negative
 * @param raisedToMinimum what lifts the hire to the minimum charge, not negative
 */
public record RentalCharge(
        List<BlockUsed> blocks,
        Money hire,
        Money discount,
        Money raisedToMinimum,
        Money trip,
        List<AddOnCharge> addOns,
        Money total) {

    public RentalCharge {
        blocks = List.copyOf(blocks);
        addOns = List.copyOf(addOns);
    }

    /**
     * One block as charged.
     *
     * @param extraDay it is the cheaper day after a number of days
     */
    public record BlockUsed(LocalDate from, int days, Money price, boolean extraDay) {}

    public record AddOnCharge(String name, Money amount) {}
}
