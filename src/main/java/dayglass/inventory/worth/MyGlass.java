package dayglass.inventory.worth;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Suppliers;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.OwnSales;
import dayglass.house.House;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.inventory.life.LettingIncome;
import dayglass.inventory.life.Lettings;
import dayglass.inventory.life.UnitArchive;
import dayglass.inventory.life.UnitRecords;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Every unit that the house owns today, and every set that holds one. */
public final class MyGlass {
    private static final int ALL = Integer.MAX_VALUE;

    private final UnitArchive archive;
    private final Suppliers suppliers;
    private final RateCards rateCards;
    private final LettingIncome letting;

    public MyGlass(UnitArchive archive, Suppliers suppliers, RateCards rateCards, LettingIncome letting) {
        this.suppliers = suppliers;
        this.archive = archive;
        this.rateCards = rateCards;
        this.letting = letting;
    }

    /**
     * What there is.
     *
     * @param lettingRecorded whether the house keeps what letting brings
     * @param units by tag
     * @param sets by name
     */
    public record Glass(
            LocalDate on, Footing footing, boolean lettingRecorded, List<UnitWorth> units, List<SetWorth> sets) {
        public Glass {
            units = List.copyOf(units);
            sets = List.copyOf(sets);
        }
    }

    /** As it stands now. */
    public Glass by(Footing footing) {
        House house = archive.whereabouts().settings().now().facts();
        Instant now = archive.whereabouts().clock().instant();
        LocalDate today = now.atZone(house.zone()).toLocalDate();
        List<Stored<Unit.Id, Unit>> all = archive.shelf().units().list(Optional.empty(), ALL);
        Weighing weighing = new Weighing(
                footing,
                house,
                now,
                new SimilarRates(rateCards, suppliers.house().map(Stored::id), today),
                new Growths());
        Map<LensModel.Id, List<OwnSales.Sale>> sales = sales(all);
        Map<Unit.Id, UnitWorth> units = new LinkedHashMap<>();
        Optional<Map<Unit.Id, Lettings>> lettings = letting.all(all);
        List<Stored<Unit.Id, Unit>> owned =
                byTag(all).stream().filter(unit -> owned(unit.facts(), today)).toList();
        Map<Unit.Id, UnitRecords> records = archive.ofUse(owned);
        for (Stored<Unit.Id, Unit> unit : owned) {
            units.put(
                    unit.id(),
                    weighing.of(
                            unit,
                            Objects.requireNonNull(records.get(unit.id())),
                            lettings.map(of -> of.getOrDefault(unit.id(), Lettings.NONE))
                                    .orElse(Lettings.NONE),
                            unit.facts()
                                    .model()
                                    .map(model -> sales.getOrDefault(model, List.of()))
                                    .orElse(List.of())));
        }
        return new Glass(today, footing, lettings.isPresent(), List.copyOf(units.values()), sets(units));
    }

    /** What every owned unit that was sold says, where its purchase and its sale are recorded. */
    public List<OwnSales.Sale> sold() {
        return archive.shelf().units().list(Optional.empty(), ALL).stream()
                .flatMap(unit -> ValueToday.sale(unit.facts()).stream())
                .toList();
    }

    private static List<Stored<Unit.Id, Unit>> byTag(List<Stored<Unit.Id, Unit>> units) {
        return units.stream()
                .sorted(Comparator.comparing(unit -> unit.facts().tag()))
                .toList();
    }

    private static boolean owned(Unit unit, LocalDate today) {
        boolean gone =
                unit.departure().filter(left -> !left.on().isAfter(today)).isPresent();
        return !gone && unit.holding().fold(owned -> true, rented -> false, lent -> false);
    }

    private static Map<LensModel.Id, List<OwnSales.Sale>> sales(List<Stored<Unit.Id, Unit>> all) {
        Map<LensModel.Id, List<OwnSales.Sale>> sales = new HashMap<>();
        for (Stored<Unit.Id, Unit> unit : all) {
            unit.facts()
                    .model()
                    .ifPresent(model -> ValueToday.sale(unit.facts())
                            .ifPresent(sale -> sales.computeIfAbsent(model, name -> new ArrayList<>())
                                    .add(sale)));
        }
        return sales;
    }

    private List<SetWorth> sets(Map<Unit.Id, UnitWorth> units) {
        List<SetWorth> sets = new ArrayList<>();
        for (Stored<LensSet.Id, LensSet> set : archive.shelf().sets().list(Optional.empty(), ALL)) {
            List<UnitWorth> members = set.facts().members().stream()
                    .filter(units::containsKey)
                    .map(units::get)
                    .toList();
            if (!members.isEmpty()) {
                sets.add(new SetWorth(set, members, set.facts().members().size() - members.size()));
            }
        }
        sets.sort(Comparator.comparing(set -> set.set().facts().name()));
        return sets;
    }
}
