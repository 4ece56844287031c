package dayglass.planning;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What suppliers offer jobs that begin on one day. Each card and offer is read once, so that many questions over the same
 * ones cost no more reading than one; threads may share it.
 */
public final class SupplierOptions {
    private final OptionSources sources;
    private final LocalDate firstDay;
    private final Map<RateCard.Id, Optional<RateCard>> named = new ConcurrentHashMap<>();
    private final Map<RateCard.Id, Outcome<Card>> cards = new ConcurrentHashMap<>();
    private final Map<PurchaseOffer.Id, Offer> offers = new ConcurrentHashMap<>();

    /** @param firstDay by which a card must be in force */
    public SupplierOptions(OptionSources sources, LocalDate firstDay) {
        this.sources = sources;
        this.firstDay = firstDay;
    }

    /** The card in force, and where it comes from in words. */
    public record Card(RateCard.Id id, RateCard card, Supplier supplier, String origin) {}

    /** An offer, and where it comes from in words. */
    public record Offer(PurchaseOffer offer, Supplier supplier, String origin) {}

    /** Whether the card is there, in force or not. */
    public boolean has(RateCard.Id id) {
        return named(id).isPresent();
    }

    private Optional<RateCard> named(RateCard.Id id) {
        return named.computeIfAbsent(id, each -> sources.rateCards().find(each).map(Stored::facts));
    }

    /** The card in force in place of the one named; refused where none of its succession is. */
    public Outcome<Card> card(RateCard.Id named) {
        return cards.computeIfAbsent(named, this::read);
    }

    private Outcome<Card> read(RateCard.Id id) {
        RateCard named = named(id).orElseThrow(() -> new IllegalStateException(id + " is pointed to and not there"));
        Supplier supplier = ResolveJob.get(sources.suppliers(), named.supplier());
        String origin = "rate card \"" + named.name() + "\" of " + supplier.name();
        Optional<Stored<RateCard.Id, RateCard>> inForce = sources.rateCards().inForce(named, firstDay);
        return inForce.map(card -> Outcome.done(new Card(card.id(), card.facts(), supplier, origin)))
                .orElseGet(() -> Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "No " + origin + " is in force on " + firstDay
                                + ", the first day of the job; the earliest begins on "
                                + sources.rateCards()
                                        .succession(named.supplier(), named.name())
                                        .get(0)
                                        .facts()
                                        .effectiveFrom()
                                + ". Add an earlier card or take this one out of the job."));
    }

    Offer offer(PurchaseOffer.Id id) {
        return offers.computeIfAbsent(id, each -> {
            PurchaseOffer offer = ResolveJob.get(sources.purchaseOffers(), each);
            Supplier supplier = ResolveJob.get(sources.suppliers(), offer.supplier());
            return new Offer(
                    offer, supplier, "the purchase offer \"" + offer.offer().code() + "\" of " + supplier.name());
        });
    }
}
