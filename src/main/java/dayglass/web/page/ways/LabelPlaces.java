package dayglass.web.page.ways;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the numbers of a scatter's points are written, so that none covers another number or a point. Each is as near to
 * its point as there is room, to the right and above first.
 */
final class LabelPlaces {
    /** How far a point's mark reaches from its middle. */
    static final int REACH = 8;

    static final int HEIGHT = 13;

    private static final int DIGIT = 8;
    private static final int NEAR = 15;
    private static final int STEP = 7;
    private static final int FARTHEST = 400;
    private static final int DIRECTIONS = 16;
    /** To the right and above. */
    private static final double FIRST = Math.PI / 4;

    private final Box frame;
    private final List<Box> taken = new ArrayList<>();

    private LabelPlaces(Box frame, List<Spot> spots) {
        this.frame = frame;
        spots.forEach(spot -> taken.add(Box.around(spot.x(), spot.y(), 2 * REACH, 2 * REACH)));
    }

    /** A point and the number that it is called by. */
    record Spot(int x, int y, int number) {
        private int width() {
            return DIGIT * String.valueOf(number).length();
        }
    }

    /** A rectangle, its left upper corner first. */
    record Box(int left, int top, int width, int height) {
        private static Box around(int x, int y, int width, int height) {
            return new Box(x - width / 2, y - height / 2, width, height);
        }

        boolean overlaps(Box other) {
            return left < other.left + other.width
                    && other.left < left + width
                    && top < other.top + other.height
                    && other.top < top + height;
        }

        private boolean holds(Box other) {
            return left <= other.left
                    && other.left + other.width <= left + width
                    && top <= other.top
                    && other.top + other.height <= top + height;
        }
    }

    /** One box a spot, in their order. */
    static List<Box> of(List<Spot> spots, Box frame) {
        LabelPlaces places = new LabelPlaces(frame, spots);
        return spots.stream().map(places::place).toList();
    }

    private Box place(Spot spot) {
        Box box = at(spot, NEAR, 0);
        for (int distance = NEAR; distance < FARTHEST; distance += STEP) {
            for (int direction = 0; direction < DIRECTIONS; direction++) {
                Box candidate = at(spot, distance, direction);
                if (frame.holds(candidate) && taken.stream().noneMatch(candidate::overlaps)) {
                    taken.add(candidate);
                    return candidate;
                }
            }
        }
        return box;
    }

    /** Directions go from the first to both sides by turns. */
    private static Box at(Spot spot, int distance, int direction) {
        int turns = direction % 2 == 0 ? direction / 2 : -(direction + 1) / 2;
        double angle = FIRST + turns * 2 * Math.PI / DIRECTIONS;
        return Box.around(
                (int) Math.round(spot.x() + distance * Math.cos(angle)),
                (int) Math.round(spot.y() - distance * Math.sin(angle)),
                spot.width(),
                HEIGHT);
    }
}
