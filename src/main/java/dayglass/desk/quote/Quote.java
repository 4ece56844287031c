package dayglass.desk.quote;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was promised to a customer; every revision stays.
 *
 * @param number its own, from 1 on without gaps
 * @param revisions the first first; at least one
 * @param why the customer's reason for declining, where one was given
 */
public record Quote(long number, Customer customer, List<Promise> revisions, Decision decision, String why) {
    public Quote {
        revisions = List.copyOf(revisions);
    }

    /** The id of a quote. */
    public record Id(long number) implements dayglass.base.Id {}

    /** What became of it. */
    public enum Decision {
        OPEN,
        ACCEPTED,
        DECLINED;

        /** As it is written: {@code open}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Decision> of(String word) {
            return Arrays.stream(values())
                    .filter(each -> each.word().equals(word))
                    .findFirst();
        }
    }

    /** The revision that counts. */
    public Promise now() {
        return revisions.get(revisions.size() - 1);
    }

    /** It was neither taken up nor declined by the day after its last one. */
    public boolean expired(LocalDate today) {
        return decision == Decision.OPEN && today.isAfter(now().validUntil());
    }

    /** {@code open}, {@code expired}, {@code accepted} or {@code declined}. */
    public String state(LocalDate today) {
        return expired(today) ? "expired" : decision.word();
    }

    Quote revised(Customer newCustomer, Promise promise) {
        List<Promise> more = new ArrayList<>(revisions);
        more.add(promise);
        return new Quote(number, newCustomer, more, Decision.OPEN, "");
    }

    /** The same, decided. */
    public Quote decided(Decision by, String reason) {
        return new Quote(number, customer, revisions, by, reason);
    }
}
