package dayglass.planning.glass;

import dayglass.job.Brief;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a way's own glass does for one slot.
 *
 * @param verdict of the glass that serves it, the worst; {@code DOES_NOT_FIT} where only unsuitable glass is there; empty
 *     where none is of its focal length, or nothing is known of it
 * @param by the glass that serves it
 * @param reasons why it wants care or is not served
 */
public record SlotReport(String slot, Optional<Verdict> verdict, List<String> by, List<String> reasons) {
    public SlotReport {
        by = List.copyOf(by);
        reasons = List.copyOf(reasons);
    }

    /** Whether anything of the way serves it. */
    public boolean served() {
        return !by.isEmpty();
    }

    public static SlotReport of(String slot, Brief brief, List<PieceCover> covers, Set<JudgedGlass> all) {
        Set<JudgedGlass> serving = of(slot, covers.stream().map(PieceCover::by).toList());
        Set<JudgedGlass> refused =
                of(slot, covers.stream().map(PieceCover::refused).toList());
        List<String> reasons = new ArrayList<>();
        Stream.concat(serving.stream(), refused.stream()).forEach(glass -> reasons.addAll(glass.reasons()));
        Optional<Verdict> verdict =
                serving.stream().flatMap(glass -> glass.verdict().stream()).reduce(Verdict::orWorse);
        List<String> unjudged = covers.stream()
                .filter(piece -> piece.servesUnjudged(slot))
                .map(PieceCover::option)
                .toList();
        brief.focalOf(slot)
                .ifPresent(focal -> unjudged.forEach(option -> reasons.add(
                        option + " says that it covers this; its glass is not named, so its picture is not judged.")));
        if (serving.isEmpty() && refused.isEmpty() && unjudged.isEmpty()) {
            reasons.add(nothing(slot, brief, all));
        }
        boolean refusedOnly = serving.isEmpty()
                && unjudged.isEmpty()
                && refused.stream().anyMatch(glass -> glass.verdict().isPresent());
        return new SlotReport(
                slot,
                refusedOnly ? Optional.of(Verdict.DOES_NOT_FIT) : verdict,
                Stream.concat(serving.stream().map(JudgedGlass::name), unjudged.stream())
                        .toList(),
                reasons.stream().distinct().toList());
    }

    private static Set<JudgedGlass> of(String slot, List<? extends java.util.Map<String, Set<JudgedGlass>>> maps) {
        Set<JudgedGlass> all = new LinkedHashSet<>();
        maps.forEach(map -> all.addAll(map.getOrDefault(slot, Set.of())));
        return all;
    }

    private static String nothing(String slot, Brief brief, Set<JudgedGlass> all) {
        Optional<BigDecimal> focal = brief.focalOf(slot);
        if (focal.isEmpty()) {
            return "The brief says no focal length for " + slot + ", and its name holds none in mm.";
        }
        String tolerance = brief.tolerance().value().toPlainString();
        return all.stream()
                .filter(glass -> !glass.focals().isEmpty())
                .min(Comparator.comparing(glass -> glass.distance(focal.get())))
                .map(glass -> glass.isFor(focal.get(), brief)
                        ? "What would serve it serves another slot: " + glass.name() + "."
                        : "Nothing within " + tolerance + " % of " + focal.get().toPlainString()
                                + " mm; the nearest is " + glass.name() + ".")
                .orElse("This way names no glass for it.");
    }
}
