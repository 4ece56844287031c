package dayglass.desk.earned;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.Rentals;
import dayglass.house.HouseSettings;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.life.LettingIncome;
import dayglass.inventory.life.Lettings;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What rentals brought and will bring, by unit. */
public final class RentalIncome implements LettingIncome {
    private static final int PAGE = 500;

    private final Rentals rentals;
    private final Units units;
    private final HouseSettings settings;

    public RentalIncome(Rentals rentals, Units units, HouseSettings settings) {
        this.rentals = rentals;
        this.units = units;
        this.settings = settings;
    }

    /** Reads every rental once, a page at a time. */
    @Override
    public Optional<Map<Unit.Id, Lettings>> all(List<Stored<Unit.Id, Unit>> every) {
        Map<Unit.Id, Optional<Money>> values = new HashMap<>();
        every.forEach(unit -> values.put(unit.id(), unit.facts().value().map(Unit.Value::amount)));
        Gathering gathering = new Gathering(unit -> values.getOrDefault(unit, Optional.empty()));
        Optional<Rental.Id> after = Optional.empty();
        List<Stored<Rental.Id, Rental>> page;
        do {
            page = rentals.list(after, PAGE);
            page.forEach(rental -> gathering.add(rental.facts()));
            after = page.isEmpty()
                    ? after
                    : Optional.of(page.get(page.size() - 1).id());
        } while (page.size() == PAGE);
        return after.isEmpty() ? Optional.empty() : Optional.of(gathering.all());
    }

    @Override
    public Lettings of(Unit.Id unit) {
        Gathering gathering = new Gathering(
                each -> units.find(each).flatMap(found -> found.facts().value()).map(Unit.Value::amount));
        rentals.ofUnit(unit).forEach(rental -> gathering.add(rental.facts()));
        return gathering.all().getOrDefault(unit, Lettings.NONE);
    }

    /** The lettings of all units that are met, rental by rental. */
    private final class Gathering {
        private final Map<Unit.Id, List<Lettings.Share>> shares = new HashMap<>();
        private final Map<Unit.Id, Set<Occupation.Id>> bookings = new HashMap<>();
        private final Function<Unit.Id, Optional<Money>> value;
        private final ZoneId zone = settings.now().facts().zone();

        Gathering(Function<Unit.Id, Optional<Money>> value) {
            this.value = value;
        }

        void add(Rental rental) {
            Map<Unit.Id, Occupation.Id> last = new HashMap<>();
            for (Rental.Placed placed : rental.placed()) {
                last.put(placed.unit(), placed.booking());
                bookings.computeIfAbsent(placed.unit(), unit -> new HashSet<>()).add(placed.booking());
            }
            String words =
                    "rental " + rental.number() + ", " + rental.customer().name();
            UnitShares.of(rental, value).forEach((unit, amount) -> {
                Optional<LocalDate> settled =
                        rental.ending().map(ending -> ending.at().atZone(zone).toLocalDate());
                shares.computeIfAbsent(unit, each -> new ArrayList<>())
                        .add(new Lettings.Share(
                                rental.number(),
                                words,
                                settled.orElseGet(() -> lastDay(rental, unit)),
                                java.util.Objects.requireNonNull(last.get(unit)),
                                amount,
                                settled.isPresent()));
            });
        }

        private static LocalDate lastDay(Rental rental, Unit.Id unit) {
            return rental.placed().stream()
                    .filter(placed -> placed.unit().equals(unit))
                    .map(placed -> rental.promise().price().lines().get(placed.line()))
                    .map(line -> line.dates().lastDay())
                    .max(LocalDate::compareTo)
                    .orElseThrow();
        }

        Map<Unit.Id, Lettings> all() {
            Map<Unit.Id, Lettings> all = new HashMap<>();
            bookings.forEach((unit, of) -> all.put(unit, new Lettings(shares.getOrDefault(unit, List.of()), of)));
            return all;
        }
    }
}
