package dayglass.books.post;

import dayglass.base.Money;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.house.Person;
import dayglass.job.Job;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Posted invoices and what was paid on them; never changed or removed. */
public interface Invoices {
    Kept add(Invoice invoice, Entry.Id posting, Money gross, Money baseGross);

    Optional<Kept> find(Invoice.Id id);

    /** The one whose entries these are. */
    Optional<Kept> ofPosting(Entry.Id posting);

    /** Whether a supplier's number is in the books of a job and was not taken back. */
    boolean isPosted(Job.Id job, String supplier, String number);

    /** By id, in order. */
    List<Kept> of(Job.Id job);

    /** Who and when is kept with it. */
    Payment pay(Invoice.Id invoice, Paid paid, Optional<Entry.Id> difference);

    /** In order. */
    List<Payment> payments(Invoice.Id invoice);

    /**
     * An invoice in the books.
     *
     * @param posting its entries
     * @param reversed whether they were taken back
     */
    record Kept(
            Invoice.Id id,
            Job.Id job,
            String supplier,
            String number,
            LocalDate date,
            Entry.Id posting,
            Money gross,
            Money baseGross,
            boolean reversed) {}

    /**
     * What was paid.
     *
     * @param amount in the invoice's currency
     * @param base at the rate of the payment
     * @param booked the same part at the rate at which the invoice was posted
     */
    record Paid(LocalDate on, Money amount, Exchange exchange, Money base, Money booked) {}

    /**
     * A payment that is kept.
     *
     * @param difference the entry of the realised difference; empty where there was none
     */
    record Payment(long number, Paid paid, Optional<Entry.Id> difference, Person.Id by, Instant at) {}
}
