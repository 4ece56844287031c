package dayglass.web.page.fit;

import dayglass.optics.FitQuestion;
import dayglass.optics.Frame;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/**
 * Sensor, image circle, used area and the de-squeezed frame, all to one scale. Coordinates are millimetres on the sensor,
 * the middle of the sensor at 0.
 *
 * @param box the view of the drawing: left, top, width, height
 * @param circle the radius of the image circle, where it is known
 * @param deSqueezed the frame as it is seen, drawn beside the sensor
 */
public record FramePicture(
        String box, Rectangle sensor, Rectangle used, Optional<String> circle, Rectangle deSqueezed, String words) {
    private static final double ROOM = 0.08;

    /** By its upper left corner. */
    public record Rectangle(String x, String y, String width, String height) {
        static Rectangle around(double middle, double width, double height) {
            return new Rectangle(mm(middle - width / 2), mm(-height / 2), mm(width), mm(height));
        }
    }

    static FramePicture of(FitQuestion question, Frame frame) {
        double sensorWidth = question.camera().width().doubleValue();
        double sensorHeight = question.camera().height().doubleValue();
        double usedWidth = frame.width().inDouble();
        double usedHeight = frame.height().inDouble();
        double seenWidth = usedWidth * question.squeeze().doubleValue();
        Optional<Double> circle = question.lens().imageCircle().map(BigDecimal::doubleValue);
        double left = Math.max(sensorWidth, circle.orElse(0.0)) / 2;
        double high = Math.max(Math.max(sensorHeight, circle.orElse(0.0)), usedHeight);
        double gap = 2 * left * ROOM;
        double middle = left + gap + seenWidth / 2;
        double width = left + middle + seenWidth / 2 + 2 * gap;
        return new FramePicture(
                mm(-left - gap) + " " + mm(-high / 2 - gap) + " " + mm(width) + " " + mm(high + 2 * gap),
                Rectangle.around(0, sensorWidth, sensorHeight),
                Rectangle.around(0, usedWidth, usedHeight),
                circle.map(diameter -> mm(diameter / 2)),
                Rectangle.around(middle, seenWidth, usedHeight),
                "the used area is " + frame.widthMm().toPlainString() + " × "
                        + frame.heightMm().toPlainString() + " mm of the sensor");
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.3f", length);
    }
}
