package dayglass.planning;

import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.job.Jobs;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes a job of a request, with whatever it considers: suppliers by name, one rate card a supplier named after the
 * job and in force from its first day, purchase offers, and owned units by tag (or, by its name, a whole set of the shelf). What is there already with the same
 * facts is used again. All of it happens, or nothing.
 */
public final class ImportJob {
    private static final int MOST_NAME_CHARACTERS = 200;

    private final Jobs jobs;
    private final OptionSources sources;
    private final Transactions transactions;

    public ImportJob(Jobs jobs, OptionSources sources, Transactions transactions) {
        this.jobs = jobs;
        this.sources = sources;
        this.transactions = transactions;
    }

    public Outcome<Stored<Job.Id, Job>> importFrom(Question question) {
        return transactions.atomically(() -> cards(question)
                .then(cards -> offers(question)
                        .then(offers -> shelf(question)
                                .then(shelf -> jobs.add(new Job(
                                        question.job(),
                                        question.currency(),
                                        question.discountRate(),
                                        question.cashLimit(),
                                        question.schedule(),
                                        question.needs(),
                                        new Job.Sources(cards, offers, shelf.units(), shelf.sets(), List.of())))))));
    }

    private Outcome<List<RateCard.Id>> cards(Question question) {
        Map<String, List<Rate>> bySupplier = new LinkedHashMap<>();
        for (Question.Rental rental : question.rentals()) {
            bySupplier
                    .computeIfAbsent(rental.supplier(), name -> new ArrayList<>())
                    .add(Rate.of(rental));
        }
        Outcome<List<RateCard.Id>> ids = Outcome.done(List.of());
        for (Map.Entry<String, List<Rate>> entry : bySupplier.entrySet()) {
            ids = ids.then(before -> supplier(entry.getKey())
                    .then(supplier -> card(question, supplier, entry.getValue()))
                    .map(id -> with(before, id)));
        }
        return ids;
    }

    private Outcome<Supplier.Id> supplier(String name) {
        return sources.suppliers()
                .named(name)
                .map(found -> Outcome.done(found.id()))
                .orElseGet(() -> sources.suppliers().add(new Supplier(name)).map(Stored::id));
    }

    /** A card of that name with other rates belongs to an earlier import: this one then takes the next free name. */
    private Outcome<RateCard.Id> card(Question question, Supplier.Id supplier, List<Rate> rates) {
        LocalDate firstDay = question.schedule().horizon().from();
        for (int number = 1; ; number++) {
            RateCard card =
                    new RateCard(supplier, numbered(question.job(), number), question.currency(), firstDay, rates);
            List<Stored<RateCard.Id, RateCard>> others = sources.rateCards().succession(supplier, card.name());
            if (others.isEmpty()) {
                return sources.rateCards().add(card).map(Stored::id);
            }
            if (others.size() == 1 && others.get(0).facts().equals(card)) {
                return Outcome.done(others.get(0).id());
            }
        }
    }

    private static String numbered(String name, int number) {
        String suffix = number == 1 ? "" : " (" + number + ")";
        int[] kept =
                name.codePoints().limit(MOST_NAME_CHARACTERS - suffix.length()).toArray();
        return new String(kept, 0, kept.length) + suffix;
    }

    private Outcome<List<PurchaseOffer.Id>> offers(Question question) {
        Outcome<List<PurchaseOffer.Id>> ids = Outcome.done(List.of());
        for (Question.Purchase purchase : question.purchases()) {
            ids = ids.then(before -> supplier(purchase.supplier())
                    .then(supplier -> offer(new PurchaseOffer(
                            supplier, question.currency(), PurchaseOffer.Offer.of(purchase), Optional.empty())))
                    .map(id -> with(before, id)));
        }
        return ids;
    }

    private Outcome<PurchaseOffer.Id> offer(PurchaseOffer offer) {
        return sources.purchaseOffers().madeBy(offer.supplier()).stream()
                .filter(other -> other.facts().equals(offer))
                .findFirst()
                .map(other -> Outcome.done(other.id()))
                .orElseGet(() -> sources.purchaseOffers().add(offer).map(Stored::id));
    }

    /** What of the shelf serves. */
    private record FromShelf(List<Unit.Id> units, List<LensSet.Id> sets) {}

    private Outcome<FromShelf> shelf(Question question) {
        DateRange horizon = question.schedule().horizon();
        List<Fault> faults = new ArrayList<>();
        List<Unit.Id> units = new ArrayList<>();
        List<LensSet.Id> sets = new ArrayList<>();
        for (int at = 0; at < question.owned().size(); at++) {
            Question.Owned option = question.owned().get(at);
            Optional<LensSet.Id> set = setLike(option);
            Optional<Stored<Unit.Id, Unit>> found = sources.units().tagged(option.id());
            if (set.isPresent()) {
                sets.add(set.get());
            } else if (found.isPresent() && !isLike(option, found.get().facts(), horizon)) {
                faults.add(new Fault(
                        "/owned/" + at + "/id",
                        "\"" + option.id() + "\" is on the shelf with other facts: give the unit its own tag, or what"
                                + " it covers and when it is available as the shelf has it"));
            } else {
                Unit unit = Unit.serving(option.id(), new Unit.Use(option.covers(), option.available()));
                Outcome<Unit.Id> id = found.map(each -> Outcome.done(each.id()))
                        .orElseGet(() -> sources.units().add(unit).map(Stored::id));
                id.map(units::add);
            }
        }
        return faults.isEmpty()
                ? Outcome.done(new FromShelf(List.copyOf(units), List.copyOf(sets)))
                : Outcome.refused(Problem.faulty(faults));
    }

    private Optional<LensSet.Id> setLike(Question.Owned option) {
        return sources.lensSets()
                .named(option.id())
                .filter(set -> OwnOptions.covers(sources, set.facts()).equals(option.covers()))
                .map(Stored::id);
    }

    /** A unit with the same covers that is there on the same days, as typed or as its holding leaves them. */
    private static boolean isLike(Question.Owned option, Unit unit, DateRange horizon) {
        return unit.use().covers().equals(option.covers())
                && (unit.use().available().equals(option.available())
                        || OwnOptions.windows(OwnOptions.daysOf(unit, horizon), unit.use(), horizon)
                                .equals(option.available()));
    }

    private static <T> List<T> with(List<T> before, T next) {
        List<T> all = new ArrayList<>(before);
        all.add(next);
        return List.copyOf(all);
    }
}
