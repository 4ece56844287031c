package dayglass.inventory.service;

import dayglass.inventory.Unit;
import java.time.LocalDate;
import java.util.Optional;

/**
 * When a unit is to be serviced: by months, by days out, or by whichever comes first.
 *
 * @param everyMonths of the calendar, at least 1
 * @param everyDaysOut days out at work, at least 1
 * @param lastDoneOn from when both are counted, until a visit to the bench that is finished later takes its place
 */
public record ServicePlan(
        Unit.Id unit, Optional<Integer> everyMonths, Optional<Integer> everyDaysOut, LocalDate lastDoneOn) {
    public static final int MOST_MONTHS = 600;
    public static final int MOST_DAYS_OUT = 10_000;

    public ServicePlan {
        if (everyMonths.isEmpty() && everyDaysOut.isEmpty()) {
            throw new IllegalArgumentException("a service plan says months, days out, or both");
        }
    }

    /** The number of a plan. */
    public record Id(long number) implements dayglass.base.Id {}
}
