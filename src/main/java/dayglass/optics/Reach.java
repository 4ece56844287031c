package dayglass.optics;

import java.math.BigDecimal;

/** A diagonal that an image circle must reach, kept as its square so that just reaching it is seen exactly. */
public final class Reach {
    private final Ratio squared;

    private Reach(Ratio squared) {
        this.squared = squared;
    }

    /** The whole sensor's. */
    public static Reach ofSensor(FitQuestion.Camera camera) {
        return new Reach(Ratio.whole(camera.width())
                .squared()
                .plus(Ratio.whole(camera.height()).squared()));
    }

    /** The used area's. */
    public static Reach of(Frame frame) {
        return new Reach(frame.width().squared().plus(frame.height().squared()));
    }

    public boolean isReachedBy(BigDecimal imageCircleMm) {
        return Ratio.whole(imageCircleMm).squared().compareTo(squared) >= 0;
    }

    /** What the circle has beyond it, rounded as it is told. */
    public BigDecimal marginMm(BigDecimal imageCircleMm) {
        return Figures.lengthMm(imageCircleMm.subtract(lengthMm()));
    }

    /** Rounded as it is told. */
    public BigDecimal diagonalMm() {
        return Figures.lengthMm(lengthMm());
    }

    private BigDecimal lengthMm() {
        return squared.inDigits().sqrt(Ratio.DIGITS);
    }
}
