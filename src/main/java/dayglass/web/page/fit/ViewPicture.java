package dayglass.web.page.fit;

import dayglass.optics.View;
import java.util.List;
import java.util.Locale;

/**
 * How wide lenses see, from above: a wedge each from one point. The spherical one is a lens of the same focal length on
 * the same camera for the same delivery.
 */
public record ViewPicture(List<Wedge> wedges) {
    private static final double LENGTH = 100;
    private static final double WIDEST_DEGREES = 170;

    public ViewPicture {
        wedges = List.copyOf(wedges);
    }

    /**
     * One view.
     *
     * @param x half the width at the far end of the picture
     */
    public record Wedge(String x, String y, String words, boolean spherical) {
        static Wedge of(double degrees, String words, boolean spherical) {
            double half = Math.toRadians(Math.min(degrees, WIDEST_DEGREES) / 2);
            return new Wedge(point(Math.sin(half)), point(Math.cos(half)), words, spherical);
        }

        private static String point(double share) {
            return String.format(Locale.ROOT, "%.3f", share * LENGTH);
        }
    }

    /**
     * The lens's view and a spherical lens's.
     *
     * @param focal as it is written
     */
    static ViewPicture of(View view, View spherical, String focal) {
        return new ViewPicture(List.of(
                Wedge.of(
                        view.horizontalDegrees().doubleValue(),
                        "this lens: " + view.horizontalDegrees().toPlainString() + "°",
                        false),
                Wedge.of(
                        spherical.horizontalDegrees().doubleValue(),
                        "a spherical " + focal + " mm: "
                                + spherical.horizontalDegrees().toPlainString() + "°",
                        true)));
    }
}
