package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.cost.plan.StopSignal;
import dayglass.desk.DeskRules;
import dayglass.desk.KeptRules;
import dayglass.desk.price.Alternatives.Alternative;
import dayglass.house.House;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
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
        return today(house());
    }

    /** For how long glass is away that is used on such days. */
    public Stay stay(DateRange days) {
        return FreeDays.use(days.from(), days.lastDay(), house());
    }

    private LocalDate today(House house) {
        return LocalDate.ofInstant(whereabouts.clock().instant(), house.zone());
    }

    /** A price with what is worth saying of it. */
    public record Said(PackagePrice price, List<Alternative> alternatives) {}

    /**
     * Prices.
     *
     * @return refused where a line names nothing on the shelf, the days are over, or the house has no rates in force
     */
    public Outcome<PackagePrice> price(PackageAsked asked) {
        return pricing(asked).map(pricing -> valued(asked, pricing.on(asked)));
    }

    /** The same with its alternatives, which are priced by what was read for the price. */
    public Outcome<Said> withAlternatives(PackageAsked asked) {
        return pricing(asked).map(pricing -> {
            PackagePrice price = valued(asked, pricing.on(asked));
            return new Said(price, Alternatives.of(price, pricing));
        });
    }

    private Outcome<PackagePricing> pricing(PackageAsked asked) {
        House house = house();
        LocalDate today = today(house);
        if (asked.schedule().horizon().from().isBefore(today)) {
            return Outcome.faulty("/dates", "begins before today: a package is priced for days to come");
        }
        return Demands.of(asked, shelf).then(demands -> {
            Serving serving = Serving.of(demands, shelf);
            return basis(house, today, serving)
                    .map(basis -> new PackagePricing(basis, whereabouts.availability(), stop()));
        });
    }

    private House house() {
        return whereabouts.settings().now().facts();
    }

    /** Of the house's own cards those in its currency, of suppliers' all. */
    private Outcome<PackagePricing.Basis> basis(House house, LocalDate today, Serving serving) {
        Map<Supplier.Id, Supplier> suppliers = new HashMap<>();
        cards.suppliers()
                .list(Optional.empty(), Integer.MAX_VALUE)
                .forEach(each -> suppliers.put(each.id(), each.facts()));
        List<Rate> own = new ArrayList<>();
        List<SupplierOffers.Theirs> theirs = new ArrayList<>();
        for (Stored<RateCard.Id, RateCard> card : cards.rateCards().inForce(today, serving.things())) {
            Supplier supplier =
                    Objects.requireNonNull(suppliers.get(card.facts().supplier()));
            Currency currency = card.facts().currency();
            if (!supplier.house()) {
                card.facts().rates().forEach(rate -> theirs.add(new SupplierOffers.Theirs(supplier, currency, rate)));
            } else if (currency.equals(house.currency())) {
                own.addAll(card.facts().rates());
            }
        }
        DeskRules rules = cards.rules().now().facts();
        return own.isEmpty() && !houseLets(house, today)
                ? Outcome.refused(
                        Problem.Code.CANNOT_BE_DONE,
                        "The house has no rates in " + house.currency() + " in force on " + today
                                + ": give it a rate card whose rates say which model, set or unit they are for.")
                : Outcome.done(new PackagePricing.Basis(
                        house, rules, own, serving, new SupplierOffers(theirs, serving, house.currency(), rules)));
    }

    /** Whether the house has a rate for anything at all. */
    private boolean houseLets(House house, LocalDate today) {
        return cards.suppliers().house().map(us -> cards.rateCards().inForce(us.id(), today)).orElse(List.of()).stream()
                .filter(card -> card.facts().currency().equals(house.currency()))
                .flatMap(card -> card.facts().rates().stream())
                .anyMatch(rate -> rate.lets().isPresent());
    }

    private StopSignal stop() {
        Instant deadline = whereabouts.clock().instant().plusSeconds(MOST_SECONDS);
        return () -> !whereabouts.clock().instant().isBefore(deadline);
    }

    private PackagePrice valued(PackageAsked asked, PackagePricing.Laid laid) {
        House house = house();
        Currency currency = house.currency();
        Money value = Money.zero(currency);
        List<String> without = new ArrayList<>();
        Set<Unit.Id> units = laid.lines().stream()
                .flatMap(line -> line.units().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
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
        return new PackagePrice(asked, currency, today(house), laid.lines(), laid.shorts(), value, without);
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
