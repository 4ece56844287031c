package dayglass.books.post;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PricedLine;
import dayglass.desk.price.PricedLine.RentedIn;
import dayglass.desk.rental.OrdersInBooks;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.Rentals;
import dayglass.desk.rental.SupplierOrder;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Puts what a rental ordered from a supplier into the books of a job as a commitment, a line once: what was reversed can be
 * put there again, and what stands there cannot be taken back at the desk.
 */
public record CommitOrder(Books books, Rentals rentals, RentalOrders orders) {
    /**
     * What is to be posted.
     *
     * @param line the priced line, from 0
     * @param taxCode empty for what the supplier's card calls its tax
     * @param exchange where the order's currency is not that of the job and no budget rate leads there
     */
    public record Asked(
            Rental.Id rental,
            int line,
            Job.Id job,
            LocalDate date,
            String costCode,
            String episode,
            String taxCode,
            Optional<Exchange> exchange) {}

    /** What posting it would give. */
    public Outcome<Posted> preview(Asked asked) {
        return books.house().transactions().tried(() -> post(asked));
    }

    public Outcome<Posted> post(Asked asked) {
        return books.house()
                .transactions()
                .atomically(() -> entry(asked)
                        .then(entry -> books.post().post(List.of(entry)))
                        .map(posted -> {
                            orders.isFor(posted.get(0), asked.rental(), asked.line());
                            return posted.get(0);
                        }));
    }

    private Outcome<Entry> entry(Asked asked) {
        Optional<Stored<Rental.Id, Rental>> rental = rentals.find(asked.rental());
        if (rental.isEmpty()) {
            return cannot(Problem.Code.NOT_FOUND, "There is no such rental.");
        }
        Rental facts = rental.get().facts();
        return order(asked, facts)
                .then(order ->
                        base(asked).then(base -> sum(asked, facts, base)).map(sum -> entry(asked, facts, order, sum)));
    }

    private Outcome<SupplierOrder> order(Asked asked, Rental rental) {
        if (rental.ending().filter(Rental.Ending::cancelled).isPresent()) {
            return cannot(
                    Problem.Code.CANNOT_BE_DONE, "The rental was cancelled: nothing of it is to be had any more.");
        }
        Optional<OrdersInBooks.InBooks> standing =
                Optional.ofNullable(orders.of(asked.rental()).get(asked.line()));
        if (standing.isPresent()) {
            return cannot(Problem.Code.CANNOT_BE_DONE, standing.get().why());
        }
        return rental.orderOf(asked.line())
                .<Outcome<SupplierOrder>>map(Outcome::done)
                .orElseGet(() -> Outcome.faulty("/line", "was not ordered: record its order at the desk first"));
    }

    private Outcome<Currency> base(Asked asked) {
        return books.house()
                .jobs()
                .find(asked.job())
                .<Outcome<Currency>>map(job -> Outcome.done(job.facts().currency()))
                .orElseGet(() -> Outcome.faulty("/jobId", "there is no job with this id"));
    }

    private static Entry entry(Asked asked, Rental rental, SupplierOrder order, Entry.Sum sum) {
        PricedLine line = rental.promise().price().lines().get(asked.line());
        return new Entry(
                Kind.COMMITMENT,
                asked.job(),
                asked.date(),
                line.dates(),
                new Entry.Coding(
                        asked.costCode(),
                        asked.episode(),
                        line.rentedIn().orElseThrow().supplier()),
                new Entry.Item(
                        line.what() + ", rented in",
                        "",
                        "",
                        BigDecimal.ONE,
                        sum.amounts().net()),
                sum,
                new Entry.Papers(order.number(), "", "rental " + rental.number()),
                Entry.Links.NONE);
    }

    private static Outcome<Entry.Sum> sum(Asked asked, Rental rental, Currency base) {
        PackagePrice price = rental.promise().price();
        RentedIn from = price.lines().get(asked.line()).rentedIn().orElseThrow();
        Money tax = from.billedTaxes().values().stream()
                .reduce(Money.zero(from.billed().currency()), Money::plus);
        Money net = from.billed().minus(tax);
        String code = asked.taxCode().isEmpty()
                ? String.join(" + ", from.billedTaxes().keySet())
                : asked.taxCode();
        return exchange(asked, from, base, price.pricedOn())
                .map(exchange -> new Entry.Sum(Amounts.at(exchange, base, net, tax), code, exchange));
    }

    /** Whether the exchange has to be said: neither the order's currency nor that of its budget rate is the job's. */
    public static boolean asksExchange(RentedIn from, Currency base) {
        return !from.billed().currency().equals(base) && !from.cost().currency().equals(base);
    }

    /** The budget rate that the line was priced by stays with it, so that books and margin tell the same. */
    private static Outcome<Exchange> exchange(Asked asked, RentedIn from, Currency base, LocalDate pricedOn) {
        if (asksExchange(from, base)) {
            return asked.exchange()
                    .<Outcome<Exchange>>map(Outcome::done)
                    .orElseGet(() -> Outcome.faulty(
                            "/exchange",
                            "is missing: the order is in " + from.billed().currency()
                                    + " and the job's books are kept in " + base
                                    + ": say the rate and where it was read"));
        }
        if (asked.exchange().isPresent()) {
            return Outcome.faulty(
                    "/exchange", "is not needed: the job's currency or the budget rate of the price stands");
        }
        return Outcome.done(from.foreign()
                .filter(foreign -> !foreign.cost().currency().equals(base))
                .map(foreign -> new Exchange(foreign.rate(), "the desk's budget rate", pricedOn))
                .orElseGet(() -> Exchange.none(asked.date())));
    }

    private static <T> Outcome<T> cannot(Problem.Code code, String why) {
        return Outcome.refused(code, why);
    }
}
