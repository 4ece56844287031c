package dayglass.inventory.booking;

import dayglass.base.DateRange;
import dayglass.house.House;
import dayglass.inventory.booking.Occupation.Kind;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * The days on which a unit is out at work, on the house's calendar. Neither the afternoon on which it leaves nor the
 * morning on which it is back counts, as neither is charged (common practice); one that leaves before the usual time, or
 * is back after it, was out on that day too. A stay counts a day at least.
 */
public final class DaysOut {
    private DaysOut() {}

    /**
     * The days of one booking: as they were, where it has been out, else as they are booked. One that is out still counts
     * up to when it is due, or to now where it is late. Empty for what was cancelled and for what is no booking.
     */
    public static Optional<DateRange> of(Occupation booking, House house, Instant now) {
        if (booking.kind() != Kind.BOOKING || booking.cancelled()) {
            return Optional.empty();
        }
        Instant due = booking.stay().back();
        Instant end = booking.handling().isOut() && now.isAfter(due) ? now : due;
        LocalDateTime out =
                local(booking.handling().wentOut().orElse(booking.stay().out()), house);
        LocalDateTime back = local(booking.handling().cameBack().orElse(end), house);
        LocalDate first = out.toLocalTime().isBefore(house.outTime())
                ? out.toLocalDate()
                : out.toLocalDate().plusDays(1);
        LocalDate last = back.toLocalTime().isAfter(house.backTime())
                ? back.toLocalDate()
                : back.toLocalDate().minusDays(1);
        return Optional.of(
                last.isBefore(first)
                        ? DateRange.inclusive(out.toLocalDate(), out.toLocalDate())
                        : DateRange.inclusive(first, last));
    }

    private static LocalDateTime local(Instant moment, House house) {
        return moment.atZone(house.zone()).toLocalDateTime();
    }
}
