package dayglass.planning.glass;

import dayglass.job.Brief;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * How many of each slot one piece serves at once, and by which glass. A prime serves one slot: of those whose
 * focal length it has and whose picture it gives, the one that still lacks most within the piece, then the nearest. A zoom
 * serves every such slot of one camera. Glass with the fewest slots comes first, so that a zoom takes what the primes
 * leave. A slot without a focal length asks
 * for no picture: there a piece is taken at its word.
 *
 * @param option that it is in the costing
 * @param covers by slot
 * @param by the glass that serves each slot
 * @param refused glass of the right focal length that does not give the picture, by slot
 */
public record PieceCover(
        String option,
        Map<String, Integer> covers,
        Map<String, Set<JudgedGlass>> by,
        Map<String, Set<JudgedGlass>> refused) {

    /**
     * What is known of a piece.
     *
     * @param declared what it says itself that it covers
     * @param glass that it brings; empty where that is not known
     */
    public record Piece(String option, Map<String, Integer> declared, List<JudgedGlass> glass) {
        private Map<String, Integer> declaredFor(Predicate<String> slot) {
            Map<String, Integer> some = new LinkedHashMap<>(declared);
            some.keySet().removeIf(slot.negate());
            return some;
        }
    }

    /** Whether it serves a slot without glass that could be judged. */
    boolean servesUnjudged(String slot) {
        return covers.containsKey(slot) && !by.containsKey(slot);
    }

    /**
     * The cover of a piece by its glass, or at its word where none is known.
     *
     * @param wanted how many of each slot are needed at once at most, in the job's order
     */
    public static PieceCover of(Piece piece, Brief brief, Map<String, Integer> wanted) {
        if (piece.glass().isEmpty()) {
            return new PieceCover(piece.option(), piece.declared(), Map.of(), Map.of());
        }
        PieceCover cover = new PieceCover(
                piece.option(),
                piece.declaredFor(slot -> brief.focalOf(slot).isEmpty()),
                new LinkedHashMap<>(),
                new LinkedHashMap<>());
        cover.serveBy(piece.glass(), brief, wanted);
        return cover;
    }

    private void serveBy(List<JudgedGlass> glass, Brief brief, Map<String, Integer> wanted) {
        Map<JudgedGlass, List<String>> candidates = new LinkedHashMap<>();
        for (JudgedGlass each : glass) {
            List<String> slots = new ArrayList<>();
            for (String slot : wanted.keySet()) {
                if (brief.focalOf(slot)
                        .filter(focal -> each.isFor(focal, brief))
                        .isPresent()) {
                    if (each.usable()) {
                        slots.add(slot);
                    } else {
                        refused.computeIfAbsent(slot, name -> new LinkedHashSet<>())
                                .add(each);
                    }
                }
            }
            candidates.put(each, slots);
        }
        candidates.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .sorted(Comparator.comparing(entry -> entry.getValue().size()))
                .forEach(entry -> serve(entry.getKey(), entry.getValue(), brief, wanted));
    }

    private void serve(JudgedGlass glass, List<String> slots, Brief brief, Map<String, Integer> wanted) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        slots.forEach(
                slot -> places.computeIfAbsent(glass.isZoom() ? brief.cameraOf(slot) : slot, name -> new ArrayList<>())
                        .add(slot));
        Comparator<List<String>> mostLacking = Comparator.comparing(place -> -lacking(place, wanted));
        Comparator<List<String>> nearest = Comparator.comparing(place -> distance(glass, place, brief));
        for (int copy = 0; copy < glass.count(); copy++) {
            places.values().stream()
                    .min(mostLacking.thenComparing(nearest))
                    .orElseThrow()
                    .forEach(slot -> {
                        covers.merge(slot, 1, Integer::sum);
                        by.computeIfAbsent(slot, name -> new LinkedHashSet<>()).add(glass);
                    });
        }
    }

    private int lacking(List<String> place, Map<String, Integer> wanted) {
        return place.stream()
                .mapToInt(slot -> Math.max(0, wanted.getOrDefault(slot, 0) - covers.getOrDefault(slot, 0)))
                .sum();
    }

    private static BigDecimal distance(JudgedGlass glass, List<String> place, Brief brief) {
        return place.stream()
                .flatMap(slot -> brief.focalOf(slot).stream())
                .map(glass::distance)
                .min(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
    }
}
