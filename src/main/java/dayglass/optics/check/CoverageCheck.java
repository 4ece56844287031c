package dayglass.optics.check;

import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Frame;
import dayglass.optics.Reach;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.Optional;

/** The image circle against the diagonal of the whole sensor, then of the part that the picture uses. */
public final class CoverageCheck {
    private CoverageCheck() {}

    public static Optional<Finding> of(FitQuestion question, Frame used) {
        return question.lens().imageCircle().map(circle -> judge(circle, question.camera(), used));
    }

    private static Finding judge(BigDecimal circle, FitQuestion.Camera camera, Frame used) {
        Reach sensor = Reach.ofSensor(camera);
        Reach picture = Reach.of(used);
        String its = "The image circle of " + circle.toPlainString() + " mm ";
        String corners = "the corners of the picture, " + picture.diagonalMm() + " mm apart";
        if (sensor.isReachedBy(circle)) {
            String why = its + "reaches the corners of the whole sensor, " + sensor.diagonalMm() + " mm apart.";
            return finding(Verdict.FITS, sensor.marginMm(circle), why);
        }
        return picture.isReachedBy(circle)
                ? finding(
                        Verdict.FITS_WITH_CARE,
                        picture.marginMm(circle),
                        its + "reaches " + corners + ", but not those of the whole sensor, " + sensor.diagonalMm()
                                + " mm.")
                : finding(Verdict.DOES_NOT_FIT, picture.marginMm(circle), its + "does not reach " + corners + ".");
    }

    private static Finding finding(Verdict verdict, BigDecimal margin, String why) {
        return new Finding("coverage", verdict, Optional.of(margin), why);
    }
}
