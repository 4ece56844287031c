package dayglass.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formats against what is published of them. */
class FormatsTest {
    private static Formats.Format format(String name) {
        return Formats.FORMATS.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Published format diagonals in millimetres, to four decimals. */
    @ParameterizedTest
    @CsvSource({
        "still 35 mm full frame, 43.2666",
        "35 mm full aperture, 31.1150",
        "Four Thirds, 21.6400",
        "Super 16, 14.5485",
        "16 mm, 12.7031"
    })
    void theDiagonalIsThePublishedOne(String name, BigDecimal diagonal) {
        Formats.Format format = format(name);
        BigDecimal squares = format.widthMm()
                .multiply(format.widthMm())
                .add(format.heightMm().multiply(format.heightMm()));
        assertEquals(diagonal, squares.sqrt(MathContext.DECIMAL64).setScale(4, RoundingMode.HALF_UP));
    }

    /** Camera apertures in inches of SMPTE ST 59 and ISO 2906:2002, and the aspects that they make. */
    @ParameterizedTest
    @CsvSource({
        "35 mm full aperture, 0.980, 0.735, 1, 1.33333",
        "35 mm academy camera aperture, 0.866, 0.630, 1, 1.37460",
        "35 mm anamorphic camera aperture, 0.866, 0.732, 2, 2.36612"
    })
    void anApertureIsItsInches(String name, BigDecimal wide, BigDecimal high, BigDecimal squeeze, BigDecimal aspect) {
        BigDecimal inch = new BigDecimal("25.4");
        Formats.Format format = format(name);
        assertEquals(0, wide.multiply(inch).compareTo(format.widthMm()), name);
        assertEquals(0, high.multiply(inch).compareTo(format.heightMm()), name);
        assertEquals(aspect, format.widthMm().multiply(squeeze).divide(format.heightMm(), 5, RoundingMode.HALF_UP));
    }
}
