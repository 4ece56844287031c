package dayglass.planning;

import dayglass.base.Currency;
import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.cost.plan.Question;
import dayglass.job.Job;
import dayglass.wire.costing.CostingRequestReader;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns a job into a question that stands by itself: each card becomes the one in force on the job's first day, and
 * every option is named once, in the job's currency. What was left out is not looked at further. The clock says
 * whether an offer can still be taken up.
 */
public final class ResolveJob {
    private static final int MOST_OPTIONS = CostingRequestReader.MOST_OPTIONS;

    private final OptionSources sources;
    private final Clock clock;

    public ResolveJob(OptionSources sources, Clock clock) {
        this.sources = sources;
        this.clock = clock;
    }

    public Outcome<Question> resolve(Job job) {
        return resolve(job, offeredTo(job));
    }

    /** What suppliers offer a job, for many questions that consider the same. */
    public SupplierOptions offeredTo(Job job) {
        return new SupplierOptions(sources, job.schedule().horizon().from());
    }

    /**
     * The question of a job.
     *
     * @param offered to jobs that begin when it does
     */
    public Outcome<Question> resolve(Job job, SupplierOptions offered) {
        Gathering gathering = new Gathering(job);
        return gatherCards(offered, gathering)
                .or(() -> gatherOffers(offered, gathering))
                .or(() -> gatherOwn(job, gathering))
                .or(gathering::tooMany)
                .map(Outcome::<Question>refused)
                .orElseGet(() -> Outcome.done(gathering.question()));
    }

    private static Optional<Problem> gatherCards(SupplierOptions offered, Gathering gathering) {
        Map<RateCard.Id, SupplierOptions.Card> cards = new LinkedHashMap<>();
        for (RateCard.Id id : gathering.job.sources().rateCards()) {
            Optional<Problem> problem = offered.card(id)
                    .fold(
                            card -> {
                                cards.put(card.id(), card);
                                return Optional.empty();
                            },
                            Optional::of);
            if (problem.isPresent()) {
                return problem;
            }
        }
        for (SupplierOptions.Card card : cards.values()) {
            List<Rate> rates = card.card().rates().stream()
                    .filter(rate -> !rate.covers().isEmpty() && gathering.wants(rate.code()))
                    .toList();
            Optional<Problem> problem = rates.isEmpty()
                    ? Optional.empty()
                    : otherCurrency(gathering.job, card.card().currency(), card.origin());
            for (Rate rate : rates) {
                problem = problem.or(() -> gathering.name(rate.code(), card.origin()));
                gathering.rentals.add(rate.from(card.supplier()));
            }
            if (problem.isPresent()) {
                return problem;
            }
        }
        return Optional.empty();
    }

    private Optional<Problem> gatherOffers(SupplierOptions offered, Gathering gathering) {
        Job job = gathering.job;
        for (PurchaseOffer.Id id : job.sources().purchaseOffers()) {
            SupplierOptions.Offer offer = offered.offer(id);
            String code = offer.offer().offer().code();
            if (!gathering.wants(code)) {
                continue;
            }
            Optional<Problem> problem = otherCurrency(job, offer.offer().currency(), offer.origin())
                    .or(() -> lapsed(offer.offer(), offer.origin()))
                    .or(() -> gathering.name(code, offer.origin()));
            if (problem.isPresent()) {
                return problem;
            }
            gathering.purchases.add(offer.offer()
                    .offer()
                    .from(offer.supplier(), job.schedule().horizon().from()));
        }
        return Optional.empty();
    }

    /** What the shelf itself can give, and on which days, is said by {@link OwnOptions}. */
    private Optional<Problem> gatherOwn(Job job, Gathering gathering) {
        OwnOptions own = new OwnOptions(sources, job.schedule().horizon(), job.name());
        return own.of(job.sources(), gathering::wants)
                .fold(
                        options -> {
                            for (OwnOptions.Named option : options) {
                                Optional<Problem> problem =
                                        gathering.name(option.option().id(), option.origin());
                                if (problem.isPresent()) {
                                    return problem;
                                }
                                gathering.owned.add(option.option());
                            }
                            return Optional.empty();
                        },
                        Optional::of);
    }

    private Optional<Problem> lapsed(PurchaseOffer offer, String origin) {
        LocalDate today = LocalDate.now(clock);
        return offer.validUntil()
                .filter(last -> last.isBefore(today))
                .flatMap(last -> refusal("It is too late for " + origin + ": it was valid until " + last
                        + ". Renew it or leave it out of the job."));
    }

    private static Optional<Problem> otherCurrency(Job job, Currency currency, String origin) {
        return currency.equals(job.currency())
                ? Optional.empty()
                : refusal("The job is in " + job.currency() + " but " + origin + " is in " + currency
                        + "; leave it out of the job or price the job in " + currency + ".");
    }

    private static Optional<Problem> refusal(String detail) {
        return Optional.of(new Problem(Problem.Code.CANNOT_BE_DONE, detail));
    }

    /** What a stored job points to is there: the database forbids its removal. */
    static <I extends Id, T> Stored<I, T> stored(VersionedCollection<I, T> all, I id) {
        return all.find(id).orElseThrow(() -> new IllegalStateException(id + " is pointed to and not there"));
    }

    static <I extends Id, T> T get(VersionedCollection<I, T> all, I id) {
        return stored(all, id).facts();
    }

    /** The options found so far, and where the name of each came from. */
    private static final class Gathering {
        private final Job job;
        private final Map<String, String> origins = new LinkedHashMap<>();
        private final List<Question.Rental> rentals = new ArrayList<>();
        private final List<Question.Purchase> purchases = new ArrayList<>();
        private final List<Question.Owned> owned = new ArrayList<>();

        Gathering(Job job) {
            this.job = job;
        }

        boolean wants(String code) {
            return !job.sources().leftOut().contains(code);
        }

        Optional<Problem> name(String code, String origin) {
            String earlier = origins.putIfAbsent(code, origin);
            return earlier == null
                    ? Optional.empty()
                    : refusal("Two options have the id \"" + code + "\": one of " + earlier + " and one of " + origin
                            + ". Rename one.");
        }

        Optional<Problem> tooMany() {
            return origins.size() <= MOST_OPTIONS
                    ? Optional.empty()
                    : refusal("The job considers " + origins.size() + " options; at most " + MOST_OPTIONS
                            + " can be compared. Leave some out.");
        }

        Question question() {
            return new Question(
                    job.name(),
                    job.currency(),
                    job.discountRate(),
                    job.cashLimit(),
                    job.schedule(),
                    job.needs(),
                    rentals,
                    purchases,
                    owned,
                    Map.of());
        }
    }
}
