package dayglass.cost.plan;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Questions made from another. */
final class Variations {
    /** More than the decimals that one factor, one discount and three add-ons of {@link #ROUND} form can add. */
    private static final long FINER = 1_000_000;

    private static final Percent ROUND = Percent.of("20");

    private Variations() {}

    static Question withNeeds(Question question, List<Question.Need> needs) {
        return new Question(
                question.job(),
                question.currency(),
                question.discountRate(),
                question.cashLimit(),
                question.schedule(),
                needs,
                question.rentals(),
                question.purchases(),
                question.owned(),
                question.stock());
    }

    static Question withOptions(
            Question question,
            List<Question.Rental> rentals,
            List<Question.Purchase> purchases,
            List<Question.Owned> owned) {
        return new Question(
                question.job(),
                question.currency(),
                question.discountRate(),
                question.cashLimit(),
                question.schedule(),
                question.needs(),
                rentals,
                purchases,
                owned,
                question.stock());
    }

    /** The question with amounts so fine, and percentages so round, that nothing is ever rounded; all prices times. */
    static Question unrounded(Question question, long times) {
        long scale = FINER * times;
        return new Question(
                question.job(),
                question.currency(),
                Percent.ZERO,
                question.cashLimit().map(limit -> limit.times(scale)),
                question.schedule(),
                question.needs(),
                question.rentals().stream()
                        .map(rental -> unrounded(rental, scale))
                        .toList(),
                question.purchases().stream()
                        .map(purchase -> unrounded(purchase, scale))
                        .toList(),
                question.owned(),
                question.stock());
    }

    private static Question.Rental unrounded(Question.Rental rental, long scale) {
        RentalTerms terms = rental.terms();
        Map<DayUse, BigDecimal> factors = new LinkedHashMap<>();
        terms.dayFactors().forEach((use, factor) -> factors.put(use, factor.setScale(0, RoundingMode.UP)));
        RentalTerms unrounded = new RentalTerms(
                terms.blocks().stream()
                        .map(block -> new RentalTerms.Block(
                                block.days(), block.price().times(scale), block.startsOn()))
                        .toList(),
                terms.extraDay()
                        .map(extra -> new RentalTerms.ExtraDay(
                                extra.afterDays(), extra.price().times(scale))),
                factors,
                terms.longHire().stream()
                        .map(entry -> new RentalTerms.LongHire(
                                entry.fromDays(),
                                new Percent(entry.percent().value().setScale(0, RoundingMode.DOWN))))
                        .toList(),
                terms.minimumCharge().times(scale),
                terms.perTrip().times(scale),
                terms.addOns().stream()
                        .map(addOn -> new RentalTerms.AddOn(addOn.name(), ROUND, addOn.on()))
                        .toList());
        return new Question.Rental(
                rental.id(),
                rental.supplier(),
                rental.covers(),
                rental.copies(),
                unrounded,
                rental.available(),
                rental.draws());
    }

    /** Sold at the end for half as much again where the month of the sale is even, for half where it is odd. */
    private static Question.Purchase unrounded(Question.Purchase purchase, long scale) {
        PurchaseTerms terms = purchase.terms();
        Money price = terms.price().times(scale);
        long halves = terms.termMonths() % 2 == 0 ? 3 : 1;
        Money resale = terms.price().times(scale / 2 * halves);
        PurchaseTerms unrounded = new PurchaseTerms(
                price,
                Percent.ZERO,
                List.of(),
                terms.termMonths(),
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(terms.termMonths(), resale))),
                        Percent.ZERO),
                new PurchaseTerms.Holding(Percent.ZERO, Money.zero(price.currency())),
                Optional.empty(),
                Optional.empty());
        return new Question.Purchase(
                purchase.id(),
                purchase.supplier(),
                purchase.covers(),
                purchase.copies(),
                unrounded,
                purchase.availableFrom());
    }
}
