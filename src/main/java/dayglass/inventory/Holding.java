package dayglass.inventory;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;

/** How the house comes to hold a unit. */
public sealed interface Holding {
    /**
     * It is the house's own.
     *
     * @param boughtOn when; the price with it, and the numbers of order and invoice
     */
    record Owned(Optional<LocalDate> boughtOn, Optional<Money> price, String order, String invoice) implements Holding {
        public static final Owned UNRECORDED = new Owned(Optional.empty(), Optional.empty(), "", "");
    }

    /**
     * It is rented from somebody and free only up to what is paid for.
     *
     * @param owner from whom
     * @param agreement the number of the agreement
     * @param paidUpTo the last day that is paid for
     * @param dueBackOn the day on which it must be given back
     * @param lateDay what each day late costs
     */
    record RentedIn(
            String owner,
            String agreement,
            LocalDate from,
            LocalDate paidUpTo,
            LocalDate dueBackOn,
            Optional<Money> lateDay)
            implements Holding {}

    /** Somebody else's, let through the house until a day, or until further notice. */
    record Consigned(String owner, String agreement, LocalDate from, Optional<LocalDate> until) implements Holding {}

    default <R> R fold(Function<Owned, R> owned, Function<RentedIn, R> rentedIn, Function<Consigned, R> consigned) {
        if (this instanceof Owned it) {
            return owned.apply(it);
        }
        if (this instanceof RentedIn it) {
            return rentedIn.apply(it);
        }
        return consigned.apply((Consigned) this);
    }

    /** As it is written: {@code rented in}. */
    default String word() {
        return fold(owned -> "owned", rentedIn -> "rented in", consigned -> "consigned");
    }
}
