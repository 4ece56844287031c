package dayglass.inventory.booking;

import dayglass.base.Money;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Why and when a unit is in another place than its shelf.
 *
 * @param subject for whom it is booked, why it is on the bench, where it is: one line
 * @param cancelled it occupies nothing any more
 * @param record who entered it, and when
 * @param bench what was done on the bench; of a bench visit alone
 */
public record Occupation(
        Unit.Id unit,
        Kind kind,
        Stay stay,
        String subject,
        boolean cancelled,
        Handling handling,
        Entered record,
        Optional<BenchWork> bench) {

    /** The number of an occupation. */
    public record Id(long number) implements dayglass.base.Id {}

    /** What it is. */
    public enum Kind {
        BOOKING,
        BENCH,
        ABSENCE;

        /** As it is written: {@code booking}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> of(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst();
        }
    }

    /** When it really went out and came back; empty while it has not. */
    public record Handling(Optional<Instant> wentOut, Optional<Instant> cameBack) {
        public static final Handling NOT_YET = new Handling(Optional.empty(), Optional.empty());

        /** Out of the house now. */
        public boolean isOut() {
            return wentOut.isPresent() && cameBack.isEmpty();
        }
    }

    /** Who entered it, and when. */
    public record Entered(Person.Id by, Instant at) {}

    /**
     * A visit to the bench.
     *
     * @param done the work is finished and sets when the next is due
     */
    public record BenchWork(String findings, String work, String parts, Optional<Money> cost, boolean done) {
        public static final BenchWork NOT_YET = new BenchWork("", "", "", Optional.empty(), false);
    }

    Occupation during(Stay newStay) {
        return new Occupation(unit, kind, newStay, subject, cancelled, handling, record, bench);
    }

    Occupation handled(Handling newHandling) {
        return new Occupation(unit, kind, stay, subject, cancelled, newHandling, record, bench);
    }

    Occupation asCancelled() {
        return new Occupation(unit, kind, stay, subject, true, handling, record, bench);
    }
}
