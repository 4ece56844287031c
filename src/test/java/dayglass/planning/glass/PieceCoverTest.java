package dayglass.planning.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.planning.ways.Asked;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which glass serves which slot. */
class PieceCoverTest {
    private static Map<String, Integer> wanted(String... slots) {
        Map<String, Integer> wanted = new LinkedHashMap<>();
        for (String slot : slots) {
            wanted.merge(slot, 1, Integer::sum);
        }
        return wanted;
    }

    private static PieceCover cover(Map<String, Integer> wanted, JudgedGlass... glass) {
        return PieceCover.of(new PieceCover.Piece("piece", Map.of(), List.of(glass)), Asked.brief(), wanted);
    }

    /** 10 % of 50 mm are 5 mm. */
    @ParameterizedTest
    @CsvSource({"45, 1", "44.9, 0", "50, 1", "55, 1", "55.1, 0"})
    void aLensServesASlotWithinTheTolerance(String focal, int served) {
        assertEquals(
                served, cover(wanted("50 mm"), Asked.lens(1, focal)).covers().getOrDefault("50 mm", 0));
    }

    @Test
    void aPrimeServesOneSlotTheNearestFirst() {
        PieceCover cover = cover(wanted("50 mm", "52 mm"), Asked.lens(1, "52"));
        assertEquals(Map.of("52 mm", 1), cover.covers());
    }

    @Test
    void copiesGoWhereMostIsLacking() {
        PieceCover cover = cover(wanted("50 mm", "50 mm", "52 mm"), Asked.lens(3, "50"));
        assertEquals(Map.of("50 mm", 2, "52 mm", 1), cover.covers());
    }

    @Test
    void aZoomServesEveryFocalLengthInItsRangeOnOneCamera() {
        PieceCover cover = cover(
                wanted("main 32 mm", "main 50 mm", "main 75 mm", "main 100 mm", "second 40 mm"),
                Asked.lens(1, "30", "80"));
        assertEquals(Map.of("main 32 mm", 1, "main 50 mm", 1, "main 75 mm", 1), cover.covers());
    }

    @Test
    void aSecondZoomGoesToTheOtherCamera() {
        PieceCover cover = cover(wanted("main 32 mm", "main 50 mm", "second 40 mm"), Asked.lens(2, "30", "80"));
        assertEquals(Map.of("main 32 mm", 1, "main 50 mm", 1, "second 40 mm", 1), cover.covers());
    }

    @Test
    void aZoomTakesWhatThePrimesLeave() {
        PieceCover cover = cover(wanted("main 32 mm", "second 40 mm"), Asked.lens(1, "30", "80"), Asked.lens(1, "32"));
        assertEquals(Map.of("main 32 mm", 1, "second 40 mm", 1), cover.covers());
        assertEquals(Set.of(Asked.lens(1, "32").name()), names(cover, "main 32 mm"));
    }

    private static Set<String> names(PieceCover cover, String slot) {
        return Set.of(cover.by().getOrDefault(slot, Set.of()).stream()
                .map(JudgedGlass::name)
                .toArray(String[]::new));
    }

    @Test
    void glassThatDoesNotGiveThePictureServesNothingAndIsNamed() {
        JudgedGlass small = Asked.small("50");
        PieceCover cover = cover(wanted("50 mm"), small);
        assertEquals(Map.of(), cover.covers());
        assertEquals(1, cover.refused().getOrDefault("50 mm", Set.of()).size());
    }

    /** Only there a piece is taken at its word although its glass is known. */
    @Test
    void aSlotWithoutAFocalLengthIsServedAsThePieceSays() {
        PieceCover cover = PieceCover.of(
                new PieceCover.Piece("set", Map.of("dioptre", 1, "50 mm", 1), List.of(Asked.lens(1, "75"))),
                Asked.brief(),
                wanted("dioptre", "50 mm", "75 mm"));
        assertEquals(Map.of("dioptre", 1, "75 mm", 1), cover.covers());
        assertTrue(cover.servesUnjudged("dioptre"));
        assertFalse(cover.servesUnjudged("75 mm"));
    }

    @Test
    void aPieceWithoutKnownGlassIsTakenAtItsWord() {
        PieceCover cover = PieceCover.of(
                new PieceCover.Piece("set", Map.of("50 mm", 2), List.of()), Asked.brief(), wanted("50 mm"));
        assertEquals(Map.of("50 mm", 2), cover.covers());
        assertTrue(cover.servesUnjudged("50 mm"));
    }
}
