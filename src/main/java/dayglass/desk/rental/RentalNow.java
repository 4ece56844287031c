package dayglass.desk.rental;

import dayglass.base.Stored;
import dayglass.inventory.booking.Occupation;
import java.util.List;
import java.util.Map;

/**
 * A rental with its bookings as they stand.
 *
 * @param bookings of the units that stand in it and of those that gave way
 */
public record RentalNow(
        Stored<Rental.Id, Rental> rental, Map<Occupation.Id, Stored<Occupation.Id, Occupation>> bookings) {
    public RentalNow {
        bookings = Map.copyOf(bookings);
    }

    public Rental facts() {
        return rental.facts();
    }

    public Stored<Occupation.Id, Occupation> booking(Rental.Placed placed) {
        return java.util.Objects.requireNonNull(bookings.get(placed.booking()));
    }

    /** Out of the house on this rental now. */
    public boolean isOut(Rental.Placed placed) {
        return booking(placed).facts().handling().isOut();
    }

    public boolean wentOut(Rental.Placed placed) {
        return booking(placed).facts().handling().wentOut().isPresent();
    }

    public boolean cameBack(Rental.Placed placed) {
        return booking(placed).facts().handling().cameBack().isPresent();
    }

    /** Out as long as one unit is; back when all that stand in it are back. */
    public State state() {
        if (facts().ending().isPresent()) {
            return facts().ending().get().cancelled() ? State.CANCELLED : State.SETTLED;
        }
        List<Rental.Placed> standing = facts().standing();
        if (facts().placed().stream().anyMatch(this::isOut)) {
            return State.OUT;
        }
        if (!standing.isEmpty() && standing.stream().allMatch(this::cameBack)) {
            return State.BACK;
        }
        return standing.stream().anyMatch(this::wentOut) ? State.OUT : State.CONFIRMED;
    }
}
