package dayglass.cost.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BreakEvenRuleTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 1, 4);

    private static List<BreakEvenRule.Hire> days(int count, String rent) {
        List<BreakEvenRule.Hire> history = new ArrayList<>();
        for (int day = 0; day < count; day++) {
            history.add(new BreakEvenRule.Hire(FIRST.plusDays(day), Choices.euros(rent)));
        }
        return history;
    }

    /** Ski rental with a price of 10 and rent of 1 (Karlin, Manasse, Rudolph and Sleator 1988, from memory; recomputed). */
    @ParameterizedTest
    @CsvSource({"9, 9, 9, false", "10, 19, 10, true", "25, 19, 10, true"})
    void theClassicCase(int days, String cost, String hindsight, boolean buys) {
        BreakEvenRule.Ruling ruling = BreakEvenRule.along(Choices.euros("10"), days(days, "1"));
        assertEquals(Choices.euros(cost), ruling.cost());
        assertEquals(Choices.euros(hindsight), ruling.hindsight());
        assertEquals(buys ? Optional.of(FIRST.plusDays(9)) : Optional.empty(), ruling.buysOn());
    }

    /** The same source: at a price of B days of rent the rule never passes 2 - 1/B times the best, and reaches it. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 10, 100})
    void atWorstItCostsTwiceTheBestLessOneDay(int price) {
        for (int days = 1; days <= 3 * price; days++) {
            BreakEvenRule.Ruling ruling = BreakEvenRule.along(Choices.euros(String.valueOf(price)), days(days, "1"));
            int worst = days < price ? days : 2 * price - 1;
            assertEquals(Choices.euros(String.valueOf(worst)), ruling.cost());
            assertEquals(Choices.euros(String.valueOf(Math.min(days, price))), ruling.hindsight());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void randomHistoriesNeverPassTwiceTheBestInHindsight(int seed) {
        Random random = new Random(seed);
        int bought = 0;
        for (int index = 0; index < 2_000; index++) {
            Money price = Money.ofMinor(Choices.euros("0").currency(), 1 + random.nextInt(50_000));
            List<BreakEvenRule.Hire> history = new ArrayList<>();
            for (int hire = random.nextInt(40); hire > 0; hire--) {
                history.add(new BreakEvenRule.Hire(
                        FIRST.plusDays(random.nextInt(2_000)),
                        Money.ofMinor(price.currency(), random.nextInt(random.nextBoolean() ? 80_000 : 2_000))));
            }
            BreakEvenRule.Ruling ruling = BreakEvenRule.along(price, history);
            assertTrue(ruling.cost().compareTo(ruling.hindsight().times(2)) <= 0, () -> price + " " + history);
            assertTrue(ruling.cost().compareTo(ruling.hindsight()) >= 0);
            bought += ruling.buysOn().isPresent() ? 1 : 0;
        }
        assertTrue(bought > 200 && bought < 1_900, bought + " bought");
    }
}
