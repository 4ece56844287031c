package dayglass.shelf.table;

import dayglass.base.Stored;
import dayglass.catalogue.Lets;
import dayglass.inventory.Shelf;
import dayglass.shelf.LetsNames;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a rate is for in cells: a model by its maker and name, a set by its name, a unit by its tag. */
record LetsCells(Shelf shelf) {
    /**
     * What cells name.
     *
     * @param lets empty where they name nothing that there is
     * @param pointer of the cell that is at fault
     * @param fault empty where none is
     */
    record Found(Optional<Lets> lets, String pointer, String fault) {}

    /** The cells of what a rate is for, by the pointers of their columns. */
    Map<String, String> cells(Lets lets) {
        LetsNames names = new LetsNames(shelf);
        Map<String, String> cells = new LinkedHashMap<>();
        names.model(lets).ifPresent(model -> {
            cells.put(RateColumns.MAKER, model.maker());
            cells.put(RateColumns.MODEL, model.name());
        });
        names.set(lets).ifPresent(set -> cells.put(RateColumns.SET, set.name()));
        names.unit(lets).ifPresent(unit -> cells.put(RateColumns.UNIT, unit.tag()));
        return cells;
    }

    /** @param cells by the pointers of their columns, only such as have something in them, one at least */
    Found read(Map<String, String> cells) {
        boolean model = cells.containsKey(RateColumns.MAKER) || cells.containsKey(RateColumns.MODEL);
        String set = cells.getOrDefault(RateColumns.SET, "");
        String unit = cells.getOrDefault(RateColumns.UNIT, "");
        if (Stream.of(model, !set.isEmpty(), !unit.isEmpty())
                        .filter(given -> given)
                        .count()
                > 1) {
            return fault(
                    set.isEmpty() ? RateColumns.UNIT : RateColumns.SET,
                    "a rate is for one thing: a model by its maker and name, or a set, or a unit");
        }
        if (model) {
            return model(cells.getOrDefault(RateColumns.MAKER, ""), cells.getOrDefault(RateColumns.MODEL, ""));
        }
        return set.isEmpty()
                ? found(Lets.Kind.UNIT, shelf.units().tagged(unit), RateColumns.UNIT, "unit with the tag " + unit)
                : found(Lets.Kind.SET, shelf.sets().named(set), RateColumns.SET, "set " + set);
    }

    private Found model(String maker, String name) {
        return maker.isEmpty() || name.isEmpty()
                ? fault(
                        maker.isEmpty() ? RateColumns.MAKER : RateColumns.MODEL,
                        "a model is named by its maker and its name: give both")
                : found(
                        Lets.Kind.MODEL,
                        shelf.models().named(maker, name),
                        RateColumns.MODEL,
                        "model " + maker + " " + name);
    }

    private static Found found(Lets.Kind kind, Optional<? extends Stored<?, ?>> thing, String pointer, String noun) {
        return thing.map(
                        there -> new Found(Optional.of(new Lets(kind, there.id().number())), pointer, ""))
                .orElseGet(() -> fault(
                        pointer, "there is no " + noun + " on the shelf: bring it in first, or check the spelling"));
    }

    private static Found fault(String pointer, String message) {
        return new Found(Optional.empty(), pointer, message);
    }
}
