package dayglass.planning.ways;

import dayglass.job.Brief;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How many of each slot one piece serves at once, and by which glass. Each glass serves one slot: of those whose
 * focal length it has and whose picture it gives, the one that still lacks most within the piece, then the nearest. Glass
 * with the fewest such slots comes first, so that a zoom takes what the primes leave.
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

    /** The cover of a piece of which only its own word is known. */
    static PieceCover atItsWord(String option, Map<String, Integer> declared) {
        return new PieceCover(option, declared, Map.of(), Map.of());
    }

    /** Whether it serves a slot without glass that could be judged. */
    boolean servesUnjudged(String slot) {
        return covers.containsKey(slot) && !by.containsKey(slot);
    }

    /**
     * The cover of a piece by its glass.
     *
     * @param wanted how many of each slot are needed at once at most, in the job's order
     */
    static PieceCover of(String option, List<JudgedGlass> glass, Brief brief, Map<String, Integer> wanted) {
        PieceCover cover = new PieceCover(option, new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
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
                        cover.refused
                                .computeIfAbsent(slot, name -> new LinkedHashSet<>())
                                .add(each);
                    }
                }
            }
            candidates.put(each, slots);
        }
        candidates.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .sorted(Comparator.comparing(entry -> entry.getValue().size()))
                .forEach(entry -> cover.serve(entry.getKey(), entry.getValue(), brief, wanted));
        return cover;
    }

    private void serve(JudgedGlass glass, List<String> slots, Brief brief, Map<String, Integer> wanted) {
        Comparator<String> mostLacking =
                Comparator.comparing(slot -> -Math.max(0, wanted.getOrDefault(slot, 0) - covers.getOrDefault(slot, 0)));
        Comparator<String> nearest = Comparator.comparing(
                slot -> brief.focalOf(slot).map(glass::distance).orElse(BigDecimal.ZERO));
        for (int copy = 0; copy < glass.count(); copy++) {
            String slot = slots.stream().min(mostLacking.thenComparing(nearest)).orElseThrow();
            covers.merge(slot, 1, Integer::sum);
            by.computeIfAbsent(slot, name -> new LinkedHashSet<>()).add(glass);
        }
    }
}
