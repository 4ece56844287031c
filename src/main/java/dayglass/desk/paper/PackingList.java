package dayglass.desk.paper;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Rental;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What goes out on a rental, piece by piece, with the facts that a customs carnet's general list asks for: the columns
 * of the list in the model of an ATA carnet (Convention on Temporary Admission, Istanbul 1990, Annex A, Appendix I; its
 * columns from memory, and as chambers of commerce explain them). A lens is one piece under a number of its own, what
 * belongs with it is described beside it, and nothing is summed up as a set.
 */
public record PackingList(List<Row> rows) {
    public PackingList {
        rows = List.copyOf(rows);
    }

    /**
     * One piece.
     *
     * @param tag empty where it is rented in for this rental and not on the house's shelf
     * @param with its accessories
     * @param weightG of the lens alone, as its model says
     * @param value what replacing it costs
     */
    public record Row(
            String tag,
            String description,
            List<String> with,
            Optional<String> serial,
            Optional<Integer> weightG,
            Optional<Money> value,
            Optional<String> origin) {
        public Row {
            with = List.copyOf(with);
        }

        /** As a sentence names it. */
        String name() {
            return tag.isEmpty() ? description : tag;
        }
    }

    /** Of the units that stand in a rental now, each once, then what is rented in. */
    public static PackingList of(Rental rental, Shelf shelf) {
        Set<Unit.Id> units = new LinkedHashSet<>();
        rental.standing().forEach(placed -> units.add(placed.unit()));
        List<Row> rows = new ArrayList<>();
        units.forEach(unit -> shelf.units().find(unit).ifPresent(found -> rows.add(row(found.facts(), shelf))));
        for (PricedLine line : rental.promise().price().lines()) {
            if (line.rentedIn().isPresent()) {
                rows.add(rentedIn(line));
            }
        }
        return new PackingList(rows);
    }

    private static Row row(Unit unit, Shelf shelf) {
        Optional<LensModel> model = unit.model().flatMap(shelf.models()::find).map(Stored::facts);
        return new Row(
                unit.tag(),
                model.map(PackingList::described).orElse("kind not recorded"),
                unit.accessories(),
                unit.serial(),
                model.flatMap(known -> known.record().weightG()),
                unit.value().map(Unit.Value::amount),
                unit.papers().origin());
    }

    /** Maker, name and what a lay person would call it. */
    private static String described(LensModel model) {
        boolean lens = switch (model.kind()) {
            case SPHERICAL_PRIME, SPHERICAL_ZOOM, ANAMORPHIC_PRIME, ANAMORPHIC_ZOOM -> true;
            case FRONT_ATTACHMENT, EFFECT_FILTER, CLOSE_UP_DIOPTRE, MOUNT_ADAPTER -> false;
        };
        String kind = model.kind().word() + (lens ? " lens" : "");
        String focal = model.record()
                .focalMm()
                .map(shortest -> model.record()
                        .longestFocalMm()
                        .map(longest -> ", " + shortest.toPlainString() + "\u2013" + longest.toPlainString() + " mm")
                        .orElse(", " + shortest.toPlainString() + " mm"))
                .orElse("");
        return model.fullName() + ", " + kind + focal;
    }

    private static Row rentedIn(PricedLine line) {
        return new Row(
                "",
                line.what() + ", rented in for this rental",
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public int pieces() {
        return rows.size();
    }

    /** The weights that are known. */
    public long weightG() {
        return rows.stream()
                .flatMap(row -> row.weightG().stream())
                .mapToLong(Integer::longValue)
                .sum();
    }

    /** The values that are known, by currency. */
    public List<Money> values() {
        Map<Currency, Money> sums = new LinkedHashMap<>();
        rows.stream()
                .flatMap(row -> row.value().stream())
                .forEach(value -> sums.merge(value.currency(), value, Money::plus));
        return List.copyOf(sums.values());
    }

    /** What a general list needs and is not known, by its name. */
    public Map<String, List<String>> missing() {
        Map<String, List<String>> missing = new LinkedHashMap<>();
        missing.put("serial", without(row -> row.serial().isEmpty()));
        missing.put("weight", without(row -> row.weightG().isEmpty()));
        missing.put("value", without(row -> row.value().isEmpty()));
        missing.put("country of origin", without(row -> row.origin().isEmpty()));
        missing.values().removeIf(List::isEmpty);
        return missing;
    }

    private List<String> without(Predicate<Row> lacks) {
        return rows.stream().filter(lacks).map(Row::name).toList();
    }
}
