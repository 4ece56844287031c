package dayglass.books.post;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.AmountColumn;
import dayglass.books.CostingLines;
import dayglass.books.PayableLine;
import dayglass.books.entry.Amounts;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Exchange;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns a costing's payable lines into commitments, or into the estimate that later figures are held against. */
public final class AcceptPlan {
    private final Books books;

    AcceptPlan(Books books) {
        this.books = books;
    }

    /**
     * What is accepted.
     *
     * @param costing its number; it is accepted once, until that is taken back
     * @param as commitment or estimate
     * @param purchaseOrders by supplier; one that is not named gets the costing's number and a running one
     */
    public record Plan(
            Job.Id job, long costing, CostingLines lines, Kind as, LocalDate on, Map<String, String> purchaseOrders) {}

    /** Posts an entry a payable line. */
    public Outcome<List<Posted>> accept(Plan plan) {
        return books.house().transactions().atomically(() -> {
            Optional<Problem> refusal = refusal(plan);
            return refusal.isPresent()
                    ? Outcome.refused(refusal.get())
                    : books.post()
                            .post(plan.lines().payable().stream()
                                    .map(line -> entry(plan, line))
                                    .toList());
        });
    }

    private Optional<Problem> refusal(Plan plan) {
        if (plan.lines().payable().isEmpty()) {
            return cannot("Nothing is payable in this costing, so there is nothing to order.");
        }
        boolean sameCurrency = books.house()
                .jobs()
                .find(plan.job())
                .filter(job -> job.facts().currency().equals(plan.lines().currency()))
                .isPresent();
        if (!sameCurrency) {
            return cannot("The costing is not in the job's currency any more: cost the job again.");
        }
        return plan.as() == Kind.COMMITMENT && books.entries().hasCosting(plan.costing())
                ? cannot("This costing was accepted already; reverse its commitments first.")
                : Optional.empty();
    }

    private static Optional<Problem> cannot(String why) {
        return Optional.of(new Problem(Problem.Code.CANNOT_BE_DONE, why));
    }

    private static Entry entry(Plan plan, PayableLine line) {
        Money tax = line.amount(new AmountColumn(AmountColumn.Purpose.PURCHASE_TAX, ""))
                .orElse(Money.zero(line.total().currency()));
        Money net = line.total().minus(tax);
        String order = plan.as() == Kind.COMMITMENT ? purchaseOrder(plan, line.supplier()) : "";
        Optional<Long> costing = plan.as() == Kind.COMMITMENT ? Optional.of(plan.costing()) : Optional.empty();
        return new Entry(
                plan.as(),
                plan.job(),
                plan.on(),
                line.service(),
                new Entry.Coding(line.costCode(), "", line.supplier()),
                new Entry.Item(description(line), "", "", BigDecimal.ONE, net),
                new Entry.Sum(new Amounts(net, tax, net, tax), "", Exchange.none(plan.on())),
                new Entry.Papers(order, "", "costing " + plan.costing()),
                new Entry.Links(Optional.empty(), Optional.empty(), costing));
    }

    private static String description(PayableLine line) {
        String slots = line.slots().isEmpty() ? "" : " for " + String.join(", ", line.slots());
        return line.kind().word() + " " + line.option() + slots;
    }

    private static String purchaseOrder(Plan plan, String supplier) {
        List<String> suppliers = plan.lines().payable().stream()
                .map(PayableLine::supplier)
                .distinct()
                .toList();
        return plan.purchaseOrders()
                .getOrDefault(supplier, "PO-" + plan.costing() + "-" + (suppliers.indexOf(supplier) + 1));
    }
}
