package dayglass.calendar;

import dayglass.base.DateRange;
import java.time.Instant;
import java.util.function.Function;

/**
 * Something in a calendar.
 *
 * @param uid the same whenever the same event is told again, and no other's
 * @param summary one line
 * @param description may be empty, and may have several lines
 */
public record Event(String uid, When when, String summary, String description) {

    /** When it is. */
    public sealed interface When {
        /** Whole days, wherever the reader is. */
        record Days(DateRange days) implements When {}

        /** A moment; it lasts no time. */
        record Moment(Instant at) implements When {}

        default <R> R fold(Function<Days, R> days, Function<Moment, R> moment) {
            return this instanceof Days it ? days.apply(it) : moment.apply((Moment) this);
        }
    }
}
