package dayglass.desk.rental;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.cost.Schedule;
import dayglass.desk.DeskRules;
import dayglass.desk.price.Extension;
import dayglass.desk.price.PricedLine;
import dayglass.house.House;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Makes the bookings of a rental longer and charges what that costs, and back; inside a transaction of its caller. */
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
        LocalDate first = rental.promise().price().asked().schedule().horizon().from();
        if (last.toEpochDay() - first.toEpochDay() >= Schedule.MOST_DAYS) {
            return Outcome.faulty(
                    "/lastDay",
                    "makes it longer than " + Schedule.MOST_DAYS + " days from " + first + ": choose an earlier day");
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
            LocalDate before = new Extended(rental, line).lastDay();
            if (!last.isAfter(before)) {
                return Outcome.faulty("/lastDay", "must be after " + before + ", the last day as it stands");
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

    /** The days count from the promise, so that a second extension takes back what the first cost. */
    private Charge charge(Rental rental, int line, LocalDate last, Extension.Cost cost) {
        PricedLine priced = rental.promise().price().lines().get(line);
        Extended before = new Extended(rental, line);
        Money more = cost.charge().minus(before.charged());
        List<Charge.Tax> taxes = cost.taxesBeyond(before.taxes()).entrySet().stream()
                .map(tax -> new Charge.Tax(tax.getKey(), tax.getValue()))
                .toList();
        return new Charge(
                Charge.Kind.EXTENSION,
                Optional.empty(),
                Optional.of(line),
                Math.toIntExact(last.toEpochDay() - priced.dates().lastDay().toEpochDay()),
                priced.what() + " kept to " + last + ", "
                        + (cost.asOne() ? "the whole priced as one rental" : "the added days by themselves")
                        + ", with the card's add-ons",
                taxes.stream().map(Charge.Tax::amount).reduce(more, Money::minus),
                taxes,
                Optional.empty(),
                whereabouts.whoActs().now(),
                whereabouts.clock().instant());
    }

    /**
     * Gives back the days of an extension whose charge is about to be taken back: what is not back yet is booked to the
     * day before it. Refused where a later extension builds on it, and where days of it have been had.
     *
     * @param at the place of its charge
     */
    Outcome<Boolean> shorten(Rental rental, int at) {
        int line = rental.charges().get(at).line().orElseThrow();
        Extended extended = new Extended(rental, line);
        if (!extended.isLatest(at)) {
            return RunRental.refused(
                    "The line was extended once more after that: take back the latest extension first.");
        }
        LocalDate last = extended.lastDayWithout(at);
        House house = whereabouts.settings().now().facts();
        Instant due = FreeDays.use(last, last, house).back();
        Instant now = whereabouts.clock().instant();
        boolean had = rental.standing().stream()
                .filter(placed -> placed.line() == line)
                .anyMatch(placed ->
                        placed.back().map(Rental.Check::at).orElse(now).isAfter(due));
        return had
                ? RunRental.refused("Without the extension " + last
                        + " is its last day, and days after that have been had: they are not taken back.")
                : book(rental, Set.of(line), last);
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
