package dayglass.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.UnitState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the shelf can supply at the house's rates: units of models, units by themselves, and whole sets. */
final class HouseOffers {
    private final Serving serving;
    private final FreeUnits free;
    private final boolean insured;
    private final boolean byUnit;
    private final Map<String, Offer> offers = new LinkedHashMap<>();

    /** @param byUnit each unit of a model is offered by itself, not any of so many: slower, and always to be picked */
    HouseOffers(Serving serving, FreeUnits free, boolean insured, boolean byUnit) {
        this.serving = serving;
        this.free = free;
        this.insured = insured;
        this.byUnit = byUnit;
    }

    /** The offers that some rates make, by the id of their options. */
    Map<String, Offer> of(List<Rate> rates, String house) {
        for (Rate rate : rates) {
            rate.lets().ifPresent(lets -> add(rate, lets, house));
        }
        return offers;
    }

    private void add(Rate rate, Lets lets, String house) {
        if (lets.kind() == Lets.Kind.SET) {
            serving.set(new LensSet.Id(lets.number())).filter(free::whole).ifPresent(set -> whole(rate, set, house));
            return;
        }
        for (Demand demand : serving.demands()) {
            if (lets.kind() == Lets.Kind.UNIT) {
                free.unit(new Unit.Id(lets.number()))
                        .filter(unit -> demand.servedBy(unit.unit(), unit.model()))
                        .ifPresent(unit -> single(rate, demand, unit, house));
            } else {
                ofModel(rate, demand, new LensModel.Id(lets.number()), house);
            }
        }
    }

    private void ofModel(Rate rate, Demand demand, LensModel.Id model, String house) {
        List<UnitState> units = free.ofModel(model);
        if (byUnit || demand.unit().isPresent()) {
            units.stream()
                    .filter(unit -> demand.servedBy(unit.unit(), unit.model()))
                    .forEach(unit -> single(rate, demand, unit, house));
        } else if (demand.models().contains(model) && !units.isEmpty()) {
            put(
                    rate,
                    demand,
                    new Question.Rental(
                            rate.code() + ", " + demand.slot(),
                            house,
                            Map.of(demand.slot(), 1),
                            Math.min(demand.count(), units.size()),
                            Offer.terms(rate, insured),
                            rate.available(),
                            Map.of(FreeUnits.ofModelThing(model), 1)),
                    serving.name(model).orElse(demand.label()),
                    List.of());
        }
    }

    private void single(Rate rate, Demand demand, UnitState unit, String house) {
        put(
                rate,
                demand,
                new Question.Rental(
                        rate.code() + ", " + unit.tag() + ", " + demand.slot(),
                        house,
                        Map.of(demand.slot(), 1),
                        1,
                        Offer.terms(rate, insured),
                        rate.available(),
                        FreeUnits.draws(unit)),
                unit.model()
                        .flatMap(serving::name)
                        .map(name -> name + " (" + unit.tag() + ")")
                        .orElse(unit.tag()),
                List.of(unit.unit()));
    }

    /** A member serves the first demand, those for it alone before others, that still has room for it. */
    private void whole(Rate rate, LensSet set, String house) {
        Map<String, Integer> covers = new LinkedHashMap<>();
        Map<String, Integer> draws = new HashMap<>();
        Optional<Demand> first = Optional.empty();
        List<Demand> byPlace = new ArrayList<>(serving.demands());
        byPlace.sort(java.util.Comparator.comparing(demand -> demand.unit().isEmpty()));
        for (Unit.Id member : set.members()) {
            UnitState unit = free.unit(member).orElseThrow();
            FreeUnits.draws(unit).forEach((thing, count) -> draws.merge(thing, count, Integer::sum));
            Optional<Demand> served = byPlace.stream()
                    .filter(demand -> demand.servedBy(member, unit.model()))
                    .filter(demand -> covers.getOrDefault(demand.slot(), 0) < demand.count())
                    .findFirst();
            served.ifPresent(demand -> covers.merge(demand.slot(), 1, Integer::sum));
            first = first.isPresent() ? first : served;
        }
        first.ifPresent(demand -> put(
                rate,
                demand,
                new Question.Rental(
                        rate.code() + ", set", house, covers, 1, Offer.terms(rate, insured), rate.available(), draws),
                set.name(),
                set.members()));
    }

    private void put(Rate rate, Demand demand, Question.Rental option, String what, List<Unit.Id> units) {
        offers.put(option.id(), new Offer(option, rate, demand, what, units, Optional.empty()));
    }
}
