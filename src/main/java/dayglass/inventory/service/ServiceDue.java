package dayglass.inventory.service;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When a unit's service falls due, as far as its bookings tell. On that day it can still go out; the day after it is
 * overdue.
 *
 * @param lastDoneOn the later of the day that its plan says and the end of the last finished visit to the bench
 * @param daysOut days out after that, today among them
 * @param byMonths the day on which the months are over
 * @param byDaysOut the day on which the days out are reached; empty where so many are not booked
 */
public record ServiceDue(
        LocalDate lastDoneOn, int daysOut, Optional<LocalDate> byMonths, Optional<LocalDate> byDaysOut) {

    /** Whichever comes first. */
    public Optional<LocalDate> dueOn() {
        return Stream.concat(byMonths.stream(), byDaysOut.stream()).min(LocalDate::compareTo);
    }

    public boolean overdueOn(LocalDate day) {
        return dueOn().filter(day::isAfter).isPresent();
    }

    /** What makes it due first, in words: {@code months}, {@code days out}, or nothing where no day is known. */
    public String reason() {
        return dueOn().map(day -> byMonths.equals(Optional.of(day)) ? "months" : "days out")
                .orElse("");
    }
}
