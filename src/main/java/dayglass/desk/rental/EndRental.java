package dayglass.desk.rental;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Stored;
import dayglass.desk.KeptRules;
import dayglass.desk.price.PackagePrice;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Ends a rental by its invoice or by a cancellation, and settles its deposit. */
public final class EndRental {
    private final Rentals rentals;
    private final OrdersInBooks books;
    private final Whereabouts whereabouts;
    private final KeptRules rules;

    public EndRental(Rentals rentals, OrdersInBooks books, Whereabouts whereabouts, KeptRules rules) {
        this.rentals = rentals;
        this.books = books;
        this.whereabouts = whereabouts;
        this.rules = rules;
    }

    /**
     * Ends a rental whose units are all back: settles the deposit and issues the invoice.
     *
     * @param keep how much of the deposit is kept towards what is owed; the rest is given back
     */
    public Outcome<Stored<Rental.Id, Rental>> settle(Stored<Rental.Id, Rental> based, State state, Money keep) {
        Rental rental = based.facts();
        boolean nothingBooked = rental.standing().isEmpty() && state == State.CONFIRMED;
        if (state != State.BACK && !nothingBooked) {
            return RunRental.refused(
                    state == State.OUT
                            ? "A unit is still out: take it back, or say that it is lost."
                            : "The rental is " + state.word() + ": only one whose units are back is settled.");
        }
        Money most = rental.mostKept();
        if (keep.signum() < 0 || keep.compareTo(most) > 0) {
            return Outcome.faulty(
                    "/keep", "must be from 0 to " + most.amount() + ": no more than was left and is owed");
        }
        return whereabouts
                .around()
                .transactions()
                .atomically(() -> rentals.change(new Stored<>(
                        based.id(),
                        based.version(),
                        rental.holding(deposit(rental, keep))
                                .ended(ending(false, Optional.of(rentals.nextInvoice()))))));
    }

    private static Rental.Deposit deposit(Rental rental, Money keep) {
        Money taken = rental.deposit().taken();
        return new Rental.Deposit(taken, keep, taken.minus(keep));
    }

    /**
     * Frees the units; what it costs follows from the days of notice, by the rules. Refused while an order of it stands in
     * the books: nothing that is not wanted any more may go on being committed.
     */
    public Outcome<Stored<Rental.Id, Rental>> cancel(Stored<Rental.Id, Rental> based, State state, String why) {
        if (state != State.CONFIRMED) {
            return RunRental.refused(
                    "The rental is " + state.word() + ": only one of which nothing went out is cancelled.");
        }
        return whereabouts.around().transactions().atomically(() -> {
            Optional<OrdersInBooks.InBooks> inBooks =
                    books.of(based.id()).values().stream().findFirst();
            if (inBooks.isPresent()) {
                return RunRental.refused(inBooks.get().why());
            }
            return freed(based.facts()).then(done -> {
                Rental ended = cancelled(based.facts(), why);
                return rentals.change(
                        new Stored<>(based.id(), based.version(), ended.holding(deposit(ended, ended.mostKept()))));
            });
        });
    }

    private Outcome<Boolean> freed(Rental rental) {
        Outcome<Boolean> freed = Outcome.done(true);
        for (Rental.Placed placed : rental.standing()) {
            Stored<Occupation.Id, Occupation> booking =
                    whereabouts.occupations().find(placed.booking()).orElseThrow();
            freed = freed.then(done -> whereabouts.bookUnits().cancel(booking).map(cancelled -> true));
        }
        return freed;
    }

    private Rental cancelled(Rental rental, String why) {
        Rental charged = rental.charging(cancellation(rental, why));
        Money owed = charged.charges().stream()
                .map(Charge::total)
                .reduce(Money.zero(rental.promise().price().currency()), Money::plus);
        boolean owes = owed.signum() > 0;
        return charged.ended(ending(true, owes ? Optional.of(rentals.nextInvoice()) : Optional.empty()));
    }

    /** A share of the price without its taxes; whether a cancellation is taxed, a licensed adviser knows. */
    private List<Charge> cancellation(Rental rental, String why) {
        PackagePrice price = rental.promise().price();
        long days = ChronoUnit.DAYS.between(
                today(), price.asked().schedule().horizon().from());
        Percent share = rules.now().facts().atNotice(days);
        Money net = share.of(price.net());
        return net.signum() == 0
                ? List.of()
                : List.of(new Charge(
                        Charge.Kind.CANCELLATION,
                        Optional.empty(),
                        Optional.empty(),
                        0,
                        "Cancelled " + (days == 1 ? "one day" : days + " days") + " before: "
                                + share.value().toPlainString() + " % of " + price.net()
                                + (why.isBlank() ? "" : "; " + why),
                        net,
                        List.of(),
                        Optional.empty(),
                        whereabouts.whoActs().now(),
                        now()));
    }

    private Rental.Ending ending(boolean cancelled, Optional<Long> invoice) {
        return new Rental.Ending(cancelled, invoice, whereabouts.whoActs().now(), now());
    }

    private Instant now() {
        return whereabouts.clock().instant();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(now(), whereabouts.settings().now().facts().zone());
    }
}
