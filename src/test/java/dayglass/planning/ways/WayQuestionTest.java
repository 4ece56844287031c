package dayglass.planning.ways;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The questions that a way comes to: a slot is wanted on three days, and a second time on the last two of them. */
class WayQuestionTest {
    private static final Question RESOLVED = Asked.question("""
            {"job": "Reed Bank", "currency": "EUR", "cashLimit": "900.00",
             "schedule": [{"from": "2027-04-05", "to": "2027-04-07", "use": "shoot"}],
             "needs": [{"slot": "50 mm", "count": 1},
                       {"slot": "50 mm", "count": 1, "dates": [{"from": "2027-04-06", "to": "2027-04-07"}]}],
             "rentals": [
               {"id": "own", "supplier": "Alder Hire", "covers": {"50 mm": 1}, "blocks": [{"days": 1, "price": "100.00"}]},
               {"id": "other", "supplier": "Alder Hire", "covers": {"50 mm": 3}, "blocks": [{"days": 1, "price": "1.00"}],
                "available": [{"from": "2027-04-06", "to": "2027-05-01"}]}],
             "purchases": [
               {"id": "bought", "supplier": "Alder Hire", "covers": {"50 mm": 1}, "price": "1000.00", "termMonths": 12,
                "availableFrom": "2027-04-07", "resale": {"points": [{"months": 12, "value": "800.00"}]}}]}""");

    private static final Map<String, Map<String, Integer>> OWN =
            Map.of("own", Map.of("50 mm", 1), "bought", Map.of("50 mm", 1));

    private static final LocalDate SECOND = LocalDate.parse("2027-04-06");

    private final WayQuestion way = new WayQuestion(RESOLVED);

    /** Two on the sixth, where the way has one; on the seventh the one bought is there. */
    private Question completed() {
        return way.completed(
                OWN,
                List.of(new Costing.Shortage("50 mm", SECOND, 1)),
                Map.of("other", Map.of("50 mm", 3, "75 mm", 1)));
    }

    @Test
    void needsOfOneSlotAddUp() {
        assertEquals(Map.of("50 mm", 2), WayQuestion.wanted(RESOLVED));
        assertEquals(
                2,
                java.util.Objects.requireNonNull(WayQuestion.demand(RESOLVED).get("50 mm"))
                        .get(SECOND));
    }

    @Test
    void aloneTheWayAsksForAllOfTheJobWithItsOwnOptions() {
        Question alone = way.alone(OWN);
        assertEquals(RESOLVED.needs(), alone.needs());
        assertEquals(
                List.of("own"),
                alone.rentals().stream().map(Question.Rental::id).toList());
        assertEquals(1, alone.purchases().size());
    }

    @Test
    void whatTheWayLeavesOpenIsASlotThatOnlyOthersServe() {
        Question completed = completed();
        assertEquals(Map.of("50 mm", 2, "50 mm, completed", 1), WayQuestion.wanted(completed));
        assertEquals(Map.of(SECOND, 1), WayQuestion.demand(completed).get("50 mm, completed"));
        assertEquals(
                1,
                java.util.Objects.requireNonNull(WayQuestion.demand(completed).get("50 mm"))
                        .get(SECOND));
        assertEquals(
                Map.of("50 mm, completed", 3),
                completed.rentals().stream()
                        .filter(option -> option.id().equals("other"))
                        .findFirst()
                        .orElseThrow()
                        .covers());
        assertEquals("50 mm", WayQuestion.slotOf("50 mm, completed"));
    }

    @Test
    void whereAnOptionIsNotThereOnAllDaysItsDaysAreTold() {
        assertEquals(Optional.empty(), way.daysOf("own"));
        assertEquals(Optional.of("from 2027-04-06 to 2027-05-01"), way.daysOf("other"));
        assertEquals(Optional.of("from 2027-04-07 on"), way.daysOf("bought"));
    }

    @Test
    void theOwnPartLeavesOutWhatOthersCompleteAndTheCashLimit() {
        Question own = OwnPart.of(completed());
        assertEquals(Map.of("50 mm", 2), WayQuestion.wanted(own));
        assertEquals(
                List.of("own"), own.rentals().stream().map(Question.Rental::id).toList());
        assertEquals(Optional.empty(), own.cashLimit());
    }

    /** The purchase is there on the last day only, so buying leaves the first days open: there is no such price. */
    @Test
    void whatCannotBeHadByBuyingHasNoPriceBought() {
        assertEquals(Optional.empty(), Bought.of(completed(), StopSignal.NEVER));
    }

    /** By hand: two copies at 1,000.00 less 800.00 are 400.00, and 2,000.00 in cash; the one completed day costs 1.00. */
    @Test
    void boughtIsToldBeyondTheCashLimitWithWhatCompletesIt() {
        Question question = new WayQuestion(Asked.question("""
                {"job": "Reed Bank", "currency": "EUR", "cashLimit": "900.00",
                 "schedule": [{"from": "2027-04-05", "to": "2027-04-06", "use": "shoot"}],
                 "needs": [{"slot": "50 mm", "count": 2}, {"slot": "75 mm", "count": 1, "dates": [{"from": "2027-04-06"}]}],
                 "rentals": [
                   {"id": "own", "supplier": "Alder Hire", "covers": {"50 mm": 1}, "copies": 2,
                    "blocks": [{"days": 1, "price": "100.00"}]},
                   {"id": "other", "supplier": "Alder Hire", "covers": {"75 mm": 1}, "blocks": [{"days": 1, "price": "1.00"}]}],
                 "purchases": [
                   {"id": "bought", "supplier": "Alder Hire", "covers": {"50 mm": 1}, "copies": 2, "price": "1000.00",
                    "termMonths": 12, "resale": {"points": [{"months": 12, "value": "800.00"}]}}]}"""))
                .completed(OWN, List.of(new Costing.Shortage("75 mm", SECOND, 1)), Map.of("other", Map.of("75 mm", 1)));
        Bought bought = Bought.of(question, StopSignal.NEVER).orElseThrow();
        assertEquals(Asked.euros("401.00"), bought.total());
        assertEquals(Asked.euros("2001.00"), bought.cash());
        assertTrue(bought.beyondCash());
        assertTrue(bought.completedByRenting());
    }
}
