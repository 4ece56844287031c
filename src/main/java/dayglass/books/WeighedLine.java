package dayglass.books;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What one choice adds to the cost that the plan weighs. Of a purchase that is its net cost (outlay, holding and
 * service, less letting and resale, at present value): a figure to decide by, never one to post.
 *
 * @param supplier empty for an owned unit
 * @param from empty for an owned unit
 * @param lastDay of a rental; empty for what is there to stay
 * @param cost negative where a purchase brings more than it takes
 * @param spare bought only because it pays for itself
 */
public record WeighedLine(
        LineKind kind,
        String option,
        String supplier,
        Optional<LocalDate> from,
        Optional<LocalDate> lastDay,
        Money cost,
        boolean spare) {}
