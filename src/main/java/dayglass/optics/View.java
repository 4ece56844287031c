package dayglass.optics;

import java.math.BigDecimal;

/**
 * The field of view at one focal length: 2·atan(extent / 2f), the horizontal extent de-squeezed.
 *
 * @param sphericalFocal the spherical lens that sees as wide on this camera for the same delivery
 */
public record View(BigDecimal horizontalDegrees, BigDecimal verticalDegrees, BigDecimal sphericalFocal) {
    /** The view of one focal length through the frame. */
    public static View of(FitQuestion question, Frame frame, BigDecimal focal) {
        Ratio squeezedWidth = frame.width().times(Ratio.whole(question.squeeze()));
        Frame spherical = Frame.of(question.camera(), BigDecimal.ONE, question.aspect());
        return new View(
                degrees(squeezedWidth, focal),
                degrees(frame.height(), focal),
                Figures.lengthMm(Ratio.whole(focal).times(spherical.width()).over(squeezedWidth)));
    }

    private static BigDecimal degrees(Ratio extent, BigDecimal focal) {
        double half = extent.over(Ratio.whole(focal)).inDouble() / 2;
        return Figures.telling(Math.toDegrees(2 * Math.atan(half)));
    }
}
