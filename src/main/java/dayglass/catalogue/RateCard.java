package dayglass.catalogue;

import dayglass.base.Currency;
import java.time.LocalDate;
import java.util.List;

/**
 * A supplier's rates from a date on. Cards of one supplier and name succeed each other by that date, and old ones stay.
 *
 * @param rates no two with the same code
 */
public record RateCard(
        Supplier.Id supplier, String name, Currency currency, LocalDate effectiveFrom, List<Rate> rates) {
    public RateCard {
        rates = List.copyOf(rates);
    }

    /** The number of a rate card. */
    public record Id(long number) implements dayglass.base.Id {}
}
