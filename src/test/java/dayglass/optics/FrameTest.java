package dayglass.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FrameTest {
    private static Frame frame(Asked asked) {
        FitQuestion question = asked.question();
        return Frame.of(question.camera(), question.squeeze(), question.aspect());
    }

    /** A projected area delivers its own published aspect: nothing of it is cropped. */
    @ParameterizedTest
    @CsvFileSource(resources = "/dayglass/optics/apertures.csv", numLinesToSkip = 1)
    void aPublishedApertureIsUsedWholeForItsAspect(
            String width, String height, String squeeze, String aspect, String source) {
        Frame used = frame(Asked.on(width, height).squeezed(squeeze).delivering(aspect));
        assertTrue(used.share().compareTo(new BigDecimal("0.9999")) >= 0, source);
        assertEquals(Double.parseDouble(width), used.widthMm().doubleValue(), 0.006, source);
        assertEquals(Double.parseDouble(height), used.heightMm().doubleValue(), 0.006, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/dayglass/optics/kept.csv", numLinesToSkip = 1)
    void theSideThatTheSqueezeLeavesOverIsCropped(
            String width, String height, String squeeze, String aspect, String keptOf, String percent, String source) {
        Frame used = frame(Asked.on(width, height).squeezed(squeeze).delivering(aspect));
        double wide = 100 * used.width().inDouble() / Double.parseDouble(width);
        double high = 100 * used.height().inDouble() / Double.parseDouble(height);
        assertEquals(Double.parseDouble(percent), keptOf.equals("width") ? wide : high, 0.005, source);
        assertEquals(100, keptOf.equals("width") ? high : wide, 1e-9, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/dayglass/optics/diagonals.csv", numLinesToSkip = 1)
    void aSensorsCornersLieItsPublishedDiagonalApart(String width, String height, String diagonal, String source) {
        Reach reach = Reach.ofSensor(Asked.on(width, height).question().camera());
        assertEquals(Double.parseDouble(diagonal), reach.diagonalMm().doubleValue(), 0.0051, source);
    }

    @Property
    boolean theUsedAreaDeSqueezedHasTheDeliveredAspectAndLiesOnTheSensor(
            @ForAll @IntRange(min = 500, max = 6_000) int width,
            @ForAll @IntRange(min = 500, max = 6_000) int height,
            @ForAll @IntRange(min = 100, max = 300) int squeeze,
            @ForAll @IntRange(min = 100, max = 500) int aspect) {
        Asked asked = Asked.on(hundredths(width), hundredths(height))
                .squeezed(hundredths(squeeze))
                .delivering(hundredths(aspect));
        Frame used = frame(asked);
        Ratio delivered = used.width()
                .times(Ratio.whole(new BigDecimal(hundredths(squeeze))))
                .over(used.height());
        return delivered.compareTo(Ratio.whole(new BigDecimal(hundredths(aspect)))) == 0
                && used.width().compareTo(Ratio.whole(asked.camera().width())) <= 0
                && used.height().compareTo(Ratio.whole(asked.camera().height())) <= 0;
    }

    private static String hundredths(int number) {
        return BigDecimal.valueOf(number, 2).toPlainString();
    }
}
