package dayglass.cost.plan;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Plain questions about one slot in euros, for cases whose answer is published or worked out by hand. */
final class Questions {
    static final Currency EUR = Currency.of("EUR");
    static final String SLOT = "40 mm";

    private Questions() {}

    /** So long that it only ends a search that would never end by itself, and the test with it. */
    static StopSignal patience() {
        long until = System.nanoTime() + Duration.ofMinutes(1).toNanos();
        return () -> System.nanoTime() - until > 0;
    }

    /** So many shooting days from a Monday on. */
    static Schedule shooting(int days) {
        LocalDate monday = LocalDate.of(2027, 9, 6);
        return new Schedule(List.of(new Schedule.Span(new DateRange(monday, monday.plusDays(days)), DayUse.SHOOT)));
    }

    static Question question(
            Schedule schedule, Question.Need need, List<Question.Rental> rentals, List<Question.Purchase> purchases) {
        return new Question(
                "By the book",
                EUR,
                Percent.ZERO,
                Optional.empty(),
                schedule,
                List.of(need),
                rentals,
                purchases,
                List.of(),
                Map.of());
    }

    static Question.Need everyDay() {
        return new Question.Need(SLOT, 1, Set.of(DayUse.SHOOT), List.of());
    }

    static RentalTerms.Block block(int days, String price) {
        return new RentalTerms.Block(days, Money.of("EUR", price), Optional.empty());
    }

    static RentalTerms terms(List<RentalTerms.Block> blocks, Optional<RentalTerms.ExtraDay> extraDay, String perTrip) {
        return new RentalTerms(
                blocks, extraDay, Map.of(), List.of(), Money.zero(EUR), Money.of("EUR", perTrip), List.of());
    }

    static Question.Rental rental(String id, RentalTerms terms) {
        return new Question.Rental(id, "A house", Map.of(SLOT, 1), 1, terms, List.of(), Map.of());
    }

    /** Bought outright and worth nothing a month later. */
    static Question.Purchase bought(String price, Schedule schedule) {
        PurchaseTerms terms = new PurchaseTerms(
                Money.of("EUR", price),
                Percent.ZERO,
                List.of(),
                1,
                new PurchaseTerms.Resale(new PurchaseTerms.YearlyLoss(Percent.of("100")), Percent.ZERO),
                new PurchaseTerms.Holding(Percent.ZERO, Money.zero(EUR)),
                Optional.empty(),
                Optional.empty());
        return new Question.Purchase("bought", "A house", Map.of(SLOT, 1), 1, terms, schedule.dateOf(0));
    }

    /** The proved and audited answer of a question that has one. */
    static Answer solved(Question question) {
        Answer answer = LeastCost.solve(question, patience())
                .fold(
                        Costing.Planned::answer,
                        impossible -> {
                            throw new AssertionError(question.job() + ": " + impossible);
                        },
                        outOfTime -> {
                            throw new AssertionError(question.job() + ": out of time");
                        });
        PlanAudit.check(question, answer);
        return answer;
    }
}
