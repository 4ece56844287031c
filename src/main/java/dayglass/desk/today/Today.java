package dayglass.desk.today;

import dayglass.base.Money;
import dayglass.desk.price.PackagePrice.Missing;
import dayglass.desk.price.PricedLine;
import dayglass.desk.quote.Customer;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.SupplierOrder;
import dayglass.inventory.Unit;
import dayglass.inventory.agenda.GiveBack;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What a day asks of the desk. What goes out and comes back is that day's; the rest is as it stands now.
 *
 * @param out what goes out on the day, and what should have gone before and has not where the day is today; by time
 * @param back what comes back on the day, by time
 * @param late what should be back by now and is not, the longest due first
 * @param giveBack what belongs to others and is due back to them by the day
 * @param shorts rentals of the day and the days after it that cannot be handed over as they stand
 * @param testing units to be looked at, by when they next go out
 */
public record Today(
        LocalDate day,
        Instant now,
        ZoneId zone,
        List<Passage> out,
        List<Passage> back,
        List<Late> late,
        List<GiveBack> giveBack,
        List<Shortage> shorts,
        List<ToTest> testing) {
    public Today {
        out = List.copyOf(out);
        back = List.copyOf(back);
        late = List.copyOf(late);
        giveBack = List.copyOf(giveBack);
        shorts = List.copyOf(shorts);
        testing = List.copyOf(testing);
    }

    /** Nothing at all is to be done. */
    public boolean empty() {
        return out.isEmpty()
                && back.isEmpty()
                && late.isEmpty()
                && giveBack.isEmpty()
                && shorts.isEmpty()
                && testing.isEmpty();
    }

    /**
     * For whom something is booked.
     *
     * @param rental empty for a booking that belongs to none
     * @param words what the booking says it is for
     */
    public record Whose(Optional<OfRental> rental, String words) {}

    /** A rental by its number and its customer. */
    public record OfRental(Rental.Id id, long number, Customer customer) {}

    /**
     * One unit of a booking.
     *
     * @param model what it is, maker first; empty where that was not said
     */
    public record Piece(Unit.Id unit, String tag, String model, Occupation.Id booking) {}

    /**
     * Units that pass the door together.
     *
     * @param at when they did, or when they are to
     * @param done they did
     */
    public record Passage(Instant at, boolean done, Whose whose, List<Piece> pieces) {
        public Passage {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * Units that should be back.
     *
     * @param days begun since then, as the clocks of the house show them
     * @param costs what would be charged by the rules if all of the rental came back now; of a rental that is late at
     *     several times, with the first
     */
    public record Late(Instant due, int days, Whose whose, List<Piece> pieces, List<Charge> costs) {
        public Late {
            pieces = List.copyOf(pieces);
            costs = List.copyOf(costs);
        }

        public Optional<Money> cost() {
            return costs.stream().map(Charge::total).reduce(Money::plus);
        }
    }

    /**
     * What stands in the way of a handover.
     *
     * @param at when it is to be
     * @param toGet lines of the price that come from suppliers and are not in the house yet
     * @param missing what nobody supplies
     * @param hindered booked units that cannot go
     */
    public record Shortage(Instant at, Whose whose, List<ToGet> toGet, List<Missing> missing, List<Hindered> hindered) {
        public Shortage {
            toGet = List.copyOf(toGet);
            missing = List.copyOf(missing);
            hindered = List.copyOf(hindered);
        }
    }

    /**
     * Something that has still to be got.
     *
     * @param order empty where it was not even ordered
     */
    public record ToGet(PricedLine line, Optional<SupplierOrder> order) {}

    /**
     * A unit that cannot go out as it stands.
     *
     * @param why whole sentences
     */
    public record Hindered(Piece piece, List<String> why) {
        public Hindered {
            why = List.copyOf(why);
        }
    }

    /**
     * A unit to be looked at.
     *
     * @param cameBack when, where nobody noted anything of it since
     * @param warning it has a finding that does not keep it in
     * @param next what it next goes out for
     */
    public record ToTest(Piece piece, Optional<Instant> cameBack, boolean warning, Optional<Next> next) {}

    /** What a unit next goes out for. */
    public record Next(Instant out, Occupation.Id booking, Whose whose) {}
}
