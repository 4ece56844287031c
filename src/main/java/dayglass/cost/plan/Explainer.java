package dayglass.cost.plan;

import dayglass.base.Money;
import dayglass.cost.plan.AnswerBuilder.Taken;
import dayglass.cost.plan.Explanation.Reason;
import dayglass.cost.plan.Explanation.Rival;
import dayglass.cost.plan.Explanation.Without;
import dayglass.cost.rental.PeriodPricing;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.rental.RentalTerms.Block;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Says why a plan takes what it takes: how else each period could be charged, and what the least total would be if a
 * choice were forbidden, found by forbidding it and solving again.
 */
final class Explainer {
    /** Solving again is given so much work for all choices together; then the rest is left out. */
    private static final long MOST_WORK = 400_000_000L;

    private static final long MOST_WORK_ON_ONE = 60_000_000L;

    private final Resolved resolved;
    private final Plan plan;
    private final StopSignal stop;
    private long workLeft = MOST_WORK;

    Explainer(Resolved resolved, Plan plan, StopSignal stop) {
        this.resolved = resolved;
        this.plan = plan;
        this.stop = stop;
    }

    Explanation explain(Service service, List<Taken> shown) {
        List<Reason> reasons = new ArrayList<>();
        for (Taken each : shown) {
            reasons.add(new Reason(rivals(each), without(each)));
        }
        return new Explanation(reasons, service.slotDays(), service.unshared());
    }

    /** The period charged by each kind of block alone, where that can be done. */
    private List<Rival> rivals(Taken taken) {
        if (!(taken.choice() instanceof Choice.Rent)) {
            return List.of();
        }
        RentalTerms terms = rental(taken).offer.terms();
        List<Rival> rivals = new ArrayList<>();
        for (Block block : terms.blocks()) {
            new PeriodPricing(terms.withBlocksOnly(List.of(block)), resolved.schedule)
                    .charge(taken.first(), taken.last())
                    .ifPresent(charge -> rivals.add(new Rival(name(block), charge.hire())));
        }
        rivals.sort(Comparator.comparing(Rival::hire));
        return rivals;
    }

    private static String name(Block block) {
        String name = block.days() + "-day blocks only";
        return block.startsOn()
                .map(day -> name + ", from " + day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                .orElse(name);
    }

    private Optional<Without> without(Taken taken) {
        if (taken.choice() instanceof Choice.Own || stop.stopped() || workLeft <= 0) {
            return Optional.empty();
        }
        Resolved rest = taken.choice() instanceof Choice.Rent
                ? resolved.without(rental(taken).index, taken.first(), taken.last())
                : resolved.withPurchases(all -> fewer(all, taken.choice().option()));
        return solve(rest);
    }

    private List<Resolved.Purchase> fewer(List<Resolved.Purchase> all, String id) {
        return all.stream()
                .filter(p -> !p.offer().id().equals(id) || plan.bought().get(p.index()) > 1)
                .map(p -> p.offer().id().equals(id)
                        ? new Resolved.Purchase(
                                p.index(),
                                p.offer(),
                                p.from(),
                                plan.bought().get(p.index()) - 1,
                                p.netCost(),
                                p.outlay())
                        : p)
                .toList();
    }

    private Optional<Without> solve(Resolved rest) {
        if (!rest.coverable()) {
            return Optional.of(new Without(Optional.empty(), true));
        }
        PlanSearch search = new PlanSearch(rest);
        search.begin(stop);
        search.run(stop, Math.min(workLeft, MOST_WORK_ON_ONE));
        workLeft -= search.work();
        if (search.impossible()) {
            return Optional.of(new Without(Optional.empty(), true));
        }
        return search.plan()
                .map(found -> new Without(
                        Optional.of(new Money(resolved.question.currency(), found.total())),
                        search.bound().compareTo(found.total()) >= 0));
    }

    private Resolved.Rental rental(Taken taken) {
        return resolved.rentals.stream()
                .filter(rental -> rental.offer.id().equals(taken.choice().option()))
                .findFirst()
                .orElseThrow();
    }
}
