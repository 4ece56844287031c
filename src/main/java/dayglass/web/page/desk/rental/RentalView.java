package dayglass.web.page.desk.rental;

import dayglass.desk.rental.Rental;
import dayglass.desk.rental.RentalNow;
import dayglass.desk.rental.State;
import dayglass.web.page.Label;
import dayglass.web.page.desk.price.PriceView;
import dayglass.web.page.picture.Words;
import java.util.List;

/**
 * A rental as its page shows it.
 *
 * @param units those that stand in it
 * @param gaveWay tags of units that others were put in the place of, in sentences
 * @param lastDay the last day of use now, of ISO 8601
 */
public record RentalView(
        long id,
        long version,
        long number,
        long quote,
        Label label,
        State state,
        List<RentedUnit> units,
        List<String> gaveWay,
        List<RentedInLine> rentedIn,
        PriceView price,
        Sums money,
        List<ChargeRow> charges,
        String lastDay) {
    public RentalView {
        units = List.copyOf(units);
        gaveWay = List.copyOf(gaveWay);
        rentedIn = List.copyOf(rentedIn);
        charges = List.copyOf(charges);
    }

    /**
     * What is owed and left, as amounts with their currency.
     *
     * @param keep how much of the deposit would be kept, if it were settled now; without its currency
     * @param invoice the number of the invoice; empty where there is none
     */
    public record Sums(
            String owed, String toPay, String taken, String kept, String returned, String keep, String invoice) {}

    /**
     * Something charged.
     *
     * @param at its place, from 0
     * @param mayGo whether it can be taken back
     */
    public record ChargeRow(int at, String kind, String words, String net, String total, String by, boolean mayGo) {}

    /** A row of the list of rentals. */
    public record Row(
            long id,
            long number,
            String customer,
            String production,
            String days,
            String total,
            String state,
            int units) {
        static Row of(RentalNow now) {
            Rental facts = now.facts();
            return new Row(
                    now.rental().id().number(),
                    facts.number(),
                    facts.customer().name(),
                    facts.customer().production(),
                    Words.dates(facts.promise().price().asked().schedule().horizon()),
                    Words.money(facts.owed()),
                    now.state().word(),
                    facts.standing().size());
        }
    }

    public List<RentedUnit> toGo() {
        return units.stream()
                .filter(unit -> unit.where() == RentedUnit.Where.BOOKED)
                .toList();
    }

    public List<RentedUnit> out() {
        return units.stream()
                .filter(unit -> unit.where() == RentedUnit.Where.OUT)
                .toList();
    }

    public boolean ended() {
        return state.ended();
    }

    public boolean settles() {
        return state == State.BACK || (units.isEmpty() && state == State.CONFIRMED);
    }

    /** Whether a reason lets units go that should stay in. */
    public boolean asksReason() {
        return toGo().stream().anyMatch(unit -> !unit.obstacles().isEmpty());
    }
}
