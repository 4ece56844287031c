package dayglass.inventory;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.catalogue.LensModel;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One physical thing on the shelf.
 *
 * @param tag the house's asset tag, unique; the id that the option has in a costing
 * @param model what it is, once that was said
 * @param serial the maker's, unique within the model
 * @param value what replacing it would cost
 * @param papers where it comes from and where it stands
 * @param accessories what belongs with it and goes out with it
 * @param use what it can do for a job
 * @param departure when and how it left for good
 */
public record Unit(
        String tag,
        Optional<LensModel.Id> model,
        Optional<String> serial,
        Holding holding,
        Optional<Value> value,
        Papers papers,
        List<String> accessories,
        Use use,
        Optional<Departure> departure) {
    public Unit {
        accessories = List.copyOf(accessories);
    }

    /** A unit of which nothing is known yet but what it can do for a job. */
    public static Unit serving(String tag, Use use) {
        return new Unit(
                tag,
                Optional.empty(),
                Optional.empty(),
                Holding.Owned.UNRECORDED,
                Optional.empty(),
                Papers.NONE,
                List.of(),
                use,
                Optional.empty());
    }

    /** The last day on which it may serve: paid up to, consigned until, the day before it left; the earliest of them. */
    public Optional<LocalDate> heldTo() {
        Optional<LocalDate> left = departure.map(gone -> gone.on().minusDays(1));
        Optional<LocalDate> held = holding.fold(
                owned -> Optional.empty(), rented -> Optional.of(rented.paidUpTo()), Holding.Consigned::until);
        return Stream.concat(left.stream(), held.stream()).min(LocalDate::compareTo);
    }

    /** The first day on which the house has it, where that is known. */
    public Optional<LocalDate> heldFrom() {
        return holding.fold(
                Holding.Owned::boughtOn, rented -> Optional.of(rented.from()), lent -> Optional.of(lent.from()));
    }

    /** The number of a unit. */
    public record Id(long number) implements dayglass.base.Id {}

    /** The replacement value with the day on which it was set. */
    public record Value(Money amount, LocalDate setOn) {}

    /**
     * Where it comes from and where it stands.
     *
     * @param origin the country of origin, as a customs list wants it
     * @param mountFitted the mount on it now
     * @param homeShelf where it lies when it is in
     */
    public record Papers(Optional<String> origin, Optional<String> mountFitted, Optional<String> homeShelf) {
        public static final Papers NONE = new Papers(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * What it can do for a job.
     *
     * @param covers how many of each slot it serves; empty where it serves none by itself
     * @param available when the house lets it serve jobs; empty for always
     */
    public record Use(Map<String, Integer> covers, List<DateRange> available) {
        public static final Use NONE = new Use(Map.of(), List.of());

        public Use {
            covers = Map.copyOf(covers);
            available = List.copyOf(available);
        }
    }

    /**
     * When and how it left for good.
     *
     * @param how {@code sold}, {@code given back}, {@code lost} or {@code scrapped}
     * @param price what was had for it
     */
    public record Departure(LocalDate on, String how, Optional<Money> price) {}
}
