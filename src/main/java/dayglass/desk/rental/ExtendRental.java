package dayglass.desk.rental;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.desk.DeskRules;
import dayglass.desk.price.Extension;
import dayglass.desk.price.PricedLine;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Makes the bookings of a rental longer and charges what that costs; inside a transaction of its caller. */
final class ExtendRental {
    private final Rentals rentals;
    private final Whereabouts whereabouts;
    private final DeskRules rules;

    ExtendRental(Rentals rentals, Whereabouts whereabouts, DeskRules rules) {
        this.rentals = rentals;
        this.whereabouts = whereabouts;
        this.rules = rules;
    }

    Outcome<Stored<Rental.Id, Rental>> to(Stored<Rental.Id, Rental> based, LocalDate last) {
        Rental rental = based.facts();
        if (rental.ending().isPresent()) {
            return RunRental.refused("The rental has ended.");
        }
        List<PricedLine> lines = rental.promise().price().lines();
        List<Charge> charges = new ArrayList<>();
        TreeSet<Integer> longer = new TreeSet<>();
        for (Rental.Placed placed : rental.standing()) {
            if (placed.back().isEmpty()) {
                longer.add(placed.line());
            }
        }
        for (int line : longer) {
            LocalDate before = lastDay(rental, line);
            if (!last.isAfter(before)) {
                return Outcome.refused(Problem.faulty(
                        List.of(new Fault("/lastDay", "must be after " + before + ", the last day as it stands"))));
            }
            Optional<Extension.Cost> cost =
                    Extension.of(lines.get(line), rental.promise().price().asked(), last, rules);
            if (cost.isEmpty()) {
                return RunRental.refused("The rate of " + lines.get(line).what() + " cannot be laid over those days.");
            }
            charges.add(charge(rental, line, last, cost.get()));
        }
        return longer.isEmpty()
                ? RunRental.refused("Everything is back already: a new quote is needed.")
                : book(rental, longer, last)
                        .then(done ->
                                rentals.change(new Stored<>(based.id(), based.version(), rental.charging(charges))));
    }

    /** As extended before, where it was. */
    private static LocalDate lastDay(Rental rental, int line) {
        return rental.charges().stream()
                .filter(charge -> charge.kind() == Charge.Kind.EXTENSION
                        && charge.reverses().isEmpty())
                .filter(charge -> charge.line().equals(Optional.of(line)))
                .map(charge -> rental.promise()
                        .price()
                        .lines()
                        .get(line)
                        .dates()
                        .lastDay()
                        .plusDays(charge.days()))
                .reduce((earlier, later) -> later)
                .orElse(rental.promise().price().lines().get(line).dates().lastDay());
    }

    /** The days count from the promise, so that a second extension takes back what the first cost. */
    private Charge charge(Rental rental, int line, LocalDate last, Extension.Cost cost) {
        PricedLine priced = rental.promise().price().lines().get(line);
        int days = Math.toIntExact(last.toEpochDay() - priced.dates().lastDay().toEpochDay());
        dayglass.base.Money before = rental.charges().stream()
                .filter(each -> each.kind() == Charge.Kind.EXTENSION)
                .filter(each -> each.line().equals(Optional.of(line)))
                .map(Charge::total)
                .reduce(dayglass.base.Money.zero(priced.total().currency()), dayglass.base.Money::plus);
        return new Charge(
                Charge.Kind.EXTENSION,
                Optional.empty(),
                Optional.of(line),
                days,
                priced.what() + " kept to " + last + ", "
                        + (cost.asOne() ? "the whole priced as one rental" : "the added days by themselves")
                        + ", add-ons and taxes as by the card included",
                cost.charge().minus(before),
                List.of(),
                Optional.empty(),
                whereabouts.whoActs().now(),
                whereabouts.clock().instant());
    }

    private Outcome<Boolean> book(Rental rental, Set<Integer> lines, LocalDate last) {
        Outcome<Boolean> all = Outcome.done(true);
        for (Rental.Placed placed : rental.standing()) {
            if (lines.contains(placed.line()) && placed.back().isEmpty()) {
                Stored<Occupation.Id, Occupation> booking =
                        whereabouts.occupations().find(placed.booking()).orElseThrow();
                Stay stay =
                        FreeDays.use(last, last, whereabouts.settings().now().facts());
                all = all.then(done -> whereabouts
                        .bookUnits()
                        .change(
                                booking,
                                new BookUnits.Entry(
                                        Occupation.Kind.BOOKING,
                                        booking.facts().stay().out(),
                                        stay.back(),
                                        booking.facts().subject(),
                                        Optional.empty()))
                        .map(changed -> true));
            }
        }
        return all;
    }
}
