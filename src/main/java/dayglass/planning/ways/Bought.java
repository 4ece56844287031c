package dayglass.planning.ways;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import java.util.Optional;

/**
 * What a way comes to with its own options bought, whether the cash is there or not.
 *
 * @param total the purchases at their net cost
 * @param cash what is payable
 * @param beyondCash the purchases take more than the job's cash limit
 * @param completedByRenting what others complete is rented
 */
public record Bought(Money total, Money cash, boolean beyondCash, boolean completedByRenting) {
    /** Empty where nothing of it is for sale, or buying leaves something open that the way serves. */
    static Optional<Bought> of(Question question, StopSignal stop) {
        return OwnPart.isForSale(question)
                ? LeastCost.solve(OwnPart.bought(question), stop)
                        .<Optional<Answer>>fold(
                                planned -> Optional.of(planned.answer()),
                                none -> Optional.empty(),
                                (Costing.OutOfTime out) -> Optional.empty())
                        .map(answer -> of(answer, question))
                : Optional.empty();
    }

    private static Bought of(Answer answer, Question question) {
        Money outlays = answer.choices().stream()
                .filter(Choice.Buy.class::isInstance)
                .map(choice -> ((Choice.Buy) choice).outlay())
                .reduce(Money.zero(question.currency()), Money::plus);
        return new Bought(
                answer.total(),
                answer.payable(),
                question.cashLimit()
                        .filter(limit -> outlays.compareTo(limit) > 0)
                        .isPresent(),
                answer.choices().stream().anyMatch(Choice.Rent.class::isInstance));
    }
}
