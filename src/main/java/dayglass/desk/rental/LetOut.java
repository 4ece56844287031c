package dayglass.desk.rental;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.house.WhoActs;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Hands over what is booked on a rental and takes it back, all that is named or nothing. A mistake at the handover can be
 * undone for a while.
 */
public final class LetOut {
    private static final Duration TIME_TO_UNDO = Duration.ofHours(12);

    private final Rentals rentals;
    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final LateDays lateDays;

    public LetOut(Rentals rentals, Shelf shelf, Whereabouts whereabouts, LateDays lateDays) {
        this.rentals = rentals;
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.lateDays = lateDays;
    }

    /**
     * A unit at the door.
     *
     * @param accessories those that are there
     * @param condition in words; empty for nothing to remark
     */
    public record Item(Unit.Id unit, List<String> accessories, String condition) {
        public Item {
            accessories = List.copyOf(accessories);
        }
    }

    /** A rental with its bookings as they stand now. */
    public RentalNow now(Stored<Rental.Id, Rental> rental) {
        Map<Occupation.Id, Stored<Occupation.Id, Occupation>> bookings = new HashMap<>();
        rental.facts()
                .placed()
                .forEach(placed -> bookings.put(
                        placed.booking(),
                        whereabouts.occupations().find(placed.booking()).orElseThrow()));
        return new RentalNow(rental, bookings);
    }

    /**
     * Hands over.
     *
     * @param reason why units go out that should stay in, where there are such
     * @return refused where one is not booked on this rental, is not healthy or may not go for another reason
     */
    public Outcome<Stored<Rental.Id, Rental>> out(
            Stored<Rental.Id, Rental> based, List<Item> items, Optional<String> reason) {
        Instant at = whereabouts.clock().instant();
        return each(based, items, (placed, item) -> {
            Stored<Occupation.Id, Occupation> booking = now(based).booking(placed);
            return whereabouts.handOver().out(booking, at, reason).map(done -> placed.handedOver(check(item, at)));
        });
    }

    /** Takes back; what is late is charged by the rules. */
    public Outcome<Stored<Rental.Id, Rental>> back(Stored<Rental.Id, Rental> based, List<Item> items) {
        Instant at = whereabouts.clock().instant();
        RentalNow before = now(based);
        return transactions()
                .atomically(() -> each(based, items, (placed, item) -> {
                            Stored<Occupation.Id, Occupation> booking = before.booking(placed);
                            return whereabouts
                                    .handOver()
                                    .back(booking, at)
                                    .map(done -> placed.takenBack(check(item, at)));
                        })
                        .then(back -> lateDays.charged(back, before, units(items), at)));
    }

    /** What would be charged for lateness if all that is out of a rental came back now. */
    public List<Charge> lateSoFar(RentalNow now) {
        List<Unit.Id> out = now.facts().standing().stream()
                .filter(now::isOut)
                .map(Rental.Placed::unit)
                .toList();
        return lateDays.of(now, out, whereabouts.clock().instant());
    }

    /** Takes a handover back that was a mistake: the unit never left. */
    public Outcome<Stored<Rental.Id, Rental>> undoOut(Stored<Rental.Id, Rental> based, Unit.Id unit) {
        Instant at = whereabouts.clock().instant();
        return each(based, List.of(new Item(unit, List.of(), "")), (placed, item) -> {
            Stored<Occupation.Id, Occupation> booking = now(based).booking(placed);
            boolean longAgo = booking.facts()
                    .handling()
                    .wentOut()
                    .filter(went -> went.plus(TIME_TO_UNDO).isBefore(at))
                    .isPresent();
            return longAgo
                    ? refused("It went out more than " + TIME_TO_UNDO.toHours() + " hours ago: take it back instead.")
                    : whereabouts.handOver().undo(booking).map(done -> placed.notHandedOver());
        });
    }

    /** Puts another unit in the place of one that has not gone or does not work; the price stays. */
    public Outcome<Stored<Rental.Id, Rental>> swap(Stored<Rental.Id, Rental> based, Unit.Id from, Unit.Id to) {
        Instant at = whereabouts.clock().instant();
        return transactions().atomically(() -> {
            RentalNow now = now(based);
            Optional<Rental.Placed> old = standing(based, from);
            if (old.isEmpty() || now.cameBack(old.get())) {
                return refused("This unit is not booked on the rental, or it came back already.");
            }
            Stored<Occupation.Id, Occupation> booking = now.booking(old.get());
            boolean isOut = now.isOut(old.get());
            Outcome<Stored<Occupation.Id, Occupation>> freed = isOut
                    ? whereabouts.handOver().back(booking, at)
                    : whereabouts.bookUnits().cancel(booking);
            Instant begins = isOut ? at : booking.facts().stay().out();
            if (!begins.isBefore(booking.facts().stay().back())) {
                return refused("The booked time is over: extend the rental first.");
            }
            return freed.then(done -> whereabouts
                            .bookUnits()
                            .add(
                                    List.of(to),
                                    new BookUnits.Entry(
                                            Occupation.Kind.BOOKING,
                                            begins,
                                            booking.facts().stay().back(),
                                            booking.facts().subject(),
                                            Optional.empty())))
                    .then(added -> keep(
                            based,
                            swapped(based.facts(), old.get(), to, added.get(0).id())));
        });
    }

    private static List<Rental.Placed> swapped(Rental rental, Rental.Placed old, Unit.Id to, Occupation.Id booking) {
        List<Rental.Placed> all = new ArrayList<>();
        for (Rental.Placed each : rental.placed()) {
            all.add(each.equals(old) ? each.gaveWay() : each);
        }
        all.add(new Rental.Placed(old.line(), to, booking, false, Optional.empty(), Optional.empty()));
        return all;
    }

    private interface Step {
        Outcome<Rental.Placed> take(Rental.Placed placed, Item item);
    }

    private Outcome<Stored<Rental.Id, Rental>> each(Stored<Rental.Id, Rental> based, List<Item> items, Step step) {
        if (based.facts().ending().isPresent()) {
            return refused("The rental has ended.");
        }
        return transactions().atomically(() -> {
            List<Rental.Placed> placed = new ArrayList<>(based.facts().placed());
            Outcome<List<Rental.Placed>> all = Outcome.done(placed);
            for (Item item : items) {
                all = all.then(before -> {
                    Optional<Rental.Placed> one = standing(based, item.unit());
                    return one.isEmpty()
                            ? refused(tag(item.unit()) + " is not booked on this rental; nothing was done.")
                            : step.take(one.get(), item).map(done -> {
                                before.set(before.indexOf(one.get()), done);
                                return before;
                            });
                });
            }
            return all.then(done -> keep(based, done));
        });
    }

    private Outcome<Stored<Rental.Id, Rental>> keep(Stored<Rental.Id, Rental> based, List<Rental.Placed> placed) {
        return rentals.change(
                new Stored<>(based.id(), based.version(), based.facts().placing(placed)));
    }

    private static Optional<Rental.Placed> standing(Stored<Rental.Id, Rental> rental, Unit.Id unit) {
        return rental.facts().standing().stream()
                .filter(placed -> placed.unit().equals(unit))
                .filter(placed -> placed.back().isEmpty())
                .findFirst();
    }

    private static List<Unit.Id> units(List<Item> items) {
        return items.stream().map(Item::unit).toList();
    }

    private String tag(Unit.Id unit) {
        return shelf.units().find(unit).map(found -> found.facts().tag()).orElse("Unit " + unit.number());
    }

    private Rental.Check check(Item item, Instant at) {
        WhoActs who = whereabouts.whoActs();
        return new Rental.Check(item.accessories(), item.condition(), who.now(), at);
    }

    private Transactions transactions() {
        return whereabouts.around().transactions();
    }

    private static <T> Outcome<T> refused(String detail) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, detail);
    }
}
