package dayglass.house;

import dayglass.base.Currency;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;

/**
 * How the house keeps time and money.
 *
 * @param zone in which times are shown and asked for; instants are what is kept
 * @param currency in which it keeps values where nothing else is said
 * @param outTime when a unit goes out on the day before its first day of use; 15:00 is common practice
 * @param backTime when it is back on the day after its last; 10:00 is common practice
 * @param turnaround after a unit is back, before it can go out again
 */
public record House(
        String name, ZoneId zone, Currency currency, LocalTime outTime, LocalTime backTime, Duration turnaround) {
    /** There is one house only. */
    public record Id(long number) implements dayglass.base.Id {
        public static final Id ONLY = new Id(1);
    }
}
