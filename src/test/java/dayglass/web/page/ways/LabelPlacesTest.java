package dayglass.web.page.ways;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.web.page.ways.LabelPlaces.Box;
import dayglass.web.page.ways.LabelPlaces.Spot;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Where the numbers of a scatter stand. */
class LabelPlacesTest {
    private static final Box FRAME = new Box(56, 0, 664, 340);

    @Test
    void aPointByItselfHasItsNumberToTheRightAndAbove() {
        Box box = LabelPlaces.of(List.of(new Spot(300, 200, 7)), FRAME).get(0);
        assertTrue(box.left() > 300 && box.top() + box.height() / 2 < 200, box.toString());
    }

    /** As many points as a sheet may have, in one corner and on one spot. */
    @Test
    void aHundredPointsInOnePlaceKeepTheirNumbersApart() {
        List<Spot> spots = new ArrayList<>();
        for (int number = 1; number <= 100; number++) {
            spots.add(new Spot(690 - number % 3, 25, number));
        }
        apart(spots);
    }

    @Property(tries = 100)
    void noNumberCoversAnotherOrAPoint(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 0, max = 640) Integer> across,
            @ForAll @IntRange(min = 20, max = 290) int top) {
        List<Spot> spots = new ArrayList<>();
        across.forEach(x -> spots.add(new Spot(56 + x, top + x % 9, 60 + spots.size())));
        apart(spots);
    }

    private static void apart(List<Spot> spots) {
        List<Box> boxes = LabelPlaces.of(spots, FRAME);
        assertEquals(spots.size(), boxes.size());
        for (int at = 0; at < boxes.size(); at++) {
            Box box = boxes.get(at);
            assertTrue(box.left() >= 56 && box.left() + box.width() <= 720 && box.top() >= 0, box.toString());
            for (Spot spot : spots) {
                int reach = LabelPlaces.REACH;
                Box mark = new Box(spot.x() - reach, spot.y() - reach, 2 * reach, 2 * reach);
                assertFalse(box.overlaps(mark), box + " covers the point " + spot);
            }
            for (int other = 0; other < at; other++) {
                assertFalse(box.overlaps(boxes.get(other)), box + " covers " + boxes.get(other));
            }
        }
    }
}
