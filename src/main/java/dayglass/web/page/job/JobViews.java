package dayglass.web.page.job;

import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.picture.Strip;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.costing.CostingRequestWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes what the page of a job shows. */
final class JobViews {
    private static final int PAGE = 200;

    private final PageSources sources;

    JobViews(PageSources sources) {
        this.sources = sources;
    }

    JobView of(Stored<Job.Id, Job> stored) {
        Job job = stored.facts();
        List<JobView.NeedRow> needs = new ArrayList<>();
        for (Question.Need need : job.needs()) {
            needs.add(JobView.need(needs.size(), need));
        }
        return new JobView(
                stored.id().number(),
                stored.version(),
                JobView.label(job),
                totals(stored),
                Strip.of(job.schedule()),
                JsonPrint.pretty(CostingRequestWriter.schedule(job.schedule())),
                needs,
                job.sources().rateCards().stream().map(id -> card(job, id)).toList(),
                job.sources().purchaseOffers().stream()
                        .map(id -> sources.options().purchaseOffers().find(id).orElseThrow())
                        .map(offer -> JobView.offer(job, supplier(offer.facts().supplier()), offer))
                        .toList(),
                job.sources().units().stream()
                        .map(id -> sources.options().units().find(id).orElseThrow())
                        .map(unit -> JobView.unit(job, unit))
                        .toList(),
                job.sources().lensSets().stream()
                        .map(id -> sources.options().lensSets().find(id).orElseThrow())
                        .map(set -> JobView.set(job, set, members(set.facts())))
                        .toList(),
                others(job));
    }

    /** The card in force on the job's first day in place of the one named; that one where none is in force yet. */
    Stored<RateCard.Id, RateCard> inForce(Job job, RateCard.Id named) {
        Stored<RateCard.Id, RateCard> card =
                sources.options().rateCards().find(named).orElseThrow();
        return sources.options()
                .rateCards()
                .inForce(card.facts(), job.schedule().horizon().from())
                .orElse(card);
    }

    private JobView.CardView card(Job job, RateCard.Id named) {
        Stored<RateCard.Id, RateCard> card = inForce(job, named);
        List<JobView.OptionRow> rates = new ArrayList<>();
        for (int at = 0; at < card.facts().rates().size(); at++) {
            rates.add(JobView.rate(job, card.id(), at, card.facts().rates().get(at)));
        }
        return new JobView.CardView(
                card.id().number(),
                named.number(),
                card.version(),
                supplier(card.facts().supplier()) + ", " + card.facts().name(),
                "in force from " + Words.date(card.facts().effectiveFrom()) + ", "
                        + card.facts().currency(),
                rates);
    }

    private List<Unit> members(LensSet set) {
        return set.members().stream()
                .map(id -> sources.options().units().find(id).orElseThrow().facts())
                .toList();
    }

    String supplier(dayglass.catalogue.Supplier.Id id) {
        return sources.options().suppliers().find(id).orElseThrow().facts().name();
    }

    /** What could be considered too; what is priced in another currency could not. */
    private List<JobView.Other> others(Job job) {
        List<JobView.Other> others = new ArrayList<>();
        for (Stored<RateCard.Id, RateCard> card : Requests.all(sources.options().rateCards())) {
            boolean considered = job.sources().rateCards().stream()
                    .map(id ->
                            sources.options().rateCards().find(id).orElseThrow().facts())
                    .anyMatch(each -> each.supplier().equals(card.facts().supplier())
                            && each.name().equals(card.facts().name()));
            if (!considered && card.facts().currency().equals(job.currency())) {
                others.add(new JobView.Other(
                        "card/" + card.id().number(),
                        "rate card: " + supplier(card.facts().supplier()) + ", "
                                + card.facts().name() + ", from "
                                + Words.date(card.facts().effectiveFrom())));
            }
        }
        Requests.all(sources.options().purchaseOffers()).stream()
                .filter(offer -> offer.facts().currency().equals(job.currency()))
                .filter(offer -> !job.sources().purchaseOffers().contains(offer.id()))
                .map(offer -> new JobView.Other(
                        "offer/" + offer.id().number(),
                        "purchase: " + offer.facts().offer().code() + ", "
                                + supplier(offer.facts().supplier())))
                .forEach(others::add);
        Requests.all(sources.options().lensSets()).stream()
                .filter(set -> !job.sources().lensSets().contains(set.id()))
                .map(set -> new JobView.Other(
                        "set/" + set.id().number(), "own set: " + set.facts().name()))
                .forEach(others::add);
        Requests.all(sources.options().units()).stream()
                .filter(unit -> !job.sources().units().contains(unit.id()))
                .filter(unit -> !unit.facts().use().covers().isEmpty())
                .map(unit -> new JobView.Other(
                        "unit/" + unit.id().number(),
                        "own unit: " + unit.facts().tag()))
                .forEach(others::add);
        return others;
    }

    private Totals totals(Stored<Job.Id, Job> job) {
        List<Stored<KeptCosting.Id, KeptCosting.Summary>> all = costings(job.id());
        boolean stale = sources.costings()
                .latestOf(job.id())
                .map(latest -> !asked(job.facts())
                        .equals(Optional.of(latest.facts().request().json())))
                .orElse(false);
        return Totals.of(all, stale);
    }

    private Optional<String> asked(Job job) {
        return sources.resolveJob()
                .resolve(job)
                .fold(question -> Optional.of(text(CostingRequestWriter.write(question))), problem -> Optional.empty());
    }

    private static String text(Json json) {
        return JsonPrint.pretty(json);
    }

    List<Stored<KeptCosting.Id, KeptCosting.Summary>> costings(Job.Id job) {
        List<Stored<KeptCosting.Id, KeptCosting.Summary>> all = new ArrayList<>();
        Optional<KeptCosting.Id> after = Optional.empty();
        List<Stored<KeptCosting.Id, KeptCosting.Summary>> page;
        do {
            page = sources.costings().list(Optional.of(job), after, PAGE);
            all.addAll(page);
            after = page.isEmpty()
                    ? after
                    : Optional.of(page.get(page.size() - 1).id());
        } while (page.size() == PAGE);
        return all;
    }
}
