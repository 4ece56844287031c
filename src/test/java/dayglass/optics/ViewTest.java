package dayglass.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ViewTest {
    private static View view(Asked asked) {
        FitQuestion question = asked.question();
        Frame frame = Frame.of(question.camera(), question.squeeze(), question.aspect());
        return View.of(question, frame, question.lens().focals().get(0));
    }

    /** The sensor is made to fit the delivery, so that its whole extent counts. */
    @ParameterizedTest
    @CsvFileSource(resources = "/dayglass/optics/views.csv", numLinesToSkip = 1)
    void theFieldOfViewIsThePublishedFormulas(
            String axis, String extent, String focal, String squeeze, String degrees, String source) {
        boolean across = axis.equals("across");
        Asked asked = (across ? Asked.on(extent, "200") : Asked.on("200", extent))
                .squeezed(squeeze)
                .focal(focal)
                .delivering(across ? "1" : "5");
        View view = view(asked);
        BigDecimal told = across ? view.horizontalDegrees() : view.verticalDegrees();
        assertEquals(Double.parseDouble(degrees), told.doubleValue(), 0.00501, source);
    }

    @Property
    boolean aCropNeverWidensTheView(
            @ForAll @IntRange(min = 100, max = 500) int aspect,
            @ForAll @IntRange(min = 1, max = 100) int wider,
            @ForAll @IntRange(min = 1_000, max = 4_000) int width) {
        Asked sensor = Asked.on(BigDecimal.valueOf(width, 2).toPlainString(), "20");
        View whole = view(sensor.delivering("2"));
        Asked cropped = Asked.on(
                        BigDecimal.valueOf(width, 2)
                                .multiply(BigDecimal.valueOf(100 - wider / 2, 2))
                                .toPlainString(),
                        "20")
                .delivering("2");
        return view(cropped).horizontalDegrees().compareTo(whole.horizontalDegrees()) <= 0
                && view(sensor.delivering(BigDecimal.valueOf(aspect, 2).toPlainString()))
                                .verticalDegrees()
                                .doubleValue()
                        <= Math.toDegrees(2 * Math.atan(20 / 100.0)) + 0.01;
    }

    @Property
    boolean theSphericalLensOfTheSameViewSeesAsWide(
            @ForAll @IntRange(min = 100, max = 200) int squeeze, @ForAll @IntRange(min = 20, max = 200) int focal) {
        Asked squeezed = Asked.on("27.60", "19.20")
                .squeezed(BigDecimal.valueOf(squeeze, 2).toPlainString())
                .focal(String.valueOf(focal));
        View view = view(squeezed);
        View spherical = view(squeezed.squeezed("1").focal(view.sphericalFocal().toPlainString()));
        return Math.abs(spherical.horizontalDegrees().doubleValue()
                        - view.horizontalDegrees().doubleValue())
                < 0.05;
    }
}
