package dayglass.web.page.costing;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Explanation;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalCharge;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One choice of a plan, line by line.
 *
 * @param kind {@code rented}, {@code bought} or {@code owned}
 * @param lines add up to the total
 * @param notes what is said beside the lines and is not added up
 * @param without what the plan would cost if this could not be had; empty where it was not worked out
 * @param rivals how else the same period would be charged
 */
public record ChoiceView(
        String kind,
        String option,
        String supplier,
        String dates,
        String covers,
        List<Line> lines,
        String total,
        List<String> notes,
        String without,
        List<Line> rivals) {

    public ChoiceView {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
        rivals = List.copyOf(rivals);
    }

    public record Line(String what, String amount) {}

    /** @param at the number of the choice, from 0 */
    static ChoiceView of(Question question, Answer answer, int at) {
        Choice choice = answer.choices().get(at);
        Optional<Explanation.Reason> reason =
                answer.explanation().reasons().stream().skip(at).findFirst();
        String covers = Words.covers(covers(question, choice.option()));
        String without = reason.flatMap(Explanation.Reason::without)
                .map(each -> without(answer, each))
                .orElse("");
        List<Line> rivals = reason.stream()
                .flatMap(each -> each.rivals().stream())
                .map(rival -> new Line(rival.blocks(), Words.amount(rival.hire())))
                .toList();
        if (choice instanceof Choice.Rent rent) {
            return rented(rent, covers, without, rivals);
        }
        if (choice instanceof Choice.Buy buy) {
            return bought(buy, covers, without);
        }
        return new ChoiceView(
                "owned",
                choice.option(),
                "own shelf",
                "",
                covers,
                List.of(),
                Words.amount(choice.total()),
                List.of(),
                without,
                List.of());
    }

    private static ChoiceView rented(Choice.Rent rent, String covers, String without, List<Line> rivals) {
        return new ChoiceView(
                "rented",
                rent.option(),
                rent.supplier(),
                Words.dates(rent.dates()) + ", " + Words.days(rent.dates().days()),
                covers,
                lines(rent.charge()),
                Words.amount(rent.total()),
                List.of(),
                without,
                rivals);
    }

    private static ChoiceView bought(Choice.Buy buy, String covers, String without) {
        List<String> notes = new ArrayList<>();
        notes.add("Outlay " + Words.money(buy.outlay()) + ", payable when it is there.");
        if (buy.spare()) {
            notes.add("It serves no slot: it is bought because it pays for itself.");
        }
        return new ChoiceView(
                "bought",
                buy.option(),
                buy.supplier(),
                "from " + Words.date(buy.from()),
                covers,
                List.of(new Line("net cost over its term", Words.amount(buy.netCost()))),
                Words.amount(buy.total()),
                notes,
                without,
                List.of());
    }

    private static List<Line> lines(RentalCharge charge) {
        List<Line> lines = new ArrayList<>();
        for (RentalCharge.BlockUsed block : charge.blocks()) {
            String name = block.extraDay() ? "extra day" : Words.days(block.days());
            lines.add(new Line(name + " from " + Words.date(block.from()), Words.amount(block.price())));
        }
        Money zero = Money.zero(charge.total().currency());
        addUnlessZero(lines, "long-hire discount", zero.minus(charge.discount()));
        addUnlessZero(lines, "raised to the minimum charge", charge.raisedToMinimum());
        addUnlessZero(lines, "trip", charge.trip());
        charge.addOns().forEach(addOn -> addUnlessZero(lines, addOn.name(), addOn.amount()));
        return lines;
    }

    private static void addUnlessZero(List<Line> lines, String what, Money amount) {
        if (amount.signum() != 0) {
            lines.add(new Line(what, Words.amount(amount)));
        }
    }

    private static String without(Answer answer, Explanation.Without without) {
        return without.total()
                .map(total -> "Without it the least total " + (without.proved() ? "would be " : "found is ")
                        + Words.money(total) + ", " + Words.difference(answer.total(), total) + ".")
                .orElse(without.proved() ? "Without it no plan is left." : "Without it no plan was found in the time.");
    }

    private static Map<String, Integer> covers(Question question, String option) {
        return Stream.of(
                        question.rentals().stream()
                                .filter(each -> each.id().equals(option))
                                .map(Question.Rental::covers),
                        question.purchases().stream()
                                .filter(each -> each.id().equals(option))
                                .map(Question.Purchase::covers),
                        question.owned().stream()
                                .filter(each -> each.id().equals(option))
                                .map(Question.Owned::covers))
                .flatMap(each -> each)
                .findFirst()
                .orElse(Map.of());
    }
}
