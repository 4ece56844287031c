package dayglass.catalogue;

import dayglass.base.Currency;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.plan.Question;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * Something that a supplier sells.
 *
 * @param validUntil the last day on which it can be taken up; empty for open-ended
 */
public record PurchaseOffer(Supplier.Id supplier, Currency currency, Offer offer, Optional<LocalDate> validUntil) {
    /** The number of a purchase offer. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * What is offered.
     *
     * @param code the id that the option has in a costing
     * @param copies how often it can be bought
     * @param availableFrom the day from which it serves; empty for the first day of whichever job
     */
    public record Offer(
            String code,
            Map<String, Integer> covers,
            int copies,
            PurchaseTerms terms,
            Optional<LocalDate> availableFrom) {
        public Offer {
            covers = Map.copyOf(covers);
        }

        /** Stands for the first day of whichever job where a day has to be named. */
        public static final LocalDate ANY_FIRST_DAY = LocalDate.MAX;

        public static Offer of(Question.Purchase option) {
            return new Offer(
                    option.id(),
                    option.covers(),
                    option.copies(),
                    option.terms(),
                    Optional.of(option.availableFrom()).filter(day -> !day.equals(ANY_FIRST_DAY)));
        }

        /** The option that it is in the costing of a job that begins on {@code firstDay}. */
        public Question.Purchase from(Supplier seller, LocalDate firstDay) {
            return new Question.Purchase(code, seller.name(), covers, copies, terms, availableFrom.orElse(firstDay));
        }
    }
}
