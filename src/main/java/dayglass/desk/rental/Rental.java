package dayglass.desk.rental;

import dayglass.base.Money;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.Promise;
import dayglass.desk.quote.Quote;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What follows a quote that was accepted. Whether a unit is out stands with its booking and nowhere else.
 *
 * @param number its own, from 1 on without gaps
 * @param placed what is booked for it
 * @param charges beside the price; none is taken away, a mistake is reversed by another
 * @param ending how it ended, where it did
 * @param orders of its lines that are rented in, those that were ordered
 */
public record Rental(
        long number,
        Quote.Id quote,
        Customer customer,
        Promise promise,
        List<Placed> placed,
        List<Charge> charges,
        Deposit deposit,
        Optional<Ending> ending,
        List<SupplierOrder> orders) {
    public Rental {
        placed = List.copyOf(placed);
        charges = List.copyOf(charges);
        orders = List.copyOf(orders);
    }

    /** The id of a rental. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * A unit that is booked for it.
     *
     * @param line the priced line, from 0
     * @param replaced another unit went in its place
     */
    public record Placed(
            int line,
            Unit.Id unit,
            Occupation.Id booking,
            boolean replaced,
            Optional<Check> out,
            Optional<Check> back) {
        Placed handedOver(Check check) {
            return new Placed(line, unit, booking, replaced, Optional.of(check), back);
        }

        Placed takenBack(Check check) {
            return new Placed(line, unit, booking, replaced, out, Optional.of(check));
        }

        Placed notHandedOver() {
            return new Placed(line, unit, booking, replaced, Optional.empty(), back);
        }

        Placed gaveWay() {
            return new Placed(line, unit, booking, true, out, back);
        }

        /** How it came back otherwise than it went out, in words; empty where there is no difference. */
        public List<String> differences() {
            if (out.isEmpty() || back.isEmpty()) {
                return List.of();
            }
            List<String> differences = new ArrayList<>();
            List<String> before = out.get().accessories();
            List<String> after = back.get().accessories();
            before.stream()
                    .filter(name -> !after.contains(name))
                    .forEach(name -> differences.add(name + " went out and is not back"));
            after.stream()
                    .filter(name -> !before.contains(name))
                    .forEach(name -> differences.add(name + " is back and was not ticked when it left"));
            if (!out.get().condition().equals(back.get().condition())) {
                differences.add("condition was " + out.get().quoted() + ", is "
                        + back.get().quoted());
            }
            return differences;
        }
    }

    /**
     * What was seen when it left or came back.
     *
     * @param accessories those that were there
     * @param condition in words; empty for nothing to remark
     */
    public record Check(List<String> accessories, String condition, Person.Id by, Instant at) {
        public Check {
            accessories = List.copyOf(accessories);
        }

        private String quoted() {
            return condition.isEmpty() ? "without remark" : "\u201c" + condition + "\u201d";
        }
    }

    /**
     * The deposit: taken = kept + returned once it is settled.
     *
     * @param taken what the customer left
     */
    public record Deposit(Money taken, Money kept, Money returned) {}

    /**
     * How it ended.
     *
     * @param cancelled it was cancelled, not let
     * @param invoice the number of the invoice, from 1 on without gaps; empty where nothing is owed
     */
    public record Ending(boolean cancelled, Optional<Long> invoice, Person.Id by, Instant at) {}

    /** What is owed in all: the price unless it was cancelled, and the charges. */
    public Money owed() {
        Money zero = Money.zero(promise.price().currency());
        boolean cancelled = ending.filter(Ending::cancelled).isPresent();
        return charges.stream()
                .map(Charge::total)
                .reduce(cancelled ? zero : promise.price().total(), Money::plus);
    }

    /** How much of the deposit can be kept: no more than was left and is owed. */
    public Money mostKept() {
        return deposit.taken().compareTo(owed()) < 0 ? deposit.taken() : owed();
    }

    /** What is left to pay once the deposit was settled. */
    public Money toPay() {
        return owed().minus(deposit.kept());
    }

    /** The last day to which any of it is kept longer than was promised; empty where none is. */
    public Optional<LocalDate> keptTo() {
        return IntStream.range(0, promise.price().lines().size())
                .mapToObj(line -> new Extended(this, line))
                .filter(extended -> extended.lastDay().isAfter(extended.promised()))
                .map(Extended::lastDay)
                .max(Comparator.naturalOrder());
    }

    /** The units that belong to it now. */
    public List<Placed> standing() {
        return placed.stream().filter(each -> !each.replaced()).toList();
    }

    /** The order of a line, where it was ordered. */
    public Optional<SupplierOrder> orderOf(int line) {
        return orders.stream().filter(order -> order.line() == line).findFirst();
    }

    Rental ordering(List<SupplierOrder> now) {
        return new Rental(number, quote, customer, promise, placed, charges, deposit, ending, now);
    }

    Rental placing(List<Placed> units) {
        return new Rental(number, quote, customer, promise, units, charges, deposit, ending, orders);
    }

    Rental charging(List<Charge> more) {
        List<Charge> all = new ArrayList<>(charges);
        all.addAll(more);
        return new Rental(number, quote, customer, promise, placed, all, deposit, ending, orders);
    }

    Rental holding(Deposit now) {
        return new Rental(number, quote, customer, promise, placed, charges, now, ending, orders);
    }

    Rental ended(Ending how) {
        return new Rental(number, quote, customer, promise, placed, charges, deposit, Optional.of(how), orders);
    }
}
