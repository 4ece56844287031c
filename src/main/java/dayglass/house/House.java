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
    private static final LocalTime USUAL_OUT = LocalTime.of(15, 0);
    private static final LocalTime USUAL_BACK = LocalTime.of(10, 0);

    /** A new house, with the trade's usual times. */
    public static House usual(ZoneId zone) {
        return new House("The house", zone, Currency.of("EUR"), USUAL_OUT, USUAL_BACK, Duration.ZERO);
    }

    /** There is one house only. */
    public record Id(long number) implements dayglass.base.Id {
        public static final Id ONLY = new Id(1);
    }
}
