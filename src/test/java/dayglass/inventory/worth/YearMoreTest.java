package dayglass.inventory.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.Growths;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.verdict.Choices;
import dayglass.cost.verdict.JobKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YearMoreTest {
    private static Money euros(String amount) {
        return Choices.euros(amount);
    }

    private static Footing footing(String discount) {
        return new Footing(
                Percent.of(discount), Percent.of("10"), Percent.of("8"), Percent.of("1.5"), Optional.empty());
    }

    private static YearMore.Facts facts(String today, String inAYear, String letting, int jobs) {
        return new YearMore.Facts(
                new ValueToday(euros(today), LocalDate.of(2025, 1, 1), 12, 0, euros(today), euros(inAYear)),
                euros("8000"),
                euros("60"),
                euros(letting),
                jobs == 0 ? List.of() : List.of(new JobKind("3 days", BigDecimal.valueOf(jobs), 3, 0, 7)));
    }

    private static SimilarRates.Found byDay(String price) {
        return new SimilarRates.Found(List.of(Choices.days(price)), List.of("quay-50"));
    }

    /**
     * Worked out by hand at a discount rate of 0: not had 6000 − 480, paid 120 and 60, back 5400 − 432, so the year costs
     * 732; each job of three days would be rented for 240.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 0, -12.00, sell", // 720 of rent
        "4, 0, 228.00, keep",
        "3, 12, 0.00, either", // as much again from letting
        "0, 0, -732.00, sell",
        "0, 800, 68.00, keep"
    })
    void aYearMoreIsWhatItSavesLessWhatItTakes(int jobs, String letting, String gain, String word) {
        YearMore year = YearMore.of(facts("6000", "5400", letting, jobs), footing("0"), byDay("80"), new Growths());
        assertEquals(euros(gain), year.gain());
        assertEquals(word, year.word());
    }

    /** The same in doubles: each month's twelfth, the service in the middle and the sale at the end, all at present value. */
    @Test
    void everythingIsWorthLessTheLaterItComes() {
        YearMore year = YearMore.of(facts("6000", "5400", "500", 4), footing("6"), byDay("80"), new Growths());
        double months = 0;
        for (int month = 1; month <= 12; month++) {
            months += Math.pow(1.06, -month / 12.0) / 12;
        }
        double expected = -6000 * 0.92 + (960 + 500 - 120) * months - 60 * Math.pow(1.06, -0.5) + 5400 * 0.92 / 1.06;
        assertEquals(expected, year.gain().major().doubleValue(), 0.01);
    }

    @Test
    void theLinesAddUpToTheGainWhateverTheRoundings() {
        Random random = new Random(11);
        for (int index = 0; index < 200; index++) {
            YearMore year = YearMore.of(
                    facts(cents(random), cents(random), cents(random), random.nextInt(3)),
                    footing("6.37"),
                    byDay(cents(random)),
                    new Growths());
            assertEquals(
                    year.gain(),
                    year.lines().stream().map(YearMore.Line::amount).reduce(euros("0"), Money::plus));
        }
    }

    private static String cents(Random random) {
        return BigDecimal.valueOf(random.nextInt(1_000_000), 2).toPlainString();
    }

    @Test
    void theRuleOfThumbIsAShareOfTheValue() {
        Footing usual = Footing.USUAL;
        RentalTerms terms = SimilarRates.byThumb(usual.ruleOfThumb().orElseThrow(), euros("12000"));
        assertEquals(
                List.of(euros("300"), euros("1200")),
                terms.blocks().stream().map(RentalTerms.Block::price).toList());
    }
}
