package dayglass.optics.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.optics.Asked;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion.Attachment;
import dayglass.optics.FitQuestion.Lens;
import dayglass.optics.FitQuestion.OnSet;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {
    private static final BigDecimal ONE = BigDecimal.ONE;

    private static Optional<Finding> found(Asked asked, String check) {
        return Fit.of(asked.question()).checks().stream()
                .filter(finding -> finding.check().equals(check))
                .findFirst();
    }

    private static String told(Asked asked, String check) {
        return found(asked, check)
                .map(finding -> finding.verdict().words()
                        + finding.margin()
                                .map(margin -> " " + margin.toPlainString())
                                .orElse(""))
                .orElse("not made");
    }

    /** 30 x 40 mm is 50 mm across (3-4-5); for 4:1 of a 40 mm width 10 mm of height are used, 41.23 mm across. */
    @ParameterizedTest
    @CsvSource({
        "50,           fits 0.00",
        "50.01,        fits 0.01",
        "49.9999999999,fits with care 8.77",
        "41.24,        fits with care 0.01",
        "41.23,        does not fit 0.00",
        "20,           does not fit -21.23"
    })
    void theImageCircleIsHeldAgainstTheSensorAndThenAgainstThePicture(String circle, String told) {
        assertEquals(told, told(Asked.on("40", "30").delivering("4").imageCircle(circle), "coverage"));
    }

    /** Flange focal distances as published; that an adapter has its thickness is common practice. */
    @ParameterizedTest
    @CsvSource({
        "PL, PL,     fits",
        "PL, EF,     does not fit", // 44.00 on 52.00
        "EF, PL,     fits with care", // 8 mm
        "PL, EF/PL,  fits with care", // changed
        "LPL, EF,    does not fit", // 44.00 both
        "C, E,       does not fit", // 0.474 mm
        "E, MFT/C,   fits with care", // 1.25 mm by the larger
        "M42, F,     fits with care", // 1.04 mm
        "K, F,       fits with care",
        "M42, K,     does not fit"
    })
    void aMountIsTheSameOrChangedOrAdaptedOrNone(String camera, String lens, String verdict) {
        Asked asked = Asked.on("36", "24").mountedOn(camera).mounts(lens.split("/", -1));
        assertEquals(verdict, told(asked, "mount"));
    }

    private static Asked carrying(String frontMm, int weightG, String closeFocusM) {
        return Asked.on("36", "24")
                .through(new Lens(
                        List.of(new BigDecimal(50)),
                        ONE,
                        ONE,
                        Optional.empty(),
                        List.of("PL"),
                        Optional.of(new BigDecimal(closeFocusM)),
                        Optional.of(new BigDecimal(frontMm)),
                        Optional.of(weightG),
                        BigDecimal.ZERO));
    }

    private static OnSet set(String closest, int payloadG, String box) {
        return new OnSet(Optional.of(new BigDecimal(closest)), Optional.of(payloadG), Optional.of(new BigDecimal(box)));
    }

    @ParameterizedTest
    @CsvSource({
        "weight,      899,  fits 101",
        "weight,      900,  fits with care 100",
        "weight,      1000, fits with care 0",
        "weight,      1001, does not fit -1",
        "front,       95,   fits with care 19",
        "front,       114,  fits 0",
        "front,       114.5,does not fit -0.5",
        "close focus, 0.9,  fits",
        "close focus, 0.91, fits with care"
    })
    void whatTheRigAndTheSetAskIsHeldAgainstTheLens(String check, String value, String told) {
        Asked asked = switch (check) {
            case "weight" -> carrying("80", Integer.parseInt(value), "1");
            case "front" -> carrying(value, 1000, "1");
            default -> carrying("80", 1000, value);
        };
        assertEquals(told, told(asked.onSet(set("0.9", 1000, "114")), check));
    }

    private static Attachment attachment(String min, String max, boolean dual) {
        return new Attachment(
                new BigDecimal("1.33"),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                Optional.of(min).filter(text -> !text.isEmpty()).map(BigDecimal::new),
                Optional.of(max).filter(text -> !text.isEmpty()).map(BigDecimal::new),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                dual);
    }

    @ParameterizedTest
    @CsvSource({
        "50,    '50', '85', false, fits",
        "85,    '50', '85', true,  fits with care",
        "49.99, '50', '',   false, does not fit",
        "85.01, '',   '85', false, does not fit",
        "10,    '',   '',   false, fits",
        "50/85, '50', '85', false, fits",
        "50/90, '50', '85', false, does not fit"
    })
    void aTakingLensLiesInTheRangeOfItsAttachment(String focal, String min, String max, boolean dual, String verdict) {
        Asked asked = Asked.on("36", "24").focal(focal.split("/", -1)).behind(attachment(min, max, dual));
        assertEquals(verdict, told(asked, "attachment"));
    }

    @Test
    void aCheckWhoseFactsAreNotGivenIsNotMade() {
        Fit fit = Fit.of(Asked.on("36", "24").question());
        assertEquals("mount", fit.checks().stream().map(Finding::check).collect(Collectors.joining(", ")));
        assertEquals(Optional.empty(), fit.light());
        assertEquals(Optional.empty(), fit.dioptre());
    }

    @Test
    void anAttachmentsWeightAloneDoesNotWeighTheLens() {
        Asked asked = Asked.on("36", "24")
                .behind(new Attachment(
                        ONE,
                        ONE,
                        ONE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(600),
                        Optional.empty(),
                        false))
                .onSet(set("0.9", 1000, "114"));
        assertEquals("not made", told(asked, "weight"));
    }

    /** Two stops down from T2 is T4 and three T5.6 (common practice: full stops are powers of the square root of 2). */
    @ParameterizedTest
    @CsvSource({"0, 2.000", "1, 2.828", "2, 4.000", "3, 5.657", "5, 11.31"})
    void closingDownMovesTheWorkingStop(String stops, String told) {
        Lens lens = Asked.on("36", "24").lens();
        Lens soft = new Lens(
                lens.focals(),
                lens.tStop(),
                lens.squeeze(),
                lens.imageCircle(),
                lens.mounts(),
                lens.closeFocusM(),
                lens.frontMm(),
                lens.weightG(),
                new BigDecimal(stops));
        Fit fit = Fit.of(Asked.on("36", "24").through(soft).question());
        assertEquals(told, fit.workingStop().toPlainString());
    }

    @Property
    boolean aLargerImageCircleNeverCoversLess(
            @ForAll @IntRange(min = 100, max = 9_000) int circle, @ForAll @IntRange(min = 1, max = 9_000) int more) {
        Asked asked = Asked.on("27.60", "19.20").squeezed("1.5");
        Verdict smaller = verdict(asked, circle);
        return verdict(asked, circle + more).compareTo(smaller) <= 0;
    }

    private static Verdict verdict(Asked asked, int hundredths) {
        return found(asked.imageCircle(BigDecimal.valueOf(hundredths, 2).toPlainString()), "coverage")
                .orElseThrow()
                .verdict();
    }

    @Property
    boolean theOverallVerdictIsTheWorstOfTheChecks(
            @ForAll @IntRange(min = 2_000, max = 5_000) int circle, @ForAll @IntRange(min = 1, max = 3_000) int lux) {
        Asked asked = Asked.on("27.60", "19.20")
                .imageCircle(BigDecimal.valueOf(circle, 2).toPlainString())
                .mounts("F")
                .mountedOn("EF")
                .in(String.valueOf(lux), 800, "24", "180", "0");
        Fit fit = Fit.of(asked.question());
        return fit.checks().stream().allMatch(finding -> finding.verdict().compareTo(fit.overall()) <= 0)
                && fit.checks().stream().anyMatch(finding -> finding.verdict() == fit.overall());
    }
}
