package dayglass.optics;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The part of the sensor that the delivered picture is made of. The whole sensor de-squeezed has the aspect squeeze ×
 * width / height; above the delivered aspect the sides are cropped, below it top and bottom are.
 */
public final class Frame {
    private final FitQuestion.Camera camera;
    private final BigDecimal squeeze;
    private final Ratio width;
    private final Ratio height;

    private Frame(FitQuestion.Camera camera, BigDecimal squeeze, Ratio width, Ratio height) {
        this.camera = camera;
        this.squeeze = squeeze;
        this.width = width;
        this.height = height;
    }

    /** The frame of a picture that is squeezed onto the sensor. */
    public static Frame of(FitQuestion.Camera camera, BigDecimal squeeze, BigDecimal aspect) {
        BigDecimal w = camera.width();
        BigDecimal h = camera.height();
        boolean cropsSides = squeeze.multiply(w).compareTo(aspect.multiply(h)) > 0;
        return cropsSides
                ? new Frame(camera, squeeze, new Ratio(aspect.multiply(h), squeeze), Ratio.whole(h))
                : new Frame(camera, squeeze, Ratio.whole(w), new Ratio(squeeze.multiply(w), aspect));
    }

    /** In millimetres, unrounded. */
    public Ratio width() {
        return width;
    }

    /** In millimetres, unrounded. */
    public Ratio height() {
        return height;
    }

    /** Rounded as it is told. */
    public BigDecimal widthMm() {
        return Figures.lengthMm(width);
    }

    /** Rounded as it is told. */
    public BigDecimal heightMm() {
        return Figures.lengthMm(height);
    }

    /** How much of the sensor is used, to 1. */
    public BigDecimal share() {
        return Figures.telling(
                width.times(height).over(Ratio.whole(camera.width().multiply(camera.height()))));
    }

    /** The used photosites, where the camera's are known. */
    public Optional<FitQuestion.Photosites> photosites() {
        return camera.photosites()
                .map(all -> new FitQuestion.Photosites(
                        wide(all).rounded(0).intValueExact(),
                        high(all).rounded(0).intValueExact()));
    }

    /**
     * The picture de-squeezed, both ways, in picture elements.
     *
     * @param stretched sideways, every line kept
     * @param squashed from above, every column kept
     */
    public record Delivered(Size stretched, Size squashed) {}

    /** Whole picture elements. */
    public record Size(BigDecimal wide, BigDecimal high) {}

    public Optional<Delivered> delivered() {
        Ratio q = Ratio.whole(squeeze);
        return camera.photosites().map(all -> {
            Ratio wide = wide(all);
            Ratio high = high(all);
            return new Delivered(
                    new Size(wide.times(q).rounded(0), high.rounded(0)),
                    new Size(wide.rounded(0), high.over(q).rounded(0)));
        });
    }

    private Ratio wide(FitQuestion.Photosites all) {
        return Ratio.whole(BigDecimal.valueOf(all.wide())).times(width).over(Ratio.whole(camera.width()));
    }

    private Ratio high(FitQuestion.Photosites all) {
        return Ratio.whole(BigDecimal.valueOf(all.high())).times(height).over(Ratio.whole(camera.height()));
    }
}
