package dayglass.web.page.ways;

import dayglass.base.Money;
import dayglass.web.page.picture.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
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
public record ScatterPicture(List<Point> points, List<Mark> costs, List<Mark> looks, String words) {
    public static final int WIDTH = 720;
    public static final int HEIGHT = 340;
    public static final int LEFT = 56;
    public static final int RIGHT = 24;
    public static final int TOP = 20;
    public static final int BOTTOM = 44;

    private static final int MOST_LOOK = 100;
    private static final int LOOK_STEP = 25;
    private static final int COST_MARKS = 4;
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

    /** A mark on an axis, where it lies on that axis. */
    public record Mark(int at, String label) {}

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
        List<LabelPlaces.Spot> spots = shown.stream()
                .map(line -> new LabelPlaces.Spot(
                        x(line.total().orElseThrow(), least, most),
                        y(line.row().picture().look().orElseThrow()),
                        line.number()))
                .toList();
        List<LabelPlaces.Box> labels = LabelPlaces.of(spots, new LabelPlaces.Box(LEFT, 0, WIDTH - LEFT, HEIGHT));
        List<Point> points = new ArrayList<>();
        for (int at = 0; at < shown.size(); at++) {
            points.add(point(shown.get(at), spots.get(at), labels.get(at)));
        }
        List<Mark> looks = new ArrayList<>();
        for (int look = 0; look <= MOST_LOOK; look += LOOK_STEP) {
            looks.add(new Mark(y(BigDecimal.valueOf(look)), String.valueOf(look)));
        }
        return new ScatterPicture(
                points,
                costs(least, most),
                looks,
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

    private static List<Mark> costs(Money least, Money most) {
        List<Mark> marks = new ArrayList<>();
        Money span = most.minus(least);
        for (int at = 0; at <= COST_MARKS; at++) {
            BigDecimal value = least.major()
                    .add(span.major()
                            .multiply(BigDecimal.valueOf(at))
                            .divide(BigDecimal.valueOf(COST_MARKS), 0, RoundingMode.HALF_UP));
            Money money = Money.of(least.currency(), value.setScale(0, RoundingMode.HALF_UP));
            marks.add(new Mark(x(money, least, most), whole(money)));
        }
        return marks;
    }

    private static String whole(Money money) {
        String amount = Words.amount(money);
        int point = amount.indexOf('.');
        return point < 0 ? amount : amount.substring(0, point);
    }

    static int x(Money total, Money least, Money most) {
        BigDecimal span = most.minus(least).major();
        int width = WIDTH - LEFT - RIGHT;
        return span.signum() == 0
                ? LEFT + width / 2
                : LEFT
                        + total.minus(least)
                                .major()
                                .multiply(BigDecimal.valueOf(width))
                                .divide(span, 0, RoundingMode.HALF_UP)
                                .intValue();
    }

    static int y(BigDecimal look) {
        int height = HEIGHT - TOP - BOTTOM;
        return HEIGHT
                - BOTTOM
                - look.multiply(BigDecimal.valueOf(height))
                        .divide(BigDecimal.valueOf(MOST_LOOK), 0, RoundingMode.HALF_UP)
                        .intValue();
    }
}
