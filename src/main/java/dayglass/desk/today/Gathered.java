package dayglass.desk.today;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.desk.rental.Rental;
import dayglass.house.House;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.UnitState;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one day is told from: the rentals and bookings near it, and what is known of units now. */
final class Gathered {
    final House house;
    final Instant now;
    final Instant from;
    final Instant until;

    /** Bookings near the day and those that are out, by id. */
    final Map<Occupation.Id, Stored<Occupation.Id, Occupation>> bookings = new HashMap<>();

    /** Every unit that has not left for good. */
    final Map<Unit.Id, UnitState> states = new HashMap<>();

    final List<Stored<Rental.Id, Rental>> rentals;

    private final Map<Occupation.Id, Stored<Rental.Id, Rental>> rentalOf = new HashMap<>();
    private final Map<LensModel.Id, String> models;
    private final Shelf shelf;

    Gathered(LocalDate day, House house, Instant now, List<Stored<Rental.Id, Rental>> rentals, Shelf shelf) {
        this.house = house;
        this.now = now;
        this.from = day.atStartOfDay(house.zone()).toInstant();
        this.until = day.plusDays(1).atStartOfDay(house.zone()).toInstant();
        this.rentals = rentals;
        this.shelf = shelf;
        this.models = shelf.modelNames();
        rentals.forEach(rental -> rental.facts().placed().forEach(placed -> rentalOf.put(placed.booking(), rental)));
    }

    boolean during(Instant moment) {
        return !moment.isBefore(from) && moment.isBefore(until);
    }

    Optional<Stored<Rental.Id, Rental>> rental(Occupation.Id booking) {
        return Optional.ofNullable(rentalOf.get(booking));
    }

    Today.Whose whose(Stored<Occupation.Id, Occupation> booking) {
        return new Today.Whose(
                rental(booking.id()).map(Gathered::named), booking.facts().subject());
    }

    static Today.OfRental named(Stored<Rental.Id, Rental> rental) {
        return new Today.OfRental(
                rental.id(), rental.facts().number(), rental.facts().customer());
    }

    Today.Piece piece(Stored<Occupation.Id, Occupation> booking) {
        Unit.Id unit = booking.facts().unit();
        Optional<UnitState> state = Optional.ofNullable(states.get(unit));
        String tag = state.map(UnitState::tag)
                .or(() -> shelf.units().find(unit).map(gone -> gone.facts().tag()))
                .orElse("");
        String model = state.flatMap(UnitState::model)
                .map(id -> models.getOrDefault(id, ""))
                .orElse("");
        return new Today.Piece(unit, tag, model, booking.id());
    }
}
