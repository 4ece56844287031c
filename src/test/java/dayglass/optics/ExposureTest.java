package dayglass.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExposureTest {
    private static Exposure exposure(Asked asked) {
        return Exposure.of(asked.question()).orElseThrow();
    }

    /** ISO 2720:1974, N²/t = E·S/C with C 250: 100 foot-candles are 1076.391 lx; values worked out from the formula. */
    @ParameterizedTest
    @CsvSource({
        "1076.3910417, 100, 24, 180,   0, 2.9950",
        "1076.3910417, 100, 24, 172.8, 0, 2.9345",
        "2560,         100, 1,  360,   0, 32.000", // EV 10 at one second: N is 2 to the 5th
        "2560,         100, 1,  360,   2, 16.000", // two stops of filter halve it
        "2560,         100, 60, 144,   0, 2.6128" // 1/150 s
    })
    void theStopThatTheLightAllowsFollowsTheStandard(
            String lux, int iso, String rate, String angle, String filters, String expected) {
        Exposure exposure = exposure(Asked.on("36", "24").in(lux, iso, rate, angle, filters));
        assertEquals(
                Double.parseDouble(expected),
                exposure.lightAllows(new BigDecimal(2)).doubleValue(),
                0.0006);
    }

    /** The cinematographer's rule fc = 25·T²/(ISO·t), from a manual: T4 at ISO 800 and 1/48 s takes 24 fc. */
    @Test
    void theRuleOfFootCandlesAgreesWithinAFifthOfAStop() {
        double lux = 24 * 10.763910417;
        Exposure exposure = exposure(
                Asked.on("36", "24").tStop("4").in(BigDecimal.valueOf(lux).toPlainString(), 800, "24", "180", "0"));
        assertEquals(0, exposure.marginStops().doubleValue(), 0.2);
    }

    @ParameterizedTest
    @CsvSource({
        // EV 10 at one second allows N 32 exactly, so that the margins of these T-stops are whole and half stops.
        "32, 0,            does not fit, -0.0000000001",
        "32, 0,            fits with care, 0",
        "16, 1.5,          fits, 0",
        "16, 1.5000000001, fits with care, 0",
        "16, 2,            fits with care, 0",
        "16, 2.0000000001, does not fit, 0",
        "16, 1.4999999999, fits, 0"
    })
    void aVerdictIsDecidedAsIfComputedExactly(String tStop, String filters, String verdict, String lessLux) {
        String lux = new BigDecimal(2560).add(new BigDecimal(lessLux)).toPlainString();
        Exposure exposure = exposure(Asked.on("36", "24").tStop(tStop).in(lux, 100, "1", "360", filters));
        assertEquals(verdict, exposure.verdict().words());
    }

    @Test
    void nothingToSpareIsToldAsNought() {
        Exposure exposure = exposure(Asked.on("36", "24").tStop("32").in("2560", 100, "1", "360", "0"));
        assertEquals("0.000", exposure.marginStops().toPlainString());
        assertTrue(exposure.luxNeeded().isEmpty());
    }

    @Property
    boolean moreLightNeverDarkens(
            @ForAll @IntRange(min = 1, max = 100_000) int lux,
            @ForAll @IntRange(min = 1, max = 100_000) int more,
            @ForAll @IntRange(min = 0, max = 100) int filters) {
        String stops = BigDecimal.valueOf(filters, 1).toPlainString();
        Asked asked = Asked.on("36", "24").tStop("2.8");
        Exposure less = exposure(asked.in(String.valueOf(lux), 800, "24", "180", stops));
        Exposure brighter = exposure(asked.in(String.valueOf(lux + more), 800, "24", "180", stops));
        return brighter.marginStops().compareTo(less.marginStops()) >= 0
                && brighter.verdict().compareTo(less.verdict()) <= 0;
    }

    @Property
    boolean theLightThatWouldDoDoes(@ForAll @IntRange(min = 1, max = 400) int lux) {
        Asked asked = Asked.on("36", "24").tStop("4");
        Exposure dark = exposure(asked.in(String.valueOf(lux), 200, "24", "180", "1.3"));
        return dark.luxNeeded()
                .map(needed -> Math.abs(exposure(asked.in(needed.toPlainString(), 200, "24", "180", "1.3"))
                                .marginStops()
                                .doubleValue())
                        < 0.001)
                .orElse(dark.marginStops().signum() >= 0);
    }
}
