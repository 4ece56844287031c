package dayglass.web.page.verdict;

import dayglass.web.page.picture.Scale;
import java.util.List;

/**
 * A picture with two axes, in its own units, as the template draws it.
 *
 * @param told what it shows, for whoever does not see it
 */
public record Chart(
        int width,
        int height,
        String told,
        List<Scale.Tick> across,
        List<Scale.Tick> up,
        List<Line> lines,
        List<Box> boxes,
        List<Mark> marks) {
    /** Where the axis that goes up stands: room for seven figures of the largest letters, a phone's. */
    public static final int LEFT = 100;

    /** Where its lines end. */
    public static final int RIGHT = 640;

    public Chart {
        across = List.copyOf(across);
        up = List.copyOf(up);
        lines = List.copyOf(lines);
        boxes = List.copyOf(boxes);
        marks = List.copyOf(marks);
    }

    /** A line through points, named at its end. */
    public record Line(String points, String kind, String name, int endX, int endY) {}

    public record Box(int x, int y, int width, int height, String kind, String title) {}

    /** A place to look at. */
    public record Mark(int x, int y, String label, boolean toTheLeft) {}
}
