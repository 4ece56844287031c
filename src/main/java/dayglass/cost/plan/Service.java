package dayglass.cost.plan;

import dayglass.base.Money;
import dayglass.base.Shares;
import dayglass.cost.plan.AnswerBuilder.Taken;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Who serves what: on each day each slot is served by as many of what is held as it asks for, in the order in which
 * they are given.
 */
final class Service {
    private final Resolved resolved;
    private final List<Taken> held;

    /** By held thing: the slot-days that it serves, as day times slots plus slot, ascending. */
    private final List<List<Integer>> served = new ArrayList<>();

    private final List<Answer.Coverage> coverage = new ArrayList<>();

    Service(Resolved resolved, List<Taken> held) {
        this.resolved = resolved;
        this.held = held;
        held.forEach(each -> served.add(new ArrayList<>()));
        for (int day = 0; day < resolved.days; day++) {
            for (int slot = 0; slot < resolved.slots.size(); slot++) {
                if (resolved.asked[slot][day] > 0) {
                    serve(day, slot);
                }
            }
        }
    }

    private void serve(int day, int slot) {
        String name = resolved.slots.get(slot);
        List<String> by = new ArrayList<>();
        int open = resolved.asked[slot][day];
        for (int i = 0; i < held.size() && open > 0; i++) {
            Taken each = held.get(i);
            int count = each.covers().getOrDefault(name, 0);
            if (count > 0 && each.first() <= day && day <= each.last()) {
                open -= count;
                by.add(each.choice().option());
                served.get(i).add(day * resolved.slots.size() + slot);
            }
        }
        coverage.add(new Answer.Coverage(resolved.schedule.dateOf(day), name, by));
    }

    List<Answer.Coverage> coverage() {
        return coverage;
    }

    /** What the answer names: rentals by date, then purchases, then owned units that serve, each of them once. */
    List<Taken> shown() {
        List<Taken> shown = new ArrayList<>();
        List<String> owned = new ArrayList<>();
        for (int i = 0; i < held.size(); i++) {
            Taken each = held.get(i);
            boolean idle = served.get(i).isEmpty();
            if (each.choice() instanceof Choice.Buy buy) {
                Choice choice =
                        new Choice.Buy(buy.option(), buy.supplier(), buy.from(), buy.outlay(), buy.netCost(), idle);
                shown.add(new Taken(choice, each.covers(), each.first(), each.last()));
            } else if (!(each.choice() instanceof Choice.Own own)) {
                shown.add(each);
            } else if (!idle && !owned.contains(own.option())) {
                owned.add(own.option());
                shown.add(each);
            }
        }
        shown.sort(Comparator.comparingInt(Service::rank));
        return shown;
    }

    private static int rank(Taken taken) {
        if (taken.choice() instanceof Choice.Rent) {
            return 0;
        }
        return taken.choice() instanceof Choice.Buy ? 1 : 2;
    }

    /** What each asked-for slot costs on each day: every choice is shared evenly over the slot-days it serves. */
    List<Explanation.SlotDay> slotDays() {
        BigInteger[] sums = new BigInteger[resolved.days * resolved.slots.size()];
        java.util.Arrays.fill(sums, BigInteger.ZERO);
        for (int i = 0; i < held.size(); i++) {
            List<Integer> places = served.get(i);
            if (!places.isEmpty()) {
                List<BigInteger> shares =
                        Shares.evenly(held.get(i).choice().total().minor(), places.size());
                for (int at = 0; at < places.size(); at++) {
                    sums[places.get(at)] = sums[places.get(at)].add(shares.get(at));
                }
            }
        }
        List<Explanation.SlotDay> slotDays = new ArrayList<>();
        for (int day = 0; day < resolved.days; day++) {
            for (int slot = 0; slot < resolved.slots.size(); slot++) {
                if (resolved.asked[slot][day] > 0) {
                    slotDays.add(new Explanation.SlotDay(
                            resolved.schedule.dateOf(day),
                            resolved.slots.get(slot),
                            new Money(resolved.question.currency(), sums[day * resolved.slots.size() + slot])));
                }
            }
        }
        return slotDays;
    }

    /** The choices that serve nothing, together. */
    Money unshared() {
        Money sum = Money.zero(resolved.question.currency());
        for (int i = 0; i < held.size(); i++) {
            if (served.get(i).isEmpty()) {
                sum = sum.plus(held.get(i).choice().total());
            }
        }
        return sum;
    }
}
