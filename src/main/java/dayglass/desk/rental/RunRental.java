package dayglass.desk.rental;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.desk.DeskRules;
import dayglass.desk.KeptRules;
import dayglass.desk.quote.Quote;
import dayglass.desk.quote.Quotes;
import dayglass.house.House;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Confirms a quote as a rental, charges it, and keeps its deposit. */
public final class RunRental {
    private final Rentals rentals;
    private final Quotes quotes;
    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final KeptRules rules;

    /** What has been promised and let. */
    public record Papers(Quotes quotes, Rentals rentals) {}

    public RunRental(Papers papers, Shelf shelf, Whereabouts whereabouts, KeptRules rules) {
        this.rentals = papers.rentals();
        this.quotes = papers.quotes();
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.rules = rules;
    }

    /** Books all that the quote promises, or nothing. */
    public Outcome<Stored<Rental.Id, Rental>> confirm(Stored<Quote.Id, Quote> based) {
        return atomically(() -> {
            Quote quote = based.facts();
            if (quote.decision() != Quote.Decision.OPEN) {
                return refused("The quote was " + quote.decision().word() + " already.");
            }
            if (quote.expired(today())) {
                return refused("The quote stood until " + quote.now().validUntil()
                        + ": revise it at today's prices, then confirm that.");
            }
            long number = rentals.nextNumber();
            String subject = "Rental " + number + ", " + quote.customer().name();
            Money none = Money.zero(quote.now().price().currency());
            String kept = subject.length() > 200 ? subject.substring(0, 200) : subject;
            return new Booked(shelf, whereabouts, quote.now(), kept)
                    .all()
                    .then(placed -> rentals.add(new Rental(
                            number,
                            based.id(),
                            quote.customer(),
                            quote.now(),
                            placed,
                            List.of(),
                            new Rental.Deposit(none, none, none),
                            Optional.empty(),
                            List.of())))
                    .then(rental -> quotes.change(new Stored<>(
                                    based.id(), based.version(), quote.decided(Quote.Decision.ACCEPTED, "")))
                            .map(done -> rental));
        });
    }

    /**
     * Something to be charged.
     *
     * @param unit what it is about; where it is a loss, the unit that is lost
     */
    public record Charged(Charge.Kind kind, Optional<Unit.Id> unit, Said said) {}

    /** Charges something beside the price; a loss of a unit takes the unit off the shelf. */
    public Outcome<Stored<Rental.Id, Rental>> charge(Stored<Rental.Id, Rental> based, Charged charged) {
        return charged.kind() == Charge.Kind.LOSS && charged.unit().isPresent()
                ? lose(based, charged.unit().get(), charged.said())
                : charge(based, charged.kind(), charged.unit(), charged.said());
    }

    private Outcome<Stored<Rental.Id, Rental>> charge(
            Stored<Rental.Id, Rental> based, Charge.Kind kind, Optional<Unit.Id> unit, Said said) {
        if (said.net().signum() <= 0 || !said.net().currency().equals(currency(based))) {
            return Outcome.faulty("/amount", "must be above 0 and in " + currency(based));
        }
        if (unit.isPresent()
                && based.facts().placed().stream().noneMatch(each -> each.unit().equals(unit.get()))) {
            return Outcome.faulty("/unitId", "is not on this rental: name one of its units, or leave it out");
        }
        return charging(
                based,
                new Charge(
                        kind,
                        unit,
                        Optional.empty(),
                        0,
                        said.words(),
                        said.net(),
                        taxes(said),
                        Optional.empty(),
                        whereabouts.whoActs().now(),
                        now()));
    }

    /**
     * What a charge says.
     *
     * @param taxed whether the taxes of the rules stand on it: damage and loss often bear none; ask whoever does the
     *     house's taxes
     */
    public record Said(String words, Money net, boolean taxed) {}

    /** Takes a charge back by another, which stays beside it; the days of an extension are given back with it. */
    public Outcome<Stored<Rental.Id, Rental>> reverse(Stored<Rental.Id, Rental> based, int at, String why) {
        List<Charge> charges = based.facts().charges();
        if (at < 0 || at >= charges.size()) {
            return Outcome.faulty("/charge", "the rental has " + charges.size() + " charges, counted from 0");
        }
        Charge mistaken = charges.get(at);
        boolean again = charges.stream().anyMatch(each -> each.reverses().equals(Optional.of(at)));
        if (again || mistaken.reverses().isPresent()) {
            return refused("It was reversed already, or takes another back itself.");
        }
        if (based.facts().ending().isPresent()) {
            return ended();
        }
        if (mistaken.kind() == Charge.Kind.EXTENSION) {
            return atomically(() ->
                    extending().shorten(based.facts(), at).then(done -> charging(based, takenBack(mistaken, at, why))));
        }
        return charging(based, takenBack(mistaken, at, why));
    }

    private Charge takenBack(Charge mistaken, int at, String why) {
        return new Charge(
                mistaken.kind(),
                mistaken.unit(),
                mistaken.line(),
                -mistaken.days(),
                "Taken back: " + why,
                mistaken.net().times(-1),
                mistaken.taxes().stream()
                        .map(tax -> new Charge.Tax(tax.code(), tax.amount().times(-1)))
                        .toList(),
                Optional.of(at),
                whereabouts.whoActs().now(),
                now());
    }

    /** A unit that will not come back: it leaves the shelf as lost, and its value is charged. */
    private Outcome<Stored<Rental.Id, Rental>> lose(Stored<Rental.Id, Rental> based, Unit.Id unit, Said said) {
        return atomically(() -> {
            Optional<Rental.Placed> placed = based.facts().standing().stream()
                    .filter(each -> each.unit().equals(unit) && each.back().isEmpty())
                    .findFirst();
            Optional<Stored<Unit.Id, Unit>> there = shelf.units().find(unit);
            if (placed.isEmpty() || there.isEmpty()) {
                return refused("This unit is not out on the rental.");
            }
            Stored<Occupation.Id, Occupation> booking =
                    whereabouts.occupations().find(placed.get().booking()).orElseThrow();
            List<Rental.Placed> all = new ArrayList<>(based.facts().placed());
            all.set(
                    all.indexOf(placed.get()),
                    placed.get()
                            .takenBack(new Rental.Check(
                                    List.of(), "lost", whereabouts.whoActs().now(), now())));
            return whereabouts
                    .handOver()
                    .back(booking, now())
                    .then(back -> shelf.units()
                            .change(new Stored<>(
                                    unit,
                                    there.get().version(),
                                    lost(there.get().facts()))))
                    .then(gone -> rentals.change(new Stored<>(
                            based.id(), based.version(), based.facts().placing(all))))
                    .then(kept -> charge(kept, Charge.Kind.LOSS, Optional.of(unit), said));
        });
    }

    private Unit lost(Unit unit) {
        return new Unit(
                unit.tag(),
                unit.model(),
                unit.serial(),
                unit.holding(),
                unit.value(),
                unit.papers(),
                unit.accessories(),
                unit.use(),
                Optional.of(new Unit.Departure(today(), "lost", Optional.empty())));
    }

    /**
     * Keeps what is not back yet for longer, if nothing else stands in the way.
     *
     * @param last the last day of use now
     */
    public Outcome<Stored<Rental.Id, Rental>> extend(Stored<Rental.Id, Rental> based, LocalDate last) {
        return atomically(() -> extending().to(based, last));
    }

    private ExtendRental extending() {
        return new ExtendRental(rentals, whereabouts, rules.now().facts());
    }

    /** Keeps what deposit the customer left. */
    public Outcome<Stored<Rental.Id, Rental>> takeDeposit(Stored<Rental.Id, Rental> based, Money taken) {
        Money zero = Money.zero(currency(based));
        if (based.facts().ending().isPresent()) {
            return refused("The rental has ended.");
        }
        if (taken.signum() < 0 || !taken.currency().equals(currency(based))) {
            return Outcome.faulty("/amount", "must be 0 or more, in " + currency(based));
        }
        return rentals.change(new Stored<>(
                based.id(), based.version(), based.facts().holding(new Rental.Deposit(taken, zero, zero))));
    }

    private Outcome<Stored<Rental.Id, Rental>> charging(Stored<Rental.Id, Rental> based, Charge charge) {
        return based.facts().ending().isPresent()
                ? ended()
                : rentals.change(
                        new Stored<>(based.id(), based.version(), based.facts().charging(List.of(charge))));
    }

    private List<Charge.Tax> taxes(Said said) {
        DeskRules now = rules.now().facts();
        return said.taxed()
                ? now.taxes().stream()
                        .map(tax -> new Charge.Tax(tax.code(), tax.percent().of(said.net())))
                        .toList()
                : List.of();
    }

    private static dayglass.base.Currency currency(Stored<Rental.Id, Rental> rental) {
        return rental.facts().promise().price().currency();
    }

    private Instant now() {
        return whereabouts.clock().instant();
    }

    private LocalDate today() {
        House house = whereabouts.settings().now().facts();
        return LocalDate.ofInstant(now(), house.zone());
    }

    private <T> Outcome<T> atomically(java.util.function.Supplier<Outcome<T>> work) {
        return whereabouts.around().transactions().atomically(work);
    }

    private static <T> Outcome<T> ended() {
        return refused("The rental has ended, so that nothing can be charged to it any more.");
    }

    static <T> Outcome<T> refused(String detail) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, detail);
    }
}
