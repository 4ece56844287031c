package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The search that everything else is held against must itself be right where the answer is known by hand. */
class ExhaustiveSearchTest {
    private static final Currency EUR = Currency.of("EUR");

    private static Money euros(long amount) {
        return Money.ofMinor(EUR, amount * 100);
    }

    private static RentalTerms.Block block(int days, long price) {
        return new RentalTerms.Block(days, euros(price), Optional.empty());
    }

    private static RentalTerms terms(List<RentalTerms.Block> blocks, List<RentalTerms.LongHire> longHire) {
        return new RentalTerms(
                blocks, Optional.empty(), Map.of(), longHire, Money.zero(EUR), Money.zero(EUR), List.of());
    }

    private static Question question(
            LocalDate first, int days, List<Question.Need> needs, List<Question.Rental> rentals) {
        return new Question(
                "By hand",
                EUR,
                Percent.ZERO,
                Optional.empty(),
                new Schedule(
                        List.of(new Schedule.Span(DateRange.inclusive(first, first.plusDays(days - 1)), DayUse.SHOOT))),
                needs,
                rentals,
                List.of(),
                List.of(),
                Map.of());
    }

    /** Worked by hand: two periods that overlap on the Friday would cost 55, but one copy cannot be out twice. */
    @Test
    void oneCopyIsNeverHeldTwiceOnOneDay() {
        LocalDate monday = LocalDate.of(2027, 9, 6);
        RentalTerms terms = terms(
                List.of(
                        block(5, 100),
                        block(1, 60),
                        new RentalTerms.Block(7, euros(10), Optional.of(DayOfWeek.FRIDAY))),
                List.of(new RentalTerms.LongHire(5, Percent.of("50"))));
        Question.Rental rental = new Question.Rental("a", "S", Map.of("40 mm", 1), 1, terms, List.of(), Map.of());
        Question.Need need = new Question.Need("40 mm", 1, Set.of(DayUse.SHOOT), List.of());
        Question question = question(monday, 11, List.of(need), List.of(rental));
        assertEquals(Optional.of(euros(105)), ExhaustiveSearch.of(question).best());
    }

    /** Worked by hand: all three for two days as a set 380, the 24 mm alone for two days more 160. */
    @Test
    void aSetForTheDaysThatNeedItAndASingleForTheRest() {
        LocalDate monday = LocalDate.of(2027, 9, 6);
        List<DateRange> twoDays = List.of(DateRange.inclusive(monday, monday.plusDays(1)));
        List<Question.Need> needs = List.of(
                new Question.Need("24 mm", 1, Set.of(DayUse.SHOOT), List.of()),
                new Question.Need("40 mm", 1, Set.of(), twoDays),
                new Question.Need("85 mm", 1, Set.of(), twoDays));
        List<Question.Rental> rentals = List.of(
                single("set", Map.of("24 mm", 1, "40 mm", 1, "85 mm", 1), 190),
                single("one-24", Map.of("24 mm", 1), 80),
                single("one-40", Map.of("40 mm", 1), 80),
                single("one-85", Map.of("85 mm", 1), 80));
        ExhaustiveSearch.Findings found = ExhaustiveSearch.of(question(monday, 4, needs, rentals));
        assertEquals(Optional.of(euros(540)), found.best());
        assertEquals(Optional.of(euros(540)), found.dayRateOnly());
        assertEquals(Optional.empty(), found.weekRateOnly());
        assertEquals(List.of(), found.shortages());
    }

    /** Worked by hand: a set that draws on the same glass as its member leaves one slot short on the shared day. */
    @Test
    void whatIsHeldNeverExceedsTheStock() {
        LocalDate monday = LocalDate.of(2027, 9, 6);
        Question.Rental set = single("set", Map.of("40 mm", 1, "85 mm", 1), 190);
        Question.Rental member = single("member", Map.of("40 mm", 1), 80);
        Question plain = question(
                monday,
                1,
                List.of(new Question.Need("40 mm", 2, Set.of(DayUse.SHOOT), List.of())),
                List.of(drawing(set), drawing(member)));
        Question scarce = new Question(
                plain.job(),
                plain.currency(),
                plain.discountRate(),
                plain.cashLimit(),
                plain.schedule(),
                plain.needs(),
                plain.rentals(),
                plain.purchases(),
                plain.owned(),
                Map.of("40 mm no. 1", 1));
        assertEquals(
                List.of(new Costing.Shortage("40 mm", monday, 1)),
                ExhaustiveSearch.of(scarce).shortages());
    }

    private static Question.Rental single(String id, Map<String, Integer> covers, long dayPrice) {
        return new Question.Rental(
                id, "S", covers, 1, terms(List.of(block(1, dayPrice)), List.of()), List.of(), Map.of());
    }

    private static Question.Rental drawing(Question.Rental rental) {
        return new Question.Rental(
                rental.id(),
                rental.supplier(),
                rental.covers(),
                rental.copies(),
                rental.terms(),
                rental.available(),
                Map.of("40 mm no. 1", 1));
    }
}
