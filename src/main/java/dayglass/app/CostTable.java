package dayglass.app;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Explanation;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalCharge;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** A plan as a table for people; it reads well aloud and fits 100 columns. */
final class CostTable {
    private final Question question;
    private final Answer answer;
    private final TextLayout lines = new TextLayout();

    private CostTable(Question question, Answer answer) {
        this.question = question;
        this.answer = answer;
    }

    static String of(Question question, Answer answer) {
        return new CostTable(question, answer).print();
    }

    private String print() {
        lines.sentence(0, question.job());
        lines.sentence(
                0,
                DayWords.counted(question.schedule().horizon()) + ". All amounts are in "
                        + question.currency().code() + ".");
        lines.blank().row(0, "The plan costs", answer.total().amount());
        lines.sentence(0, proof());
        lines.blank().heading("What to take", "");
        printChoices();
        lines.blank().heading("Who serves each slot", "");
        CoverageLines.print(answer.coverage(), lines);
        lines.blank();
        ComparisonLines.print(answer.comparison(), lines);
        lines.blank().heading("What to pay, and when", "");
        printCash();
        return lines.toString();
    }

    private String proof() {
        String bound = answer.lowerBound().amount();
        if (answer.optimal()) {
            return "Proved the least: no plan costs less than " + bound + ".";
        }
        Money gap = answer.total().minus(answer.lowerBound());
        return "Not proved: no plan costs less than " + bound + "; at most "
                + (answer.total().signum() > 0
                        ? percentOfTotal(gap) + " % could be saved."
                        : gap.amount() + " could be saved.");
    }

    /** Rounded up, so that "at most" holds. */
    private String percentOfTotal(Money gap) {
        return new BigDecimal(gap.minor())
                .movePointRight(2)
                .divide(new BigDecimal(answer.total().minor()), 2, RoundingMode.CEILING)
                .toPlainString();
    }

    private void printChoices() {
        if (answer.choices().isEmpty()) {
            lines.sentence(2, "Nothing: no day asks for anything.");
        }
        List<Explanation.Reason> reasons = answer.explanation().reasons();
        for (int i = 0; i < answer.choices().size(); i++) {
            Choice choice = answer.choices().get(i);
            if (choice instanceof Choice.Rent rent) {
                printRent(rent);
            } else if (choice instanceof Choice.Buy buy) {
                printBuy(buy);
            } else {
                lines.row(
                        2,
                        "Use what is owned: " + choice.option(),
                        choice.total().amount());
            }
            if (i < reasons.size()) {
                printReason(reasons.get(i));
            }
        }
    }

    private void printRent(Choice.Rent rent) {
        RentalCharge charge = rent.charge();
        lines.row(
                2,
                "Rent " + rent.option() + " from " + rent.supplier() + ", " + DayWords.counted(rent.dates()),
                rent.total().amount());
        for (RentalCharge.BlockUsed block : charge.blocks()) {
            String kind = block.extraDay() ? "extra day" : block.days() == 1 ? "day" : block.days() + "-day block";
            lines.row(6, kind + " from " + DayWords.ofShort(block.from()), inner(block.price()));
        }
        printUnlessZero("discount for a long hire", charge.discount(), "-");
        printUnlessZero("raised to the minimum charge", charge.raisedToMinimum(), "");
        printUnlessZero("trip", charge.trip(), "");
        charge.addOns().forEach(addOn -> lines.row(6, addOn.name(), inner(addOn.amount())));
    }

    private void printBuy(Choice.Buy buy) {
        lines.row(
                2,
                "Buy " + buy.option() + " from " + buy.supplier() + ", there from " + DayWords.of(buy.from()),
                buy.netCost().amount());
        lines.row(6, "outlay, to be paid", inner(buy.outlay()));
        lines.row(6, "net cost, after keeping, letting and selling it", inner(buy.netCost()));
        if (buy.spare()) {
            lines.sentence(6, "It serves no slot; it is bought because it pays for itself.");
        }
    }

    private void printUnlessZero(String label, Money amount, String sign) {
        if (amount.signum() != 0) {
            lines.row(6, label, sign + inner(amount));
        }
    }

    /** Inner figures stand left of the totals, so that a column adds up by eye. */
    private static String inner(Money amount) {
        return amount.amount() + " ".repeat(16);
    }

    private void printReason(Explanation.Reason reason) {
        for (Explanation.Rival rival : reason.rivals()) {
            lines.sentence(
                    6,
                    "The same days by " + rival.blocks() + " would be a hire of "
                            + rival.hire().amount() + ".");
        }
        reason.without().ifPresent(without -> lines.sentence(6, without(without)));
    }

    private String without(Explanation.Without without) {
        if (without.total().isEmpty()) {
            return without.proved() ? "Without it there is no plan." : "Without it no plan was found in time.";
        }
        Money total = without.total().get();
        Money more = total.minus(answer.total());
        String start = without.proved() ? "Without it the least plan costs " : "Without it the best plan found costs ";
        return start + total.amount() + ", "
                + (more.signum() == 0
                        ? "the same."
                        : more.signum() > 0
                                ? more.amount() + " more."
                                : answer.total().minus(total).amount() + " less.");
    }

    private void printCash() {
        for (Answer.Cash cash : answer.cash()) {
            lines.row(
                    2,
                    DayWords.of(cash.date()) + ", " + cash.option(),
                    cash.amount().amount());
        }
        Money payable = answer.payable();
        lines.row(2, "Payable in all", payable.amount());
        boolean buys = answer.choices().stream().anyMatch(Choice.Buy.class::isInstance);
        lines.sentence(
                2,
                buys
                        ? "This differs from the plan's cost of "
                                + answer.total().amount()
                                + ", which also weighs what the purchases cost to keep, earn and sell for later: "
                                + "post what is payable, decide by the plan's cost."
                        : "This is the plan's cost: nothing is bought, so nothing comes back later.");
    }
}
