package dayglass.desk.price;

import dayglass.base.DateRange;
import dayglass.catalogue.Rate;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.desk.DeskRules;
import dayglass.desk.price.PackagePrice.Missing;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Availability;
import dayglass.inventory.booking.FreeDays;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Prices the lines of one package on whichever days; but for what is free then, all was read before. */
final class PackagePricing {
    private final Basis basis;
    private final Availability availability;
    private final StopSignal stop;

    PackagePricing(Basis basis, Availability availability, StopSignal stop) {
        this.basis = basis;
        this.availability = availability;
        this.stop = stop;
    }

    /**
     * By what it prices.
     *
     * @param rates the house's own
     */
    record Basis(House house, DeskRules rules, List<Rate> rates, Serving serving, SupplierOffers suppliers) {}

    /** The lines on some days, by line and date, and what is missing. */
    record Laid(List<PricedLine> lines, List<Missing> shorts) {
        /** Whether all that was asked for can be supplied. */
        boolean whole() {
            return shorts.stream().allMatch(Missing::rentedIn);
        }
    }

    /**
     * What the engine chose: periods of the shelf with their units, and periods that nothing on it serves.
     *
     * @param unpriced where something is missing, the slots for which something is free and the house has no rate
     */
    private record Chosen(List<Held> held, List<Choice.Rent> missing, Set<String> unpriced) {}

    private record Held(Offer offer, Choice.Rent period, List<Unit.Id> units) {}

    Laid on(PackageAsked asked) {
        DateRange days = asked.schedule().horizon();
        Serving serving = basis.serving();
        FreeUnits free = new FreeUnits(availability.free(
                FreeDays.use(days.from(), days.lastDay(), basis.house()), serving.models(), serving.units()));
        Chosen chosen = choose(asked, free, false)
                .or(() -> choose(asked, free, true))
                .orElseThrow(() -> new IllegalStateException("the engine promised more units than there are"));
        Charging charging = new Charging(asked, basis.rules());
        List<PricedLine> lines = new ArrayList<>();
        for (Held held : chosen.held()) {
            lines.add(charging.own(held.offer(), held.period(), held.units()));
        }
        List<Missing> shorts = rentIn(asked.schedule(), chosen, charging, lines);
        lines.sort(Comparator.comparingInt(PricedLine::line)
                .thenComparing(line -> line.dates().from()));
        return new Laid(lines, shorts);
    }

    /**
     * The least periods; empty where units cannot be picked for them, which happens where sets take the units of a model
     * one after the other and another is wanted throughout. Offered unit by unit they always can.
     */
    private Optional<Chosen> choose(PackageAsked asked, FreeUnits free, boolean byUnit) {
        List<Demand> demands = basis.serving().demands();
        Map<String, Offer> offers = new HouseOffers(basis.serving(), free, asked.insured(), byUnit)
                .of(basis.rates(), basis.house().name());
        List<Choice.Rent> periods = new Packing(asked.schedule(), basis.house().currency())
                .least(needs(demands, asked.schedule()), demands, offers, free.stock(), stop);
        Map<Boolean, List<Choice.Rent>> onShelf =
                periods.stream().collect(Collectors.partitioningBy(period -> offers.containsKey(period.option())));
        List<Choice.Rent> kept = onShelf.getOrDefault(true, List.of());
        List<Picking.Period> open = kept.stream()
                .map(period -> new Picking.Period(Objects.requireNonNull(offers.get(period.option())), period.dates()))
                .toList();
        return new Picking(free).pick(open).map(units -> {
            List<Held> held = new ArrayList<>();
            for (int at = 0; at < kept.size(); at++) {
                held.add(new Held(open.get(at).offer(), kept.get(at), units.get(at)));
            }
            List<Choice.Rent> missing = onShelf.getOrDefault(false, List.of());
            return new Chosen(held, missing, missing.isEmpty() ? Set.of() : unpriced(demands, offers, free));
        });
    }

    private static Set<String> unpriced(List<Demand> demands, Map<String, Offer> offers, FreeUnits free) {
        Set<String> offered = offers.values().stream()
                .flatMap(offer -> offer.option().covers().keySet().stream())
                .collect(Collectors.toSet());
        return demands.stream()
                .filter(free::has)
                .map(Demand::slot)
                .filter(slot -> !offered.contains(slot))
                .collect(Collectors.toSet());
    }

    /** What is missing alike is asked for together, as suppliers have so many of each and no more. */
    private record Gap(String slot, DateRange dates) {}

    /** Adds a line for each missing period that a supplier can serve, and says of all what is missing. */
    private List<Missing> rentIn(Schedule schedule, Chosen chosen, Charging charging, List<PricedLine> lines) {
        Map<Gap, Integer> counts = new LinkedHashMap<>();
        chosen.missing()
                .forEach(period ->
                        counts.merge(new Gap(Packing.slotOf(period.option()), period.dates()), 1, Integer::sum));
        Map<String, Demand> bySlot =
                basis.serving().demands().stream().collect(Collectors.toMap(Demand::slot, Function.identity()));
        List<Missing> shorts = new ArrayList<>();
        counts.forEach((what, count) -> {
            Demand demand = Objects.requireNonNull(bySlot.get(what.slot())).times(count);
            Schedule during = Packing.during(schedule, what.dates());
            Map<String, Offer> offers = basis.suppliers().of(demand);
            List<Demand> one = List.of(demand);
            for (Choice.Rent period : new Packing(during, basis.house().currency())
                    .least(needs(one, during), one, offers, Map.of(), stop)) {
                Optional<Offer> offer = Optional.ofNullable(offers.get(period.option()));
                String remedy = chosen.unpriced().contains(demand.slot())
                        ? "One is free, but the house has no rate for it: give it one on a rate card of the house."
                        : offer.isPresent() ? "" : basis.suppliers().remedy(demand);
                shorts.add(new Missing(demand.line(), demand.label(), period.dates(), offer.isPresent(), remedy));
                offer.ifPresent(from -> lines.add(charging.rentedIn(from, period)));
            }
        });
        return shorts;
    }

    /** On dark days nothing is needed. */
    private static List<Question.Need> needs(List<Demand> demands, Schedule schedule) {
        List<DateRange> used = schedule.spans().stream()
                .filter(span -> span.use() != DayUse.DARK)
                .map(Schedule.Span::dates)
                .toList();
        return demands.stream()
                .map(demand -> new Question.Need(demand.slot(), demand.count(), Set.of(), used))
                .toList();
    }
}
