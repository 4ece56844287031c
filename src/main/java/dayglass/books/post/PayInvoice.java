package dayglass.books.post;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Shares;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Posted;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Keeps payments on invoices, and posts what the rate of the day made them dearer or cheaper than was booked. */
public final class PayInvoice {
    private final Books books;

    PayInvoice(Books books) {
        this.books = books;
    }

    /**
     * A payment to be kept.
     *
     * @param amount in the invoice's currency; of the sign of what is owed
     * @param costCode that a difference is posted to; empty for the code of the invoice's first line
     */
    public record Draft(LocalDate on, Money amount, Exchange exchange, Optional<String> costCode) {}

    /** What of an invoice is not paid yet. */
    public Money owed(Invoices.Kept invoice) {
        return books.invoices().payments(invoice.id()).stream()
                .map(payment -> payment.paid().amount())
                .reduce(invoice.gross(), Money::minus);
    }

    /** Refused where more is paid than is owed, or the invoice was taken back. */
    public Outcome<Invoices.Payment> pay(Invoice.Id id, Draft draft) {
        return books.house()
                .transactions()
                .atomically(() -> books.invoices()
                        .find(id)
                        .map(invoice -> pay(invoice, draft))
                        .orElseGet(() -> Outcome.refused(
                                Problem.Code.NOT_FOUND, "There is no invoice with the id " + id.number() + ".")));
    }

    private Outcome<Invoices.Payment> pay(Invoices.Kept invoice, Draft draft) {
        if (invoice.reversed()) {
            return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "This invoice was taken back; nothing is owed on it.");
        }
        Money owed = owed(invoice);
        BigInteger left = owed.minor().subtract(draft.amount().minor());
        if (draft.amount().signum() != owed.signum() || left.signum() * owed.signum() < 0) {
            return Outcome.refused(Problem.Code.CANNOT_BE_DONE, "What is owed on this invoice is " + owed + ".");
        }
        Money base =
                draft.exchange().convert(draft.amount(), invoice.baseGross().currency());
        Money booked = booked(invoice, draft.amount());
        Invoices.Paid paid = new Invoices.Paid(draft.on(), draft.amount(), draft.exchange(), base, booked);
        Money difference = base.minus(booked);
        return difference.signum() == 0
                ? Outcome.done(books.invoices().pay(invoice.id(), paid, Optional.empty()))
                : books.post()
                        .post(List.of(entry(invoice, draft, difference)))
                        .map(posted -> books.invoices()
                                .pay(
                                        invoice.id(),
                                        paid,
                                        Optional.of(posted.get(0).id())));
    }

    /** The part of the booked amount that this payment settles; the last one settles the rest. */
    private Money booked(Invoices.Kept invoice, Money amount) {
        Money settled = books.invoices().payments(invoice.id()).stream()
                .map(payment -> payment.paid().booked())
                .reduce(Money.zero(invoice.baseGross().currency()), Money::plus);
        BigInteger gross = invoice.gross().minor().abs();
        BigInteger until = gross.subtract(owed(invoice).minus(amount).minor().abs());
        Money through = new Money(
                invoice.baseGross().currency(),
                Shares.byWeight(invoice.baseGross().minor(), List.of(until, gross.subtract(until)))
                        .get(0));
        return through.minus(settled);
    }

    private Entry entry(Invoices.Kept invoice, Draft draft, Money difference) {
        Posted first = books.entries().posting(invoice.posting()).get(0);
        Money none = Money.zero(difference.currency());
        Entry like = first.entry();
        return new Entry(
                like.kind(),
                invoice.job(),
                draft.on(),
                like.service(),
                new Entry.Coding(
                        draft.costCode().orElse(like.coding().costCode()),
                        like.coding().episode(),
                        invoice.supplier()),
                new Entry.Item(
                        "exchange difference on invoice " + invoice.number(), "", "", BigDecimal.ONE, difference),
                new Entry.Sum(new Amounts(difference, none, difference, none), "", Exchange.none(draft.on())),
                new Entry.Papers(
                        "",
                        invoice.number(),
                        "paid at " + draft.exchange().rate().toPlainString() + " ("
                                + draft.exchange().source() + "), booked at "
                                + like.sum().exchange().rate().toPlainString()),
                Entry.Links.NONE);
    }
}
