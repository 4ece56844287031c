package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.rental.RentalTerms.AddOn;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The dearest that the limits allow: nothing may overflow. Expected values are worked out by hand. */
class LargeAmountsTest {
    private static final String DEAREST = "999999999999999.99";

    /** Each add-on is ten times everything before it, so that k of them make the hire 11 to the k times as much. */
    @ParameterizedTest
    @CsvSource({"1, 0, 3", "1, 1, 30", "20, 3, 30", "20, 12, 60", "1, 12, 1100"})
    void amountsNeverOverflow(int copies, int addOns, int days) {
        List<AddOn> chain = new ArrayList<>();
        List<String> names = new ArrayList<>(List.of(AddOn.HIRE, AddOn.TRIP));
        for (int index = 0; index < addOns; index++) {
            chain.add(new AddOn("add-on " + index, Percent.of("1000"), Set.copyOf(names)));
            names.add("add-on " + index);
        }
        RentalTerms terms = new RentalTerms(
                List.of(Questions.block(1, DEAREST)),
                Optional.empty(),
                Map.of(),
                List.of(),
                Money.zero(Questions.EUR),
                Money.zero(Questions.EUR),
                chain);
        Schedule schedule = Questions.shooting(days);
        Question question = Questions.question(
                schedule,
                new Question.Need(Questions.SLOT, copies, Set.of(DayUse.SHOOT), List.of()),
                List.of(new Question.Rental(
                        "dear", "A house", Map.of(Questions.SLOT, 1), copies, terms, List.of(), Map.of())),
                List.of());
        Answer answer = Questions.solved(question);
        BigInteger expected = Money.of("EUR", DEAREST)
                .minor()
                .multiply(BigInteger.valueOf((long) days * copies))
                .multiply(BigInteger.valueOf(11).pow(addOns));
        assertEquals(new Money(Questions.EUR, expected), answer.total());
        assertTrue(answer.optimal());
    }

    /** One cent decides between two of the dearest; a double would not see it. */
    @ParameterizedTest
    @CsvSource({"3", "60"})
    void oneCentDecidesBetweenTheDearest(int days) {
        Schedule schedule = Questions.shooting(days);
        Question question = Questions.question(
                schedule,
                Questions.everyDay(),
                List.of(Questions.rental("a", dayRate(DEAREST)), Questions.rental("b", dayRate("999999999999999.98"))),
                List.of(Questions.bought(DEAREST, schedule)));
        Answer answer = Questions.solved(question);
        assertEquals(Money.of("EUR", DEAREST), answer.total());
        assertEquals(
                Optional.of(Money.of("EUR", "999999999999999.98").times(days)),
                answer.comparison().rentOnly().total());
    }

    private static RentalTerms dayRate(String price) {
        return Questions.terms(List.of(Questions.block(1, price)), Optional.empty(), "0");
    }
}
