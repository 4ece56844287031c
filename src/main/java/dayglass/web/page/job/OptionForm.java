package dayglass.web.page.job;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.web.page.PageSources;
import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Decimals;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Read;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The form of a job's options: which are left out, and their prices. A price is the supplier's: it is changed on the
 * card or offer that the job is priced from.
 */
final class OptionForm {
    private final PageSources sources;
    private final JobViews views;

    OptionForm(PageSources sources, JobViews views) {
        this.sources = sources;
        this.views = views;
    }

    /** Keeps everything that the form changes, to be done in one transaction. */
    Outcome<Stored<Job.Id, Job>> keep(Stored<Job.Id, Job> job, Form form) {
        List<Fault> faults = new ArrayList<>();
        List<String> codes = new ArrayList<>();
        List<Outcome<?>> changes = new ArrayList<>();
        for (RateCard.Id id : job.facts().sources().rateCards()) {
            Stored<RateCard.Id, RateCard> card = views.inForce(job.facts(), id);
            RateCard priced = priced(card, form, faults);
            card.facts().rates().forEach(rate -> codes.add(rate.code()));
            if (faults.isEmpty() && !priced.equals(card.facts())) {
                changes.add(sources.options()
                        .rateCards()
                        .change(new Stored<>(
                                card.id(), version(form, "card/" + card.id().number()), priced)));
            }
        }
        for (PurchaseOffer.Id id : job.facts().sources().purchaseOffers()) {
            Stored<PurchaseOffer.Id, PurchaseOffer> offer =
                    sources.options().purchaseOffers().find(id).orElseThrow();
            PurchaseOffer priced = pricedOffer(offer, form, faults);
            codes.add(offer.facts().offer().code());
            if (faults.isEmpty() && !priced.equals(offer.facts())) {
                changes.add(sources.options()
                        .purchaseOffers()
                        .change(new Stored<>(id, version(form, "offer/" + id.number()), priced)));
            }
        }
        for (Unit.Id id : job.facts().sources().units()) {
            codes.add(sources.options().units().find(id).orElseThrow().facts().tag());
        }
        for (LensSet.Id id : job.facts().sources().lensSets()) {
            codes.add(
                    sources.options().lensSets().find(id).orElseThrow().facts().name());
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(Problem.faulty(faults));
        }
        return changes.stream()
                .flatMap(change -> change.fold(done -> Stream.<Problem>empty(), Stream::of))
                .findFirst()
                .map(Outcome::<Stored<Job.Id, Job>>refused)
                .orElseGet(() -> sources.jobs()
                        .change(new Stored<>(job.id(), job.version(), leftOut(job.facts(), codes, form))));
    }

    private static long version(Form form, String owner) {
        return PathNumbers.of(form.value("version/" + owner)).orElse(0);
    }

    private static Job leftOut(Job job, List<String> codes, Form form) {
        List<String> leftOut = new ArrayList<>();
        for (String code : codes) {
            if (!form.has("keep/" + code)) {
                leftOut.add(code);
            }
        }
        Job.Sources before = job.sources();
        return JobOptionPages.withSources(
                job,
                new Job.Sources(
                        before.rateCards(), before.purchaseOffers(), before.units(), before.lensSets(), leftOut));
    }

    private static RateCard priced(Stored<RateCard.Id, RateCard> card, Form form, List<Fault> faults) {
        List<Rate> rates = new ArrayList<>();
        for (int at = 0; at < card.facts().rates().size(); at++) {
            Rate rate = card.facts().rates().get(at);
            List<RentalTerms.Block> blocks = new ArrayList<>();
            for (int number = 0; number < rate.terms().blocks().size(); number++) {
                RentalTerms.Block block = rate.terms().blocks().get(number);
                String field = JobView.priceField(card.id(), at, number);
                Money price =
                        price(card.facts().currency(), form, field, faults).orElse(block.price());
                blocks.add(new RentalTerms.Block(block.days(), price, block.startsOn()));
            }
            rates.add(new Rate(
                    rate.code(),
                    rate.covers(),
                    rate.copies(),
                    withBlocks(rate.terms(), blocks),
                    rate.available(),
                    rate.lets(),
                    rate.marks()));
        }
        RateCard facts = card.facts();
        return new RateCard(facts.supplier(), facts.name(), facts.currency(), facts.effectiveFrom(), rates);
    }

    private static RentalTerms withBlocks(RentalTerms terms, List<RentalTerms.Block> blocks) {
        return new RentalTerms(
                blocks,
                terms.extraDay(),
                terms.dayFactors(),
                terms.longHire(),
                terms.minimumCharge(),
                terms.perTrip(),
                terms.addOns());
    }

    private static PurchaseOffer pricedOffer(
            Stored<PurchaseOffer.Id, PurchaseOffer> stored, Form form, List<Fault> faults) {
        PurchaseOffer facts = stored.facts();
        PurchaseOffer.Offer offer = facts.offer();
        PurchaseTerms terms = offer.terms();
        Money price = price(facts.currency(), form, JobView.offerField(stored.id()), faults)
                .orElse(terms.price());
        PurchaseTerms priced = new PurchaseTerms(
                price,
                terms.tax(),
                terms.extras(),
                terms.termMonths(),
                terms.resale(),
                terms.holding(),
                terms.service(),
                terms.letting());
        return new PurchaseOffer(
                facts.supplier(),
                facts.currency(),
                new PurchaseOffer.Offer(offer.code(), offer.covers(), offer.copies(), priced, offer.availableFrom()),
                facts.validUntil());
    }

    /** The price typed; empty where the form has no such field or it is at fault. */
    private static Optional<Money> price(Currency currency, Form form, String field, List<Fault> faults) {
        if (!form.values().containsKey(field)) {
            return Optional.empty();
        }
        return Decimals.money(Read.good(currency))
                .readAt(field, Json.text(form.value(field).strip()), Listener.PERSON)
                .fold(Optional::of, found -> {
                    faults.addAll(found);
                    return Optional.empty();
                });
    }
}
