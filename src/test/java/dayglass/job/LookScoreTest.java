package dayglass.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.catalogue.LensModel.Look;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The score by hand, and what holds for every lens. */
class LookScoreTest {
    private static Map<Look, Brief.Wish> wanted(int flare, String flareWeight, int colour, String colourWeight) {
        return Map.of(
                Look.FLARE, new Brief.Wish(flare, new BigDecimal(flareWeight)),
                Look.COLOUR, new Brief.Wish(colour, new BigDecimal(colourWeight)));
    }

    /** 100 (1 − (wf·|f − wanted| + wc·|c − wanted|) / 4(wf + wc)), worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "4, 2, 3, 1, 4, 3, 100",
        "4, 2, 3, 1, 3, 3, 83.33333333333333",
        "5, 1, 5, 1, 1, 1, 0",
        "5, 1, 1, 3, 1, 1, 75",
        "1, 0.5, 3, 0.5, 2, 5, 62.5"
    })
    void theScoreByHand(int flare, String wf, int colour, String wc, int hasFlare, int hasColour, String score) {
        LookScore found =
                LookScore.of(wanted(flare, wf, colour, wc), Map.of(Look.FLARE, hasFlare, Look.COLOUR, hasColour));
        assertEquals(0, new BigDecimal(score).compareTo(found.score().orElseThrow()), found.toString());
        assertEquals(List.of(), found.ungraded());
    }

    @Test
    void whatIsNotGradedIsNamedAndCountsForNothing() {
        LookScore found = LookScore.of(wanted(4, "2", 3, "1"), Map.of(Look.COLOUR, 3, Look.DISTORTION, 5));
        assertEquals(0, new BigDecimal("100").compareTo(found.score().orElseThrow()));
        assertEquals(List.of(Look.FLARE), found.ungraded());
        assertTrue(LookScore.of(wanted(4, "2", 3, "1"), Map.of()).score().isEmpty());
        assertTrue(LookScore.of(Map.of(), Map.of(Look.FLARE, 3)).score().isEmpty());
    }

    @Property
    void comingNearerInOneLookNeverLowersTheScore(
            @ForAll @IntRange(min = 1, max = 5) int wanted,
            @ForAll @IntRange(min = 1, max = 5) int grade,
            @ForAll @IntRange(min = 1, max = 5) int other,
            @ForAll @IntRange(min = 1, max = 50) int weight) {
        Map<Look, Integer> grades = new EnumMap<>(Look.class);
        grades.put(Look.FLARE, grade);
        grades.put(Look.COLOUR, other);
        Map<Look, Brief.Wish> wishes = wanted(wanted, String.valueOf(weight), 3, "1");
        BigDecimal before = LookScore.of(wishes, grades).score().orElseThrow();
        grades.put(Look.FLARE, grade + Integer.signum(wanted - grade));
        BigDecimal after = LookScore.of(wishes, grades).score().orElseThrow();
        assertTrue(after.compareTo(before) >= 0);
        assertTrue(before.signum() >= 0 && after.compareTo(BigDecimal.valueOf(100)) <= 0);
    }

    @ParameterizedTest
    @CsvSource({"40 mm, 40", "1.5 mm macro, 1.5", "long 100mm, 100", "wide, ", "16mm film, 16"})
    void aSlotsNameSaysItsFocalLength(String slot, String focal) {
        Brief brief = new Brief(
                new Job.Id(1),
                new Brief.Picture(
                        new dayglass.optics.FitQuestion.Camera(
                                BigDecimal.TEN, BigDecimal.TEN, java.util.Optional.empty(), "PL"),
                        BigDecimal.ONE,
                        dayglass.optics.FitQuestion.Light.NOT_ASKED,
                        dayglass.optics.FitQuestion.OnSet.NOT_ASKED),
                java.util.Optional.empty(),
                Map.of(),
                java.util.Optional.empty(),
                Map.of("wide", new BigDecimal("18")),
                Brief.USUAL_TOLERANCE);
        assertEquals(
                new BigDecimal(focal == null ? "18" : focal),
                brief.focalOf(slot).orElseThrow());
        // Ten per cent of 40 mm: from 36 to 44, both included.
        BigDecimal forty = new BigDecimal("40");
        assertTrue(brief.serves(new BigDecimal("36"), new BigDecimal("36"), forty));
        assertTrue(brief.serves(new BigDecimal("44"), new BigDecimal("90"), forty));
        assertTrue(!brief.serves(new BigDecimal("44.1"), new BigDecimal("90"), forty));
        assertTrue(!brief.serves(new BigDecimal("20"), new BigDecimal("35.9"), forty));
    }
}
