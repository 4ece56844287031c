package dayglass.cost.plan;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.rental.RentalCharge;
import java.time.LocalDate;

/** One thing that the plan takes: a rental period of one copy, one purchase, or an owned unit that serves. */
public sealed interface Choice {
    /** The id of the option. */
    String option();

    /** What it adds to the plan's total. */
    Money total();

    /** One copy held over {@code dates}. */
    record Rent(String option, String supplier, DateRange dates, RentalCharge charge) implements Choice {
        @Override
        public Money total() {
            return charge.total();
        }
    }

    /**
     * One copy bought.
     *
     * @param from the day from which it serves
     * @param spare it serves no slot and is bought only because it pays for itself
     */
    record Buy(String option, String supplier, LocalDate from, Money outlay, Money netCost, boolean spare)
            implements Choice {
        @Override
        public Money total() {
            return netCost;
        }
    }

    /** An owned unit that serves a slot on some day. */
    record Own(String option, Money total) implements Choice {}
}
