package dayglass.desk.price;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Rate;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
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
    private final Shelf shelf;
    private final FreeUnits free;
    private final List<Demand> demands;
    private final boolean insured;
    private final Map<String, Offer> offers = new LinkedHashMap<>();

    HouseOffers(Shelf shelf, FreeUnits free, List<Demand> demands, boolean insured) {
        this.shelf = shelf;
        this.free = free;
        this.demands = demands;
        this.insured = insured;
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
            shelf.sets()
                    .find(new LensSet.Id(lets.number()))
                    .filter(set -> free.whole(set.facts()))
                    .ifPresent(set -> whole(rate, set, house));
            return;
        }
        for (Demand demand : demands) {
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
        if (demand.unit().isPresent()) {
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
                    List.of(),
                    Optional.of(model));
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
                List.of(unit.unit()),
                Optional.empty());
    }

    /** A member serves the first demand, those for it alone before others, that still has room for it. */
    private void whole(Rate rate, Stored<LensSet.Id, LensSet> set, String house) {
        Map<String, Integer> covers = new LinkedHashMap<>();
        Map<String, Integer> draws = new HashMap<>();
        Optional<Demand> first = Optional.empty();
        List<Demand> byPlace = new ArrayList<>(demands);
        byPlace.sort(java.util.Comparator.comparing(demand -> demand.unit().isEmpty()));
        for (Unit.Id member : set.facts().members()) {
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
                set.facts().members(),
                Optional.empty()));
    }

    private void put(
            Rate rate, Demand demand, Question.Rental option, List<Unit.Id> units, Optional<LensModel.Id> model) {
        offers.put(option.id(), new Offer(option, rate, demand, what(rate, demand, units), units, model));
    }

    private String what(Rate rate, Demand demand, List<Unit.Id> units) {
        Lets lets = rate.lets().orElseThrow();
        if (lets.kind() == Lets.Kind.SET) {
            return shelf.sets()
                    .find(new LensSet.Id(lets.number()))
                    .orElseThrow()
                    .facts()
                    .name();
        }
        if (lets.kind() == Lets.Kind.MODEL && units.isEmpty()) {
            return shelf.modelNames().getOrDefault(new LensModel.Id(lets.number()), demand.label());
        }
        return shelf.units().find(units.get(0)).map(unit -> named(unit.facts())).orElse(demand.label());
    }

    private String named(Unit unit) {
        return unit.model()
                .flatMap(model -> shelf.models().find(model))
                .map(model -> model.facts().maker() + " " + model.facts().name() + " (" + unit.tag() + ")")
                .orElse(unit.tag());
    }
}
