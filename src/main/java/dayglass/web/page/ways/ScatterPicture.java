package dayglass.web.page.ways;

import dayglass.base.Money;
import dayglass.web.page.picture.Scale;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * Cost against look: cost from left to right, look upwards. A way that no other beats is a filled disc, another a ring,
 * so that it reads without colour.
 *
 * @param costs marks of the cost axis
 * @param looks marks of the look axis
 * @param words all of it for whoever cannot see it
 */
public record ScatterPicture(List<Point> points, List<Scale.Tick> costs, List<Scale.Tick> looks, String words) {
    public static final int WIDTH = 720;
    public static final int HEIGHT = 340;
    public static final int LEFT = 56;
    public static final int RIGHT = 24;
    public static final int TOP = 20;
    public static final int BOTTOM = 44;

    private static final int MOST_LOOK = 100;
    /** From the middle of a number down to its line. */
    private static final int BASELINE = 4;
    /** Up to this distance a number needs no line that leads to it. */
    private static final int NEAR = 22;

    public ScatterPicture {
        points = List.copyOf(points);
        costs = List.copyOf(costs);
        looks = List.copyOf(looks);
    }

    /** One way; its number is that of its row, written with its middle at {@code labelX} on the line {@code labelY}. */
    public record Point(int x, int y, int labelX, int labelY, int number, boolean unbeaten, String title) {
        /** Whether its number stands so far away that a line must lead there. */
        public boolean led() {
            return Math.hypot(labelX - x, labelY - BASELINE - y) > NEAR;
        }
    }

    /** The picture of those rows that have a cost and a look. */
    public static ScatterPicture of(List<SheetLine> lines) {
        List<SheetLine> shown = lines.stream()
                .filter(line ->
                        line.total().isPresent() && line.row().picture().look().isPresent())
                .toList();
        if (shown.isEmpty()) {
            return new ScatterPicture(List.of(), List.of(), List.of(), "");
        }
        List<Money> totals =
                shown.stream().flatMap(line -> line.total().stream()).toList();
        Money zero = Money.zero(totals.get(0).currency());
        Money least = totals.stream().reduce(zero, (a, b) -> a.compareTo(b) < 0 ? a : b);
        Money most = totals.stream().reduce(zero, (a, b) -> a.compareTo(b) > 0 ? a : b);
        Scale cost = new Scale(least.major().doubleValue(), most.major().doubleValue(), LEFT, WIDTH - RIGHT);
        Scale look = new Scale(0, MOST_LOOK, HEIGHT - BOTTOM, TOP);
        List<LabelPlaces.Spot> spots = shown.stream()
                .map(line -> new LabelPlaces.Spot(
                        cost.at(line.total().orElseThrow().major().doubleValue()),
                        look.at(line.row().picture().look().orElseThrow().doubleValue()),
                        line.number()))
                .toList();
        List<LabelPlaces.Box> labels = LabelPlaces.of(spots, new LabelPlaces.Box(LEFT, 0, WIDTH - LEFT, HEIGHT));
        List<Point> points = new ArrayList<>();
        for (int at = 0; at < shown.size(); at++) {
            points.add(point(shown.get(at), spots.get(at), labels.get(at)));
        }
        return new ScatterPicture(
                points,
                cost.ticks(),
                look.ticks(),
                "Cost against look. "
                        + String.join("; ", points.stream().map(Point::title).toList()) + ".");
    }

    private static Point point(SheetLine line, LabelPlaces.Spot spot, LabelPlaces.Box label) {
        return new Point(
                spot.x(),
                spot.y(),
                label.left() + label.width() / 2,
                label.top() + label.height() / 2 + BASELINE,
                spot.number(),
                line.unbeaten(),
                line.number() + ", " + line.name() + ": "
                        + Words.money(line.total().orElseThrow()) + ", look " + line.look()
                        + (line.unbeaten() ? ", beaten by none" : ""));
    }
}
