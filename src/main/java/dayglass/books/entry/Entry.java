package dayglass.books.entry;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is to be posted, or was.
 *
 * @param date decides which period it belongs to
 * @param service the days for which the thing served
 */
public record Entry(
        Kind kind,
        Job.Id job,
        LocalDate date,
        DateRange service,
        Coding coding,
        Item item,
        Sum sum,
        Papers papers,
        Links links) {

    /** The most that an amount has, in minor units, so that a million of them still add up in the database. */
    public static final long MOST_MINOR = 1_000_000_000_000L;

    /** The number of an entry. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * Where it belongs.
     *
     * @param costCode of the production's own chart; empty where the job has none
     * @param episode or unit of the shoot; empty where it is of none in particular
     */
    public record Coding(String costCode, String episode, String supplier) {}

    /**
     * What it is for.
     *
     * @param tag of the unit, empty where there is none; so with the serial
     * @param rate for one of the quantity, for whoever compares it with the paper; net stands by itself
     */
    public record Item(String description, String tag, String serial, BigDecimal quantity, Money rate) {}

    /** What it comes to, and how that was converted. */
    public record Sum(Amounts amounts, String taxCode, Exchange exchange) {
        public Sum with(Amounts others) {
            return new Sum(others, taxCode, exchange);
        }
    }

    /**
     * The papers behind it.
     *
     * @param note why: an explained difference, the reason of a reversal
     */
    public record Papers(String purchaseOrder, String invoice, String note) {
        public static final Papers NONE = new Papers("", "", "");

        public Papers noted(String why) {
            return new Papers(purchaseOrder, invoice, why);
        }
    }

    /**
     * What it has to do with others.
     *
     * @param commitment the order that it draws on or gives back to
     * @param costing the accepted costing that it comes from
     */
    public record Links(Optional<Id> reverses, Optional<Id> commitment, Optional<Long> costing) {
        public static final Links NONE = new Links(Optional.empty(), Optional.empty(), Optional.empty());

        public static Links to(Id commitment) {
            return new Links(Optional.empty(), Optional.of(commitment), Optional.empty());
        }
    }

    public Amounts amounts() {
        return sum.amounts();
    }

    public Entry with(Kind other, Amounts amounts, Links others) {
        return new Entry(other, job, date, service, coding, item, sum.with(amounts), papers, others);
    }

    public Entry coded(Coding other) {
        return new Entry(kind, job, date, service, other, item, sum, papers, links);
    }

    public Entry on(LocalDate day) {
        return new Entry(kind, job, day, service, coding, item, sum, papers, links);
    }

    public Entry serving(DateRange days) {
        return new Entry(kind, job, date, days, coding, item, sum, papers, links);
    }

    public Entry noted(String why) {
        return new Entry(kind, job, date, service, coding, item, sum, papers.noted(why), links);
    }
}
