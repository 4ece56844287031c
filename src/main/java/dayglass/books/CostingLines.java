package dayglass.books;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Question;
import dayglass.planning.KeptCosting;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A costing as the accountant takes it: what is payable, line by line, and apart from it what the plan weighs. The two
 * are never added up together.
 *
 * @param payable by date, then in the order of the plan's choices
 * @param weighed one a choice, in their order
 */
public record CostingLines(
        CostingReference reference,
        String job,
        Currency currency,
        List<PayableLine> payable,
        List<WeighedLine> weighed) {

    public CostingLines {
        payable = List.copyOf(payable);
        weighed = List.copyOf(weighed);
    }

    /**
     * The lines of an answer.
     *
     * @throws IllegalStateException where they do not add up to what the answer says is payable and weighed, which
     *     would be a fault of the program
     */
    public static CostingLines of(CostingReference reference, Question question, Answer answer, CostCodes codes) {
        Posting posting = new Posting(question, answer, codes);
        List<PayableLine> payable = answer.choices().stream()
                .flatMap(choice -> posting.payable(choice).stream())
                .sorted(Comparator.comparing(PayableLine::date))
                .toList();
        List<WeighedLine> weighed =
                answer.choices().stream().map(CostingLines::weigh).toList();
        CostingLines lines = new CostingLines(reference, question.job(), question.currency(), payable, weighed);
        requireEqual("payable", lines.payableTotal(), answer.payable());
        requireEqual("weighed", lines.weighedTotal(), answer.total());
        return lines;
    }

    /** The lines of a costing that is kept, with the codes of its job. */
    public static CostingLines of(Stored<KeptCosting.Id, KeptCosting> costing, CostCodes codes) {
        KeptCosting facts = costing.facts();
        return of(
                new CostingReference(
                        String.valueOf(costing.id().number()),
                        facts.summary().createdAt(),
                        facts.request().sha256(),
                        facts.answer().sha256()),
                facts.question(),
                facts.answered(),
                codes);
    }

    /** What must be paid in all. */
    public Money payableTotal() {
        return sum(payable.stream().map(PayableLine::total));
    }

    /** The plan's total: what it weighs. */
    public Money weighedTotal() {
        return sum(weighed.stream().map(WeighedLine::cost));
    }

    /** The sum of one column; zero where no line has it. */
    public Money columnTotal(AmountColumn column) {
        return sum(payable.stream().flatMap(line -> line.amount(column).stream()));
    }

    public Money netTotal() {
        return sum(payable.stream().map(PayableLine::net));
    }

    /**
     * The columns of amounts: every purpose without names, and each name of an extra or add-on that some line has, in
     * the order of purposes, then as first met.
     */
    public List<AmountColumn> amountColumns() {
        Stream<AmountColumn> unnamed = Stream.of(AmountColumn.Purpose.values())
                .filter(purpose -> !purpose.isNamed())
                .map(AmountColumn::of);
        Stream<AmountColumn> named = payable.stream()
                .flatMap(line -> line.amounts().keySet().stream())
                .filter(column -> column.purpose().isNamed());
        return Stream.concat(unnamed, named)
                .distinct()
                .sorted(Comparator.comparing(AmountColumn::purpose))
                .toList();
    }

    private Money sum(Stream<Money> amounts) {
        return amounts.reduce(Money.zero(currency), Money::plus);
    }

    private static void requireEqual(String what, Money lines, Money answer) {
        if (!lines.equals(answer)) {
            throw new IllegalStateException("the " + what + " lines come to " + lines + ", the answer to " + answer);
        }
    }

    private static WeighedLine weigh(Choice choice) {
        if (choice instanceof Choice.Rent rent) {
            return new WeighedLine(
                    LineKind.RENTAL,
                    rent.option(),
                    rent.supplier(),
                    Optional.of(rent.dates().from()),
                    Optional.of(rent.dates().lastDay()),
                    rent.total(),
                    false);
        }
        if (choice instanceof Choice.Buy buy) {
            return new WeighedLine(
                    LineKind.PURCHASE,
                    buy.option(),
                    buy.supplier(),
                    Optional.of(buy.from()),
                    Optional.empty(),
                    buy.netCost(),
                    buy.spare());
        }
        return new WeighedLine(
                LineKind.OWNED, choice.option(), "", Optional.empty(), Optional.empty(), choice.total(), false);
    }
}
