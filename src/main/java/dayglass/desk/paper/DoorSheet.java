package dayglass.desk.paper;

import dayglass.base.Stored;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RentalNow;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was seen of each unit of a rental when it left and when it came back, side by side. */
public record DoorSheet(List<Row> rows) {
    public DoorSheet {
        rows = List.copyOf(rows);
    }

    /**
     * A unit.
     *
     * @param tag empty where it is rented in for this rental and not on the house's shelf
     * @param due when it has to be back; empty once it is, and where no booking says so
     * @param gaveWay another unit went in its place while it was out
     * @param differences how it came back otherwise than it went out
     */
    public record Row(
            String tag,
            String what,
            Optional<String> serial,
            List<Accessory> accessories,
            Optional<Instant> due,
            boolean gaveWay,
            Optional<Rental.Check> out,
            Optional<Rental.Check> back,
            List<String> differences) {
        public Row {
            accessories = List.copyOf(accessories);
            differences = List.copyOf(differences);
        }

        /** What was not as it should be at the handover, in words. */
        public List<String> leftBehind() {
            return out.isEmpty()
                    ? List.of()
                    : accessories.stream()
                            .filter(each -> !each.out())
                            .map(each -> each.name() + " did not go out")
                            .toList();
        }
    }

    /** An accessory that belongs with a unit or was seen with it. */
    public record Accessory(String name, boolean out, boolean back) {}

    /** Of a rental as it stands; what gave way before it ever left is not on it. */
    public static DoorSheet of(RentalNow rental, Shelf shelf) {
        List<Row> rows = new ArrayList<>();
        for (Rental.Placed placed : rental.facts().placed()) {
            if (!placed.replaced() || placed.out().isPresent()) {
                rows.add(row(rental, placed, shelf));
            }
        }
        for (PricedLine line : rental.facts().promise().price().lines()) {
            if (line.rentedIn().isPresent()) {
                rows.add(new Row(
                        "",
                        line.what(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        Optional.empty(),
                        List.of()));
            }
        }
        return new DoorSheet(rows);
    }

    private static Row row(RentalNow rental, Rental.Placed placed, Shelf shelf) {
        Optional<Unit> unit = shelf.units().find(placed.unit()).map(Stored::facts);
        String what = unit.flatMap(Unit::model)
                .flatMap(shelf.models()::find)
                .map(model -> model.facts().fullName())
                .orElse("");
        return new Row(
                unit.map(Unit::tag).orElse("unit " + placed.unit().number()),
                what,
                unit.flatMap(Unit::serial),
                accessories(unit.map(Unit::accessories).orElse(List.of()), placed),
                rental.cameBack(placed)
                        ? Optional.empty()
                        : Optional.of(rental.booking(placed).facts().stay().back()),
                placed.replaced(),
                placed.out(),
                placed.back(),
                placed.differences());
    }

    private static List<Accessory> accessories(List<String> belonging, Rental.Placed placed) {
        List<String> out = placed.out().map(Rental.Check::accessories).orElse(List.of());
        List<String> back = placed.back().map(Rental.Check::accessories).orElse(List.of());
        Set<String> all = new LinkedHashSet<>(belonging);
        all.addAll(out);
        all.addAll(back);
        return all.stream()
                .map(name -> new Accessory(name, out.contains(name), back.contains(name)))
                .toList();
    }
}
