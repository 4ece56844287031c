package dayglass.web.page.costing;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Question;
import dayglass.web.page.Label;
import dayglass.web.page.picture.CashPicture;
import dayglass.web.page.picture.ComparisonPicture;
import dayglass.web.page.picture.CoverPicture;
import dayglass.web.page.picture.Strip;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What the page of a costing shows.
 *
 * @param number of the costing
 * @param jobLink the address of its job; empty text for a bare request
 * @param proof how certain the total is, in a sentence
 * @param payable what is payable and how it differs from the total
 * @param paper the cover picture again in strips that fit on paper
 */
public record CostingView(
        long number,
        String jobLink,
        Label label,
        String total,
        String proof,
        boolean proved,
        String payable,
        CoverPicture cover,
        List<CoverPicture> paper,
        ComparisonPicture comparison,
        CashPicture cash,
        List<ChoiceView> choices,
        SlotDayTable slotDays,
        String stamp) {

    public CostingView {
        paper = List.copyOf(paper);
        choices = List.copyOf(choices);
    }

    /** The options that the plan takes, each once. */
    public List<String> options() {
        return choices.stream().map(ChoiceView::option).distinct().toList();
    }

    /**
     * The page of an answer.
     *
     * @param number of the costing
     * @param jobLink the address of its job; empty text for a bare request
     * @param stamp when and by which engine it was made
     */
    public static CostingView of(long number, String jobLink, String stamp, Question question, Answer answer) {
        return new CostingView(
                number,
                jobLink,
                label(question),
                Words.money(answer.total()),
                proof(answer),
                answer.optimal(),
                payable(answer),
                CoverPicture.of(question, answer),
                CoverPicture.forPaper(question, answer),
                ComparisonPicture.of(answer),
                CashPicture.of(answer),
                choices(question, answer),
                SlotDayTable.of(question, answer),
                stamp);
    }

    private static Label label(Question question) {
        DateRange horizon = question.schedule().horizon();
        return new Label(
                question.job(),
                List.of(
                        new Label.Field("dates", Words.dates(horizon)),
                        new Label.Field("days", String.valueOf(horizon.days())),
                        new Label.Field("uses", Strip.uses(question.schedule())),
                        new Label.Field(
                                "slots",
                                String.valueOf(SlotDayTable.slots(question).size()))));
    }

    private static String proof(Answer answer) {
        if (answer.optimal()) {
            return "Proved: no other mix of owning, buying and renting what was asked about costs less.";
        }
        Money gap = answer.total().minus(answer.lowerBound());
        return "The best found in the time. Not proved to be the least: no plan can cost less than "
                + Words.money(answer.lowerBound()) + ", so at most " + Words.money(gap) + " could still be saved.";
    }

    private static String payable(Answer answer) {
        boolean buys = answer.choices().stream().anyMatch(Choice.Buy.class::isInstance);
        String payable = Words.money(answer.payable());
        return buys
                ? "Payable is " + payable + ". That is another figure than the total of " + Words.money(answer.total())
                        + ", because what is bought is paid in full and counted in the total at its net cost: what it"
                        + " costs to keep, less what it earns and sells for later."
                : "Payable is " + payable + ", the same as the total, because nothing is bought.";
    }

    private static List<ChoiceView> choices(Question question, Answer answer) {
        List<ChoiceView> views = new ArrayList<>();
        for (int at = 0; at < answer.choices().size(); at++) {
            views.add(ChoiceView.of(question, answer, at));
        }
        return views;
    }
}
