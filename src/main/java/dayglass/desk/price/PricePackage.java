package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.desk.KeptRules;
import dayglass.house.House;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Prices a package by the cards in force today: what is free on the shelf at the least total, by the engine that costs
 * jobs; what is short from suppliers' cards, with a mark-up.
 */
public final class PricePackage {
    /** On the phone a good price now is worth more than the proof of the best one. */
    private static final int MOST_SECONDS = 2;

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Cards cards;

    /** Whose rates, and by what rules. */
    public record Cards(Suppliers suppliers, RateCards rateCards, KeptRules rules) {}

    public PricePackage(Shelf shelf, Whereabouts whereabouts, Cards cards) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.cards = cards;
    }

    /** The day as the house's clock has it. */
    public LocalDate today() {
        return LocalDate.ofInstant(whereabouts.clock().instant(), house().zone());
    }

    /** For how long glass is away that is used on such days. */
    public Stay stay(DateRange days) {
        return FreeDays.use(days.from(), days.lastDay(), house());
    }

    /**
     * Prices.
     *
     * @return refused where a line names nothing on the shelf, the days are over, or the house has no rates in force
     */
    public Outcome<PackagePrice> price(PackageAsked asked) {
        LocalDate today = today();
        if (asked.schedule().horizon().from().isBefore(today)) {
            return Outcome.refused(Problem.faulty(
                    List.of(new Fault("/dates", "begins before today: a package is priced for days to come"))));
        }
        return houseRates(today)
                .then(rates -> Demands.of(asked, shelf).map(demands -> priced(asked, demands, rates, today)));
    }

    private House house() {
        return whereabouts.settings().now().facts();
    }

    private Outcome<List<Rate>> houseRates(LocalDate today) {
        Optional<Stored<Supplier.Id, Supplier>> us = cards.suppliers().house();
        List<Rate> rates = us.map(house -> rates(house.id(), today)).orElse(List.of()).stream()
                .filter(rate -> rate.lets().isPresent())
                .toList();
        return rates.isEmpty()
                ? Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "The house has no rates in " + house().currency() + " in force on " + today
                                + ": give it a rate card whose rates say which model, set or unit they are for.")
                : Outcome.done(rates);
    }

    /** The rates of a supplier's cards in force, in the house's currency: others cannot be added up with them. */
    private List<Rate> rates(Supplier.Id supplier, LocalDate today) {
        return cards.rateCards().inForce(supplier, today).stream()
                .filter(card -> card.facts().currency().equals(house().currency()))
                .flatMap(card -> card.facts().rates().stream())
                .toList();
    }

    private PackagePrice priced(PackageAsked asked, List<Demand> demands, List<Rate> rates, LocalDate today) {
        House house = house();
        DateRange days = asked.schedule().horizon();
        Set<LensModel.Id> models =
                demands.stream().flatMap(demand -> demand.models().stream()).collect(Collectors.toSet());
        List<Unit.Id> exact =
                demands.stream().flatMap(demand -> demand.unit().stream()).toList();
        FreeUnits free = new FreeUnits(whereabouts.availability(), stay(days), withSets(models, rates), exact);
        Map<String, Offer> offers = new HouseOffers(shelf, free, demands, asked.insured()).of(rates, house.name());
        Packing packing = new Packing(asked.schedule(), house.currency());
        List<Choice.Rent> chosen =
                packing.least(needs(demands, asked.schedule()), demands, offers, free.stock(), stop());
        Charging charging = new Charging(asked, cards.rules().now().facts());
        List<Picking.Period> held = new ArrayList<>();
        List<Choice.Rent> kept = new ArrayList<>();
        List<Choice.Rent> missing = new ArrayList<>();
        for (Choice.Rent period : chosen) {
            Optional<Offer> offer = Optional.ofNullable(offers.get(period.option()));
            if (offer.isPresent()) {
                held.add(new Picking.Period(offer.get(), period.dates()));
                kept.add(period);
            } else {
                missing.add(period);
            }
        }
        List<List<Unit.Id>> picked = new Picking(free).pick(held);
        List<PricedLine> lines = new ArrayList<>();
        for (int at = 0; at < kept.size(); at++) {
            lines.add(charging.own(held.get(at).offer(), kept.get(at), picked.get(at)));
        }
        List<PackagePrice.Missing> shorts = rentIn(asked, demands, missing, charging, lines);
        lines.sort(java.util.Comparator.comparingInt(PricedLine::line)
                .thenComparing(line -> line.dates().from()));
        return valued(asked, house.currency(), today, lines, shorts);
    }

    /** Sets may bring models that nobody asked for; whether they are free decides whether the set is. */
    private Set<LensModel.Id> withSets(Set<LensModel.Id> models, List<Rate> rates) {
        Set<LensModel.Id> all = new java.util.HashSet<>(models);
        for (Rate rate : rates) {
            rate.lets()
                    .filter(lets -> lets.kind() == dayglass.catalogue.Lets.Kind.SET)
                    .flatMap(lets -> shelf.sets().find(new dayglass.inventory.LensSet.Id(lets.number())))
                    .ifPresent(set -> {
                        Set<LensModel.Id> members = set.facts().members().stream()
                                .flatMap(unit -> shelf.units().find(unit).orElseThrow().facts().model().stream())
                                .collect(Collectors.toSet());
                        if (members.stream().anyMatch(models::contains)) {
                            all.addAll(members);
                        }
                    });
        }
        return all;
    }

    static List<Question.Need> needs(List<Demand> demands, Schedule schedule) {
        List<DateRange> used =
                schedule.spans().stream().map(Schedule.Span::dates).toList();
        return demands.stream()
                .map(demand -> new Question.Need(demand.slot(), demand.count(), Set.of(), used))
                .toList();
    }

    private StopSignal stop() {
        Instant deadline = whereabouts.clock().instant().plusSeconds(MOST_SECONDS);
        return () -> !whereabouts.clock().instant().isBefore(deadline);
    }

    /** Adds a line for each missing period that a supplier can serve, and says of all what is missing. */
    private List<PackagePrice.Missing> rentIn(
            PackageAsked asked,
            List<Demand> demands,
            List<Choice.Rent> missing,
            Charging charging,
            List<PricedLine> lines) {
        List<PackagePrice.Missing> shorts = new ArrayList<>();
        Map<String, Demand> bySlot = demands.stream().collect(Collectors.toMap(Demand::slot, demand -> demand));
        SupplierOffers suppliers = supplierOffers(demands);
        for (Choice.Rent period : missing) {
            Demand demand = Objects.requireNonNull(bySlot.get(Packing.slotOf(period.option())));
            Schedule during = Packing.during(asked.schedule(), period.dates());
            Packing packing = new Packing(during, house().currency());
            Map<String, Offer> offers = suppliers.of(demand);
            List<Choice.Rent> chosen =
                    packing.least(needs(List.of(one(demand)), during), List.of(one(demand)), offers, Map.of(), stop());
            for (Choice.Rent each : chosen) {
                Optional<Offer> offer = Optional.ofNullable(offers.get(each.option()));
                shorts.add(new PackagePrice.Missing(demand.line(), demand.label(), each.dates(), offer.isPresent()));
                offer.ifPresent(from -> lines.add(charging.rentedIn(from, each)));
            }
        }
        return shorts;
    }

    private static Demand one(Demand demand) {
        return new Demand(demand.slot(), demand.line(), demand.label(), demand.models(), demand.unit(), 1);
    }

    private SupplierOffers supplierOffers(List<Demand> demands) {
        LocalDate today = today();
        Map<String, List<Rate>> rates = new LinkedHashMap<>();
        if (!demands.isEmpty()) {
            for (Stored<Supplier.Id, Supplier> supplier : cards.suppliers().list(Optional.empty(), Integer.MAX_VALUE)) {
                if (!supplier.facts().house()) {
                    rates.put(supplier.facts().name(), rates(supplier.id(), today));
                }
            }
        }
        return new SupplierOffers(rates, shelf.modelNames());
    }

    private PackagePrice valued(
            PackageAsked asked,
            Currency currency,
            LocalDate today,
            List<PricedLine> lines,
            List<PackagePrice.Missing> shorts) {
        Money value = Money.zero(currency);
        List<String> without = new ArrayList<>();
        Set<Unit.Id> units = lines.stream()
                .flatMap(line -> line.units().stream())
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        for (Unit.Id id : units) {
            Unit unit = shelf.units().find(id).orElseThrow().facts();
            Optional<Money> one = unit.value()
                    .map(Unit.Value::amount)
                    .filter(amount -> amount.currency().equals(currency));
            value = one.map(value::plus).orElse(value);
            if (one.isEmpty()) {
                without.add(unit.tag());
            }
        }
        return new PackagePrice(asked, currency, today, lines, shorts, value, without);
    }

    /** A discount beyond what the rules allow, for the refusal of anybody but an owner. */
    public Optional<Percent> beyondFloor(PackageAsked asked) {
        Percent floor = cards.rules().now().facts().floor();
        java.math.BigDecimal most = new java.math.BigDecimal(100).subtract(floor.value());
        java.math.BigDecimal asks = asked.off().value();
        for (int line = 0; line < asked.lines().size(); line++) {
            asks = asks.max(asked.off(line).value());
        }
        return asks.compareTo(most) > 0 ? Optional.of(new Percent(most)) : Optional.empty();
    }
}
