package dayglass.books.post;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.chart.Chart;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.EntryFaults;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays an invoice beside the orders that it is for, and posts it once every difference is explained. */
public final class MatchInvoice {
    private final Books books;

    MatchInvoice(Books books) {
        this.books = books;
    }

    /**
     * A line beside its order.
     *
     * @param order with what is open on it; empty where the line has none
     * @param amounts of the line, also in the base currency
     * @param released what of the order it uses up
     * @param difference what it comes to beyond (or, negative, below) what was open, net and in the base currency
     * @param toExplain a difference without an explanation: it keeps the invoice from being posted
     */
    public record Match(
            Invoice.Line line,
            Optional<Entries.Order> order,
            Amounts amounts,
            Amounts released,
            Money difference,
            boolean toExplain) {}

    /** Each line beside its order; refused where an order is not the job's and supplier's. */
    public Outcome<List<Match>> match(Invoice invoice) {
        Map<Entry.Id, Entries.Order> orders = new HashMap<>();
        books.entries()
                .ordersAmong(
                        invoice.job(),
                        invoice.lines().stream()
                                .flatMap(line -> line.order().stream())
                                .toList())
                .forEach(order -> orders.put(order.commitment().id(), order));
        List<Fault> faults = new ArrayList<>();
        List<Match> matches = new ArrayList<>();
        Currency base =
                books.house().jobs().find(invoice.job()).orElseThrow().facts().currency();
        for (int at = 0; at < invoice.lines().size(); at++) {
            Invoice.Line line = invoice.lines().get(at);
            Optional<Entries.Order> order = line.order().map(orders::get);
            Optional<String> wrong = fault(invoice, line, order);
            if (wrong.isPresent()) {
                faults.add(new Fault(
                        "/lines/" + at + wrong.get().substring(0, wrong.get().indexOf(' ')),
                        wrong.get().substring(wrong.get().indexOf(' ') + 1)));
                continue;
            }
            Match match = match(line, order, Amounts.at(invoice.exchange(), base, line.net(), line.tax()));
            matches.add(match);
            // A second line for the same order finds what the first left open.
            order.ifPresent(each -> orders.put(
                    each.commitment().id(),
                    new Entries.Order(each.commitment(), each.open().minus(match.released()), each.accrued())));
        }
        return faults.isEmpty() ? Outcome.done(matches) : Outcome.refused(Problem.faulty(faults));
    }

    /** Where below the line something is wrong, a space, and what. */
    private static Optional<String> fault(Invoice invoice, Invoice.Line line, Optional<Entries.Order> order) {
        if (line.order().isPresent() && order.isEmpty()) {
            return Optional.of("/commitment this job has no such commitment");
        }
        if (order.isPresent()
                && !order.get().commitment().entry().coding().supplier().equals(invoice.supplier())) {
            return Optional.of("/commitment is with another supplier: "
                    + order.get().commitment().entry().coding().supplier());
        }
        if (order.isEmpty() && line.text().description().isEmpty()) {
            return Optional.of("/description is missing: say what a line without a commitment is for");
        }
        return Optional.empty();
    }

    private static Match match(Invoice.Line line, Optional<Entries.Order> order, Amounts amounts) {
        Amounts zero = amounts.minus(amounts);
        Amounts open = order.map(Entries.Order::open).orElse(zero);
        boolean credit = amounts.net().signum() < 0;
        boolean beyond = amounts.baseNet().compareTo(open.baseNet()) > 0;
        boolean part = order.isPresent() && line.more() && !beyond && !credit;
        Amounts released = order.isEmpty() || credit ? open.minus(open) : part ? part(open, amounts) : open;
        Money difference =
                part ? Money.zero(open.baseNet().currency()) : amounts.baseNet().minus(released.baseNet());
        boolean toExplain = difference.signum() != 0 && line.explanation().isBlank();
        return new Match(line, order, amounts, released, difference, toExplain);
    }

    /** As much of what is open as the line comes to; the rest of it adds up with that to the minor unit. */
    private static Amounts part(Amounts open, Amounts line) {
        boolean same = open.net().currency().equals(line.net().currency())
                && line.net().compareTo(open.net()) <= 0
                && open.net().signum() > 0;
        Money some = same ? line.net() : line.baseNet();
        Money all = same ? open.net() : open.baseNet();
        return all.signum() == 0 ? open.minus(open) : open.share(some.minor(), all.minor());
    }

    /** Posts the lines as actuals and takes as much out of the orders; refused while a difference is not explained. */
    public Outcome<Invoices.Kept> post(Invoice invoice) {
        return books.house().transactions().atomically(() -> {
            boolean there = books.invoices().isPosted(invoice.job(), invoice.supplier(), invoice.number());
            return there
                    ? Outcome.refused(
                            Problem.Code.ALREADY_THERE,
                            "The invoice " + invoice.number() + " of " + invoice.supplier() + " is posted already.")
                    : match(invoice).then(matches -> post(invoice, matches));
        });
    }

    private Outcome<Invoices.Kept> post(Invoice invoice, List<Match> matches) {
        List<Fault> faults = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        Chart chart = books.charts().of(invoice.job()).facts();
        for (int at = 0; at < matches.size(); at++) {
            Match match = matches.get(at);
            faults.addAll(faults("/lines/" + at, EntryFaults.of(actual(invoice, match), chart)));
            if (match.toExplain()) {
                faults.add(new Fault(
                        "/lines/" + at + "/explanation",
                        "is missing: the line differs by " + match.difference() + " from what was open; say why"));
            }
            entries.addAll(entries(invoice, match));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(Problem.faulty(faults));
        }
        Amounts sum = matches.stream().map(Match::amounts).reduce(Amounts::plus).orElseThrow();
        return books.post()
                .post(entries)
                .map(posted -> books.invoices().add(invoice, posted.get(0).posting(), sum.gross(), sum.baseGross()));
    }

    /** The rate of exchange is the invoice's; all else stands in its line. */
    private static List<Fault> faults(String line, List<Fault> ofEntry) {
        return ofEntry.stream()
                .map(fault -> fault.pointer().startsWith("/exchange")
                        ? fault
                        : new Fault(line + fault.pointer(), fault.message()))
                .toList();
    }

    private static List<Entry> entries(Invoice invoice, Match match) {
        Entry actual = actual(invoice, match);
        if (match.released().isZero()) {
            return List.of(actual);
        }
        Posted order = match.order().orElseThrow().commitment();
        Entry release = order.entry()
                .with(Kind.COMMITMENT, match.released().negated(), Entry.Links.to(order.id()))
                .on(invoice.postedOn())
                .noted("invoiced by " + invoice.number());
        return List.of(actual, release);
    }

    private static Entry actual(Invoice invoice, Match match) {
        Optional<Entry> order = match.order().map(each -> each.commitment().entry());
        Invoice.Text text = match.line().text();
        DateRange onDate = DateRange.inclusive(invoice.date(), invoice.date());
        Entry.Links links = new Entry.Links(Optional.empty(), match.line().order(), Optional.empty());
        return new Entry(
                Kind.ACTUAL,
                invoice.job(),
                invoice.postedOn(),
                text.service().or(() -> order.map(Entry::service)).orElse(onDate),
                new Entry.Coding(
                        text.costCode()
                                .or(() -> order.map(each -> each.coding().costCode()))
                                .orElse(""),
                        text.episode()
                                .or(() -> order.map(each -> each.coding().episode()))
                                .orElse(""),
                        invoice.supplier()),
                new Entry.Item(
                        text.description()
                                .or(() -> order.map(each -> each.item().description()))
                                .orElseThrow(),
                        order.map(each -> each.item().tag()).orElse(""),
                        order.map(each -> each.item().serial()).orElse(""),
                        BigDecimal.ONE,
                        match.line().net()),
                new Entry.Sum(match.amounts(), text.taxCode(), invoice.exchange()),
                new Entry.Papers(
                        order.map(each -> each.papers().purchaseOrder()).orElse(""),
                        invoice.number(),
                        match.line().explanation()),
                links);
    }
}
