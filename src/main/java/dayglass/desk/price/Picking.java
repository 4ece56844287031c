package dayglass.desk.price;

import dayglass.base.DateRange;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.UnitState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Picks the very units for periods of which only the model is settled, so that none goes twice on one day. */
final class Picking {
    private final FreeUnits free;
    private final Map<Unit.Id, List<DateRange>> taken = new HashMap<>();

    Picking(FreeUnits free) {
        this.free = free;
    }

    /** A period and the offer that it is held by. */
    record Period(Offer offer, DateRange dates) {}

    /**
     * The units of each period, in the order of the periods; empty where no unit of a model is free for the whole of a
     * period, though on each of its days one is.
     */
    Optional<List<List<Unit.Id>>> pick(List<Period> periods) {
        List<List<Unit.Id>> picked = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int place = 0; place < periods.size(); place++) {
            Period period = periods.get(place);
            picked.add(period.offer().units());
            if (period.offer().units().isEmpty()) {
                open.add(place);
            }
            period.offer().units().forEach(unit -> take(unit, period.dates()));
        }
        open.sort(Comparator.comparing(
                        (Integer place) -> periods.get(place).dates().from())
                .thenComparing(place -> -periods.get(place).dates().days()));
        return place(periods, open, picked) ? Optional.of(List.copyOf(picked)) : Optional.empty();
    }

    /** Units that are fixed to other days may forbid the first choice, so it is taken back where it leads nowhere. */
    private boolean place(List<Period> periods, List<Integer> open, List<List<Unit.Id>> picked) {
        if (open.isEmpty()) {
            return true;
        }
        Period period = periods.get(open.get(0));
        for (UnitState unit : free.ofModel(period.offer().model())) {
            if (isFree(unit.unit(), period.dates())) {
                take(unit.unit(), period.dates());
                picked.set(open.get(0), List.of(unit.unit()));
                if (place(periods, open.subList(1, open.size()), picked)) {
                    return true;
                }
                Optional.ofNullable(taken.get(unit.unit())).ifPresent(dates -> dates.remove(period.dates()));
            }
        }
        return false;
    }

    private boolean isFree(Unit.Id unit, DateRange dates) {
        return taken.getOrDefault(unit, List.of()).stream().noneMatch(dates::overlaps);
    }

    private void take(Unit.Id unit, DateRange dates) {
        taken.computeIfAbsent(unit, each -> new ArrayList<>()).add(dates);
    }
}
