package dayglass.web.page.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.cost.plan.Answer;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.wire.JsonPrint;
import dayglass.wire.costing.AnswerReader;
import dayglass.wire.costing.AnswerWriter;
import dayglass.wire.costing.CostingRequestReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class PicturesTest {
    /** Nine days: one week block and two extra days, and a unit owned from the third day on. */
    private static final String REQUEST = """
            {"job": "Long Pier", "currency": "EUR",
             "schedule": [{"from": "2027-06-07", "to": "2027-06-15", "use": "shoot"}],
             "needs": [{"slot": "35 mm", "count": 1}, {"slot": "90 mm", "count": 1, "dates": [{"from": "2027-06-10"}]}],
             "rentals": [{"id": "pier prime", "supplier": "Ostler Glass", "covers": {"35 mm": 1},
               "blocks": [{"days": 1, "price": "100.00"}, {"days": 7, "price": "350.00"}],
               "extraDay": {"afterDays": 7, "price": "40.00"}}],
             "owned": [{"id": "shelf 12", "covers": {"90 mm": 1}, "available": [{"from": "2027-06-09", "to": "2027-07-30"}]}]}
            """;

    private static Question question() {
        return CostingRequestReader.read(REQUEST.getBytes(StandardCharsets.UTF_8))
                .fold(read -> read, faults -> {
                    throw new AssertionError(faults);
                });
    }

    private static Answer answer() {
        return LeastCost.solve(question(), StopSignal.NEVER)
                .fold(
                        planned -> planned.answer(),
                        impossible -> {
                            throw new AssertionError(impossible);
                        },
                        outOfTime -> {
                            throw new AssertionError(outOfTime);
                        });
    }

    @Test
    void aRentalIsCutAtItsBlocksAndServesWhereItIsAskedFor() {
        CoverPicture picture = CoverPicture.of(question(), answer());
        int day = picture.axis().dayWidth();
        CoverPicture.Bar rented = picture.rows().get(0).bars().get(0);
        assertEquals(
                List.of(7 * day, day, day),
                rented.pieces().stream().map(CoverPicture.Piece::width).toList());
        assertEquals(List.of(new CoverPicture.Run(0, 9 * day)), rented.serving());
        CoverPicture.Bar owned = picture.rows().get(1).bars().get(0);
        assertEquals(2 * day, owned.x());
        assertEquals(7 * day, owned.width());
        assertEquals(List.of(new CoverPicture.Run(3 * day, day)), owned.serving());
    }

    @Test
    void onPaperTheStripsHoldTheSameDays() {
        List<CoverPicture> strips = CoverPicture.forPaper(question(), answer());
        assertEquals(
                9, strips.stream().mapToInt(strip -> strip.axis().days().size()).sum());
    }

    @Test
    void moneyByDateEndsAtWhatIsPayable() {
        CashPicture cash = CashPicture.of(answer());
        assertEquals("430.00", cash.rows().get(cash.rows().size() - 1).soFar());
        assertEquals("100.000", cash.rows().get(0).pieces().get(0).width());
    }

    @Test
    void theLongestWayFillsTheWidth() {
        ComparisonPicture comparison = ComparisonPicture.of(answer());
        assertTrue(comparison.bars().stream()
                .anyMatch(bar -> bar.width().orElse("").equals("100.000")));
    }

    @Test
    void anAnswerIsReadBackAsItWasWritten() {
        Answer answer = answer();
        assertEquals(answer, AnswerReader.read(JsonPrint.pretty(AnswerWriter.write(answer))));
    }
}
