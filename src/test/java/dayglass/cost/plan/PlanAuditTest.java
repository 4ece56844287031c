package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The audit must find what is wrong: each spoilt copy of a good answer is refused. */
class PlanAuditTest {
    private static final Question QUESTION = RandomJobs.film(4, 3, 21, 9);

    static Stream<Named<UnaryOperator<Answer>>> spoilt() {
        return Stream.of(
                Named.of(
                        "total a cent less",
                        answer -> with(
                                answer,
                                answer.total().minus(cent()),
                                answer.choices(),
                                answer.coverage(),
                                answer.cash())),
                Named.of(
                        "first choice left out",
                        answer -> with(
                                answer,
                                answer.total(),
                                without(answer.choices(), 0),
                                answer.coverage(),
                                answer.cash())),
                Named.of(
                        "first choice twice",
                        answer -> with(
                                answer, answer.total(), twice(answer.choices()), answer.coverage(), answer.cash())),
                Named.of(
                        "a rental a day shorter",
                        answer -> with(
                                answer, answer.total(), shorter(answer.choices()), answer.coverage(), answer.cash())),
                Named.of(
                        "a need not listed as covered",
                        answer -> with(
                                answer,
                                answer.total(),
                                answer.choices(),
                                without(answer.coverage(), 0),
                                answer.cash())),
                Named.of(
                        "a payment left out",
                        answer -> with(
                                answer,
                                answer.total(),
                                answer.choices(),
                                answer.coverage(),
                                without(answer.cash(), 0))));
    }

    @ParameterizedTest
    @MethodSource("spoilt")
    void aSpoiltAnswerIsRefused(UnaryOperator<Answer> spoil) {
        Answer good = Questions.solved(QUESTION);
        assertTrue(good.choices().stream().anyMatch(Choice.Rent.class::isInstance));
        assertThrows(AssertionError.class, () -> PlanAudit.check(QUESTION, spoil.apply(good)));
    }

    private static Money cent() {
        return Money.ofMinor(QUESTION.currency(), 1);
    }

    private static Answer with(
            Answer answer, Money total, List<Choice> choices, List<Answer.Coverage> coverage, List<Answer.Cash> cash) {
        return new Answer(
                total,
                answer.lowerBound(),
                answer.optimal(),
                answer.comparison(),
                choices,
                coverage,
                cash,
                answer.explanation());
    }

    private static <T> List<T> without(List<T> list, int index) {
        List<T> fewer = new ArrayList<>(list);
        fewer.remove(index);
        return fewer;
    }

    private static List<Choice> twice(List<Choice> choices) {
        List<Choice> more = new ArrayList<>(choices);
        more.add(choices.get(0));
        return more;
    }

    private static List<Choice> shorter(List<Choice> choices) {
        return choices.stream().map(PlanAuditTest::shorter).toList();
    }

    private static Choice shorter(Choice choice) {
        if (choice instanceof Choice.Rent rent && rent.dates().days() > 1) {
            DateRange dates = new DateRange(rent.dates().from(), rent.dates().lastDay());
            return new Choice.Rent(rent.option(), rent.supplier(), dates, rent.charge());
        }
        return choice;
    }
}
