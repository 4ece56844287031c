package dayglass.books;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.books.AmountColumn.Purpose;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalCharge;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Turns the choices of one answer into payable lines. */
final class Posting {
    private final Question question;
    private final Answer answer;
    private final CostCodes codes;

    Posting(Question question, Answer answer, CostCodes codes) {
        this.question = question;
        this.answer = answer;
        this.codes = codes;
    }

    /** The line of a choice, or empty for an owned unit. */
    Optional<PayableLine> payable(Choice choice) {
        if (choice instanceof Choice.Rent rent) {
            return Optional.of(rental(rent));
        }
        if (choice instanceof Choice.Buy buy) {
            return Optional.of(purchase(buy));
        }
        return Optional.empty();
    }

    private PayableLine rental(Choice.Rent rent) {
        RentalCharge charge = rent.charge();
        Map<AmountColumn, Money> amounts = new LinkedHashMap<>();
        add(amounts, AmountColumn.of(Purpose.HIRE), charge.hire());
        add(amounts, AmountColumn.of(Purpose.DISCOUNT), charge.discount().times(-1));
        add(amounts, AmountColumn.of(Purpose.RAISED_TO_MINIMUM), charge.raisedToMinimum());
        add(amounts, AmountColumn.of(Purpose.TRIP), charge.trip());
        charge.addOns().forEach(addOn -> add(amounts, new AmountColumn(Purpose.ADD_ON, addOn.name()), addOn.amount()));
        return new PayableLine(
                rent.dates().from(),
                rent.dates(),
                LineKind.RENTAL,
                rent.supplier(),
                rent.option(),
                slotsServed(coverage ->
                        rent.dates().contains(coverage.date()) && coverage.by().contains(rent.option())),
                codes.of(rent.option()),
                BlockWords.of(charge.blocks()),
                amounts);
    }

    private PayableLine purchase(Choice.Buy buy) {
        PurchaseTerms terms = question.purchases().stream()
                .filter(purchase -> purchase.id().equals(buy.option()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the question has no purchase " + buy.option()))
                .terms();
        Map<AmountColumn, Money> amounts = new LinkedHashMap<>();
        add(amounts, AmountColumn.of(Purpose.PRICE), terms.price());
        terms.extras().forEach(extra -> add(amounts, new AmountColumn(Purpose.EXTRA, extra.name()), extra.amount()));
        add(amounts, AmountColumn.of(Purpose.PURCHASE_TAX), terms.tax().of(terms.price()));
        return new PayableLine(
                buy.from(),
                DateRange.inclusive(buy.from(), buy.from()),
                LineKind.PURCHASE,
                buy.supplier(),
                buy.option(),
                slotsServed(coverage -> coverage.by().contains(buy.option())),
                codes.of(buy.option()),
                "",
                amounts);
    }

    /** Extras may share a name; then they share the column. */
    private static void add(Map<AmountColumn, Money> amounts, AmountColumn column, Money amount) {
        amounts.merge(column, amount, Money::plus);
    }

    private List<String> slotsServed(Predicate<Answer.Coverage> serves) {
        List<String> served = answer.coverage().stream()
                .filter(serves)
                .map(Answer.Coverage::slot)
                .distinct()
                .toList();
        return question.needs().stream()
                .map(Question.Need::slot)
                .distinct()
                .filter(served::contains)
                .toList();
    }
}
