package dayglass.cost.plan;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.plan.Cover.Held;
import dayglass.cost.plan.Resolved.Purchase;
import dayglass.cost.plan.Resolved.Rental;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Turns a plan by numbers into the answer that people read. */
final class AnswerBuilder {
    private AnswerBuilder() {}

    /** One choice with the days on which it is there. */
    record Taken(Choice choice, Map<String, Integer> covers, int first, int last) {}

    static Answer answer(Resolved resolved, Plan plan, LeastCost.Rows rows, StopSignal stop) {
        List<Taken> held = new ArrayList<>(owned(resolved));
        held.addAll(bought(resolved, plan));
        held.addAll(rented(resolved, plan));
        Service service = new Service(resolved, held);
        List<Taken> shown = service.shown();
        Money total = new Money(resolved.question.currency(), plan.total());
        Money bound = new Money(resolved.question.currency(), rows.bound(plan));
        return new Answer(
                total,
                bound,
                bound.equals(total),
                rows.comparison(plan),
                shown.stream().map(Taken::choice).toList(),
                service.coverage(),
                cash(shown),
                new Explainer(resolved, plan, stop).explain(service, shown));
    }

    /** The periods of the plan by first day. */
    static List<Choice.Rent> periods(Resolved resolved, Plan plan) {
        return rented(resolved, plan).stream()
                .map(taken -> (Choice.Rent) taken.choice())
                .toList();
    }

    private static List<Taken> rented(Resolved resolved, Plan plan) {
        List<Taken> rented = new ArrayList<>();
        for (Rental rental : resolved.rentals) {
            plan.held().stream()
                    .filter(period -> period.hire() == rental.index)
                    .sorted(Comparator.comparingInt(Held::first))
                    .forEach(period -> rented.add(new Taken(
                            new Choice.Rent(
                                    rental.offer.id(),
                                    rental.offer.supplier(),
                                    DateRange.inclusive(
                                            resolved.schedule.dateOf(period.first()),
                                            resolved.schedule.dateOf(period.last())),
                                    rental.pricing()
                                            .charge(period.first(), period.last())
                                            .orElseThrow()),
                            rental.offer.covers(),
                            period.first(),
                            period.last())));
        }
        rented.sort(Comparator.comparingInt(Taken::first));
        return rented;
    }

    private static List<Taken> bought(Resolved resolved, Plan plan) {
        List<Taken> bought = new ArrayList<>();
        for (Purchase purchase : resolved.purchases) {
            for (int copy = 0; copy < plan.bought().get(purchase.index()); copy++) {
                bought.add(new Taken(
                        new Choice.Buy(
                                purchase.offer().id(),
                                purchase.offer().supplier(),
                                purchase.offer().availableFrom(),
                                money(resolved, purchase.outlay()),
                                money(resolved, purchase.netCost()),
                                false),
                        purchase.offer().covers(),
                        purchase.from(),
                        resolved.days - 1));
            }
        }
        return bought;
    }

    /** An owned unit stands once for each of its windows here, and is one choice all the same. */
    private static List<Taken> owned(Resolved resolved) {
        List<Taken> owned = new ArrayList<>();
        for (Question.Owned unit : resolved.question.owned()) {
            Choice choice = new Choice.Own(unit.id(), Money.zero(resolved.question.currency()));
            List<DateRange> windows =
                    unit.available().isEmpty() ? List.of(resolved.schedule.horizon()) : unit.available();
            for (DateRange window : windows) {
                if (window.overlaps(resolved.schedule.horizon())) {
                    owned.add(new Taken(
                            choice,
                            unit.covers(),
                            Math.max(0, resolved.schedule.dayOf(window.from())),
                            Math.min(resolved.days - 1, resolved.schedule.dayOf(window.until()) - 1)));
                }
            }
        }
        return owned;
    }

    private static List<Answer.Cash> cash(List<Taken> taken) {
        List<Answer.Cash> cash = new ArrayList<>();
        for (Taken each : taken) {
            if (each.choice() instanceof Choice.Rent rent) {
                cash.add(new Answer.Cash(rent.dates().from(), rent.total(), rent.option()));
            } else if (each.choice() instanceof Choice.Buy buy) {
                cash.add(new Answer.Cash(buy.from(), buy.outlay(), buy.option()));
            }
        }
        cash.sort(Comparator.comparing((Answer.Cash each) -> each.date()).thenComparing(Answer.Cash::option));
        return cash;
    }

    private static Money money(Resolved resolved, BigInteger minor) {
        return new Money(resolved.question.currency(), minor);
    }
}
