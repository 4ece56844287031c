package dayglass.optics;

import java.math.BigDecimal;
import java.util.List;

/**
 * Camera formats and delivered aspects as they are published, each with its source. Nominal: a camera's recorded mode is
 * its maker's, and measured.
 */
public final class Formats {
    private static final String APERTURES = "SMPTE ST 59, ISO 2906:2002: ";
    private static final String PROJECTED = "ISO 2907:2002, ";
    private static final String DIGITAL = "digital cinema container, SMPTE ST 428-1: ";

    /** A picture's place on film or sensor, in millimetres. */
    public record Format(String name, BigDecimal widthMm, BigDecimal heightMm, String source) {}

    /** The shape of a delivered picture. */
    public record Delivery(String name, BigDecimal aspect, String source) {}

    /** 35 mm camera apertures are given in inches in the standards: 1 in is 25.4 mm. */
    public static final List<Format> FORMATS = List.of(
            format("35 mm full aperture", "24.892", "18.669", APERTURES + "0.980 × 0.735 in"),
            format("35 mm academy camera aperture", "21.9964", "16.002", APERTURES + "0.866 × 0.630 in"),
            format("35 mm anamorphic camera aperture", "21.9964", "18.5928", APERTURES + "0.866 × 0.732 in"),
            format("still 35 mm full frame", "36", "24", "published format diagonal 43.2666 mm"),
            format("Four Thirds", "17.3", "13", "published format diagonal 21.6400 mm"),
            format("Super 16", "12.52", "7.41", "published format diagonal 14.5485 mm"),
            format("16 mm", "10.26", "7.49", "published format diagonal 12.7031 mm"));

    public static final List<Delivery> DELIVERIES = List.of(
            delivery("2.39", "2.39", PROJECTED + "style B, 20.95 × 17.53 mm through 2×"),
            delivery("1.85", "1.85", PROJECTED + "20.95 × 11.32 mm"),
            delivery("1.65", "1.65", PROJECTED + "20.95 × 12.70 mm"),
            delivery("1.37", "1.37", PROJECTED + "20.95 × 15.29 mm"),
            delivery("2.387, digital", "2.386946", DIGITAL + "4096 × 1716"),
            delivery("1.896, digital", "1.896296", DIGITAL + "4096 × 2160"),
            delivery("16:9", "1.777778", "Recommendation ITU-R BT.709: 1920 × 1080"),
            delivery("4:3", "1.333333", "common practice"));

    private Formats() {}

    private static Format format(String name, String widthMm, String heightMm, String source) {
        return new Format(name, new BigDecimal(widthMm), new BigDecimal(heightMm), source);
    }

    private static Delivery delivery(String name, String aspect, String source) {
        return new Delivery(name, new BigDecimal(aspect), source);
    }
}
