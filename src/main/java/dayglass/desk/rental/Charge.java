package dayglass.desk.rental;

import dayglass.base.Money;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something charged beside the price.
 *
 * @param line the priced line that it is about
 * @param days of a late charge how many; of an extension how many after the last one of the promise
 * @param reverses the place of the charge that it takes back, from 0
 */
public record Charge(
        Kind kind,
        Optional<Unit.Id> unit,
        Optional<Integer> line,
        int days,
        String words,
        Money net,
        List<Tax> taxes,
        Optional<Integer> reverses,
        Person.Id by,
        Instant at) {
    public Charge {
        taxes = List.copyOf(taxes);
    }

    /** What for. */
    public enum Kind {
        LATE,
        EXTENSION,
        DAMAGE,
        LOSS,
        MISSING,
        CLEANING,
        CANCELLATION,
        OTHER;

        /** As it is written: {@code late}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> of(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst();
        }
    }

    /** A tax on it by its code. */
    public record Tax(String code, Money amount) {}

    public Money total() {
        return taxes.stream().map(Tax::amount).reduce(net, Money::plus);
    }
}
