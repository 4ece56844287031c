package dayglass.planning.ways;

import dayglass.cost.plan.Question;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Narrower questions about a way than the one that its row is costed by; cash binds none of them. */
final class OwnPart {
    private OwnPart() {}

    /** What the way's own options serve, without what completes them. */
    static Question of(Question question) {
        return with(
                question,
                question.needs().stream()
                        .filter(need -> !completes(need.slot()))
                        .toList(),
                question.rentals().stream()
                        .filter(option -> !completes(option.covers()))
                        .toList(),
                question.purchases().stream()
                        .filter(option -> !completes(option.covers()))
                        .toList());
    }

    /** The way with its own options bought and not rented; what completes them comes however it is cheapest. */
    static Question bought(Question question) {
        return with(
                question,
                question.needs(),
                question.rentals().stream()
                        .filter(option -> completes(option.covers()))
                        .toList(),
                question.purchases());
    }

    /** Whether anything of the way's own is for sale. */
    static boolean isForSale(Question question) {
        return question.purchases().stream().anyMatch(option -> !completes(option.covers()));
    }

    private static boolean completes(Map<String, Integer> covers) {
        return covers.keySet().stream().allMatch(OwnPart::completes);
    }

    private static boolean completes(String slot) {
        return slot.endsWith(WayQuestion.COMPLETED);
    }

    private static Question with(
            Question question,
            List<Question.Need> needs,
            List<Question.Rental> rentals,
            List<Question.Purchase> purchases) {
        return new Question(
                question.job(),
                question.currency(),
                question.discountRate(),
                Optional.empty(),
                question.schedule(),
                needs,
                rentals,
                purchases,
                question.owned(),
                question.stock());
    }
}
