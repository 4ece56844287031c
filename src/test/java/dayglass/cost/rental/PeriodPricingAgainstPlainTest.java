package dayglass.cost.rental;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.cost.plan.Question;
import dayglass.cost.plan.RandomJobs;
import dayglass.cost.plan.RandomQuestions;
import dayglass.cost.rental.PlainPricing.Price;
import dayglass.cost.rental.PlainPricing.Rates;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every period of many random offers, priced three ways, to the cent and line by line. */
class PeriodPricingAgainstPlainTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void everyPeriodOfSmallQuestionsCostsWhatThePageSays(int batch) {
        int compared = 0;
        for (int seed = 30_000 + batch * 300; seed < 30_300 + batch * 300; seed++) {
            compared += compare(RandomQuestions.small(seed), 1);
        }
        assertTrue(compared > 2_000, "compared too few: " + compared);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void periodsOfAWholeJobCostWhatThePageSays(int seed) {
        assertTrue(compare(RandomJobs.film(seed, 8, 90, 27), 7) > 5_000);
    }

    /** Compares all periods whose first day is a multiple of {@code step}. */
    private static int compare(Question question, int step) {
        int days = question.schedule().days();
        int compared = 0;
        for (Question.Rental rental : question.rentals()) {
            PlainPricing plain =
                    new PlainPricing(rental.terms(), question.schedule(), question.currency(), Rates.EVERY_BLOCK);
            PeriodPricing exact = new PeriodPricing(rental.terms(), question.schedule());
            PeriodCosts fast = new PeriodCosts(rental.terms(), question.schedule());
            assertTrue(PeriodCosts.fit(rental.terms(), question.schedule().days()));
            long[] costs = new long[days];
            for (int first = 0; first < days; first += step) {
                @Nullable BigInteger[] totals = exact.totalsFrom(first, days - 1);
                fast.totalsFrom(first, days - 1, costs);
                for (int last = first; last < days; last++) {
                    String about = question.job() + " " + rental.id() + " " + first + "-" + last;
                    Optional<Price> price = plain.price(first, last);
                    Optional<RentalCharge> charge = exact.charge(first, last);
                    Optional<BigInteger> total = price.map(Price::total).map(BigDecimal::unscaledValue);
                    assertEquals(
                            price.map(Price::hire),
                            charge.map(found -> found.hire().major()),
                            about);
                    assertEquals(total, charge.map(found -> found.total().minor()), about);
                    assertEquals(total, Optional.ofNullable(totals[last - first]), about);
                    assertEquals(
                            total.map(BigInteger::longValueExact).orElse(PeriodCosts.NONE), costs[last - first], about);
                    compared++;
                }
            }
        }
        return compared;
    }
}
