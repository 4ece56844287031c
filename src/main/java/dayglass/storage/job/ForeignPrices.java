package dayglass.storage.job;

import static dayglass.storage.schema.Tables.PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.RATE_CARD;

import dayglass.base.Fault;
import dayglass.base.Problem;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.job.Job;
import dayglass.storage.schema.tables.records.PurchaseOfferRecord;
import dayglass.storage.schema.tables.records.RateCardRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Finds what a job considers that is priced in another currency than the job: a sum of both would mean nothing. */
final class ForeignPrices {
    private final Job job;
    private final List<Fault> faults = new ArrayList<>();

    private ForeignPrices(Job job) {
        this.job = job;
    }

    /** A fault at each; everything that is considered is there. */
    static Optional<Problem> of(DSLContext sql, Job job) {
        ForeignPrices foreign = new ForeignPrices(job);
        List<RateCard.Id> cards = job.sources().rateCards();
        for (int at = 0; at < cards.size(); at++) {
            RateCardRecord card =
                    sql.fetchSingle(RATE_CARD, RATE_CARD.ID.eq(cards.get(at).number()));
            String what = "rate card " + card.getId() + " (" + card.getName() + ")";
            foreign.look("/rateCards/" + at, what, card.getCurrency());
        }
        List<PurchaseOffer.Id> offers = job.sources().purchaseOffers();
        for (int at = 0; at < offers.size(); at++) {
            PurchaseOfferRecord offer = sql.fetchSingle(
                    PURCHASE_OFFER, PURCHASE_OFFER.ID.eq(offers.get(at).number()));
            foreign.look("/purchaseOffers/" + at, "purchase offer " + offer.getId(), offer.getCurrency());
        }
        return foreign.faults.isEmpty() ? Optional.empty() : Optional.of(Problem.faulty(foreign.faults));
    }

    private void look(String pointer, String what, String currency) {
        if (!currency.equals(job.currency().code())) {
            faults.add(new Fault(
                    pointer,
                    what + " is in " + currency + " and the job in " + job.currency()
                            + ": leave it out, or price the job in " + currency));
        }
    }
}
